#include "ui/progress/observations_page.h"

#include "ui/paint/theme.h"
#include "ui/progress/observation_values.h"
#include "ui/progress/observations_model.h"
#include "ui/progress/series_chart.h"
#include "ui/shared/character_width.h"
#include "ui/shared/day_edit.h"
#include "ui/shared/day_text.h"
#include "ui/shared/problem_line.h"
#include "ui/shared/section.h"
#include "ui/shared/side_by_side.h"
#include "ui/shared/table_look.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QLocale>
#include <QPushButton>
#include <QSignalBlocker>
#include <QTableView>
#include <QVBoxLayout>
#include <algorithm>

namespace ladlework::ui {

using people::Observation;

namespace {
constexpr int kindWidth = 22;
constexpr int dayWidth = 24;
constexpr int valueWidth = 10;
constexpr int unitWidth = 8;
constexpr int mostRows = 12;
} // namespace

ObservationsPage::ObservationsPage(const ScreenContext& context, QWidget* parent)
    : QWidget(parent), m_context(context), m_kind(new QComboBox(this)), m_day(new DayEdit(this)),
      m_value(new QLineEdit(this)), m_unit(new QLineEdit(this)), m_note(new QLineEdit(this)),
      m_problem(new ProblemLine(this)), m_chart(new SeriesChart(this)),
      m_model(new ObservationsModel(this)),
      m_table(makeTable(m_model, tr("Values of the series, latest first"),
                        ObservationsModel::NoteColumn, this)),
      m_empty(new QLabel(this)) {
    auto* section = new Section(tr("Weight and other observations"), this);
    section->setRemark(tr("Kept where you follow them. Type another word to begin a series of "
                          "your own."));
    section->body()->addWidget(makeLine());
    section->body()->addWidget(m_problem);
    m_empty->setForegroundRole(QPalette::PlaceholderText);
    m_empty->setWordWrap(true);
    section->body()->addWidget(m_empty);
    auto* sides = new SideBySide(section);
    sides->setSpacing(2 * step(*this));
    sides->add(m_chart, 3);
    sides->add(m_table, 2);
    section->body()->addWidget(sides);
    m_table->installEventFilter(this);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(section);
    layout->addStretch(1);
    connectParts();
}

QWidget* ObservationsPage::makeLine() {
    m_kind->setEditable(true);
    m_kind->setInsertPolicy(QComboBox::NoInsert);
    m_kind->setAccessibleName(tr("What is observed"));
    CharacterWidth::hold(*m_kind, kindWidth);
    m_day->setAccessibleName(tr("Day of the observation"));
    CharacterWidth::hold(*m_day, dayWidth);
    m_value->setAccessibleName(tr("Value"));
    CharacterWidth::hold(*m_value, valueWidth);
    m_unit->setAccessibleName(tr("Unit"));
    m_unit->setPlaceholderText(tr("unit"));
    CharacterWidth::hold(*m_unit, unitWidth);
    m_note->setAccessibleName(tr("Note on the observation"));
    m_note->setPlaceholderText(tr("note"));
    auto* add = new QPushButton(tr("Add val&ue"), this);
    auto* line = new QWidget(this);
    auto* row = new QHBoxLayout(line);
    row->setContentsMargins(0, 0, 0, 0);
    for (QWidget* part : std::initializer_list<QWidget*>{m_kind, m_day, m_value, m_unit})
        row->addWidget(part);
    row->addWidget(m_note, 1);
    row->addWidget(add);
    connect(add, &QPushButton::clicked, this, &ObservationsPage::add);
    for (QLineEdit* edit : {m_value, m_unit, m_note})
        connect(edit, &QLineEdit::returnPressed, this, &ObservationsPage::add);
    return line;
}

void ObservationsPage::connectParts() {
    connect(m_kind, &QComboBox::currentTextChanged, this, &ObservationsPage::showSeries);
    connect(m_model, &ObservationsModel::observationChanged, this, &ObservationsPage::change);
    connect(m_model, &ObservationsModel::refused, m_problem, &ProblemLine::say);
    connect(m_chart, &SeriesChart::dayChosen, this, [this](QDate day) {
        const int row = m_model->rowOf(day);
        if (row >= 0 && row != m_table->currentIndex().row())
            m_table->setCurrentIndex(m_model->index(row, ObservationsModel::ValueColumn));
    });
    connect(m_table->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            [this](const QModelIndex& current) {
                if (const Observation* observation = m_model->observationAt(current.row()))
                    m_chart->setDay(observation->day);
            });
}

QString ObservationsPage::kind() const {
    const QString typed = m_kind->currentText().trimmed();
    const int row = m_kind->findText(typed, Qt::MatchFixedString);
    return row < 0 ? typed : m_kind->itemData(row).toString();
}

void ObservationsPage::show(std::shared_ptr<const casebook::Casebook> casebook,
                            const casebook::Standing& standing) {
    const bool sameMember = m_member.id == standing.member.id;
    m_casebook = std::move(casebook);
    m_member = standing.member;
    m_own = m_casebook->records().observations;
    m_own.removeIf([this](const Observation& each) { return each.member != m_member.id; });
    std::ranges::stable_sort(m_own, {}, &Observation::day);
    m_day->setToday(m_casebook->today());
    m_day->setRange({}, m_casebook->today());
    if (!sameMember) {
        m_problem->clear();
        m_day->setDay(m_casebook->today());
        for (QLineEdit* edit : {m_value, m_unit, m_note})
            edit->clear();
        m_kind->setCurrentIndex(-1);
    }
    showKinds();
    showSeries();
}

void ObservationsPage::showKinds() {
    const QSignalBlocker blocker(m_kind);
    const QString shown = m_kind->currentText();
    QStringList kinds{people::weightKind()};
    for (const Observation& observation : std::as_const(m_own))
        if (!kinds.contains(observation.kind))
            kinds.append(observation.kind);
    m_kind->clear();
    for (const QString& kind : std::as_const(kinds))
        m_kind->addItem(kindName(kind), kind);
    if (!shown.isEmpty())
        m_kind->setCurrentText(shown);
}

void ObservationsPage::showSeries() {
    if (!m_casebook)
        return;
    const QString shown = kind();
    const quantity::MeasureSystem measures = m_casebook->records().family.measures;
    QList<Observation> series = m_own;
    series.removeIf([&](const Observation& each) { return each.kind != shown; });
    QList<SeriesPoint> points;
    for (const Observation& observation : std::as_const(series))
        points.append({observation.day, shownValue(observation, measures),
                       observationWords(observation, measures)});
    m_chart->setPoints(points);
    m_model->show(series, measures);
    m_chart->setVisible(!series.isEmpty());
    m_table->setVisible(!series.isEmpty());
    m_empty->setVisible(series.isEmpty());
    m_empty->setText(tr("No value of this series yet for %1.").arg(m_member.name));
    fitRows(*m_table, 1, mostRows);
    const bool weight = shown == people::weightKind();
    m_unit->setVisible(!weight);
    m_value->setPlaceholderText(
        !weight ? tr("value")
                : (measures == quantity::MeasureSystem::UsCustomary ? tr("lb") : tr("kg")));
    if (!weight && m_unit->text().isEmpty() && !series.isEmpty())
        m_unit->setText(series.last().unit);
}

void ObservationsPage::add() {
    const quantity::MeasureSystem measures = m_casebook->records().family.measures;
    Observation observation;
    observation.member = m_member.id;
    observation.day = m_day->day();
    observation.kind = kind();
    const bool weight = observation.kind == people::weightKind();
    observation.unit = weight ? QStringLiteral("kg") : m_unit->text().trimmed();
    observation.note = m_note->text().trimmed();
    const Result<double> value = readObservation(m_value->text(), observation.kind, measures);
    if (!value) {
        m_problem->say(value.error().sentence);
        m_value->setFocus();
        return;
    }
    observation.value = *value;
    const QString sentence = tr("Entered %1 of %2: %3")
                                 .arg(kindName(observation.kind).toLower(), m_member.name,
                                      observationWords(observation, measures));
    const Outcome outcome = m_context.workbook.act(sentence, [&](store::Action& action) -> Outcome {
        const auto added = m_context.workbook.families().addObservation(action, observation);
        return added ? Outcome{} : Outcome(passOn(added));
    });
    if (!m_problem->take(outcome)) {
        (outcome.error().place == u"kind" ? static_cast<QWidget*>(m_kind) : m_value)->setFocus();
        return;
    }
    m_value->clear();
    m_note->clear();
    m_value->setFocus();
}

void ObservationsPage::change(const Observation& observation) {
    m_problem->take(m_context.workbook.act(
        tr("Changed %1 of %2 on %3")
            .arg(kindName(observation.kind).toLower(), m_member.name,
                 printDay(observation.day, QLocale())),
        [&](store::Action& action) {
            return m_context.workbook.families().changeObservation(action, observation);
        }));
}

void ObservationsPage::removeChosen() {
    const Observation* chosen = m_model->observationAt(m_table->currentIndex().row());
    if (!chosen)
        return;
    const Observation observation = *chosen;
    m_problem->take(m_context.workbook.act(
        tr("Removed %1 of %2 on %3")
            .arg(kindName(observation.kind).toLower(), m_member.name,
                 printDay(observation.day, QLocale())),
        [&](store::Action& action) {
            return m_context.workbook.families().removeObservation(action, observation.id);
        }));
}

bool ObservationsPage::eventFilter(QObject* watched, QEvent* event) {
    if (watched == m_table && event->type() == QEvent::KeyPress &&
        static_cast<QKeyEvent*>(event)->key() == Qt::Key_Delete) {
        removeChosen();
        return true;
    }
    return QWidget::eventFilter(watched, event);
}

QWidget* ObservationsPage::firstField() const {
    return m_value;
}

} // namespace ladlework::ui
