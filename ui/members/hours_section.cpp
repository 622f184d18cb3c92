#include "ui/members/hours_section.h"

#include "ui/members/record_rows.h"
#include "ui/shared/character_width.h"
#include "ui/shared/problem_line.h"
#include "ui/shared/section.h"
#include "ui/shared/side_by_side.h"
#include "ui/shared/table_look.h"
#include "ui/shared/time_edit.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLocale>
#include <QPushButton>
#include <QShortcut>
#include <QSignalBlocker>
#include <QSpinBox>
#include <QTableView>
#include <QVBoxLayout>
#include <algorithm>
#include <tuple>

namespace ladlework::ui {

using week::UsualHours;

namespace {

/// What a first stretch is, to be typed over.
UsualHours firstStretch() {
    constexpr int hoursLong = 6;
    return {Qt::Saturday, {QTime(9, 0), quantity::Duration::fromHours(hoursLong), 1}};
}

QString dayName(int weekday) {
    return QLocale().standaloneDayName(weekday);
}

} // namespace

HoursSection::HoursSection(const ScreenContext& context, QWidget* parent)
    : QWidget(parent), m_context(context), m_model(new HoursModel(this)),
      m_table(makeTable(m_model, tr("Free hours for cooking"), HoursModel::PotsColumn, this)),
      m_day(new QComboBox(this)), m_from(new TimeEdit(this)), m_length(new DurationEdit(this)),
      m_pots(new QSpinBox(this)), m_add(new QPushButton(tr("Add free hours"), this)),
      m_remove(new QPushButton(tr("Remove free hours"), this)),
      m_none(new QLabel(tr("No free hours yet: a week can only be planned when it is known on "
                           "which days this kitchen has time, and for how long."),
                        this)),
      m_line(new SideBySide(this)), m_problem(new ProblemLine(this)) {
    auto* section = new Section(tr("Free hours for cooking"), this);
    section->setRemark(tr("Of every week; a single week can differ."));
    section->addAction(m_add);
    section->addAction(m_remove);
    m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
    section->body()->addWidget(m_table);
    m_none->setWordWrap(true);
    m_none->setForegroundRole(QPalette::PlaceholderText);
    section->body()->addWidget(m_none);
    makeLine();
    section->body()->addWidget(m_line);
    section->body()->addWidget(m_problem);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(section);
    connectEdits();
}

void HoursSection::makeLine() {
    for (int weekday = Qt::Monday; weekday <= Qt::Sunday; ++weekday)
        m_day->addItem(dayName(weekday), weekday);
    m_pots->setRange(1, week::mostPotsAtOnce);
    m_pots->setKeyboardTracking(false);
    m_from->setPlaceholderText(tr("any time"));
    const auto part = [this](QWidget* first, const QString& before, QWidget* second,
                             const QString& after) {
        auto* made = new QWidget(m_line);
        auto* row = new QHBoxLayout(made);
        row->setContentsMargins(0, 0, 0, 0);
        row->addWidget(first, 1);
        row->addWidget(new QLabel(before, made));
        row->addWidget(second, 1);
        if (!after.isEmpty())
            row->addWidget(new QLabel(after, made));
        m_line->add(made);
    };
    part(m_day, tr("from"), m_from, {});
    part(m_length, tr("long,"), m_pots, tr("at once"));
    constexpr int timeWidth = 10;
    for (QWidget* field : std::initializer_list<QWidget*>{m_from, m_length})
        CharacterWidth::atLeast(*field, timeWidth);
    m_day->setAccessibleName(tr("Day of the free hours"));
    m_from->setAccessibleName(tr("When the free hours begin"));
    m_length->setAccessibleName(tr("How long they are"));
    m_pots->setAccessibleName(tr("Pots that can be on at once"));
    m_length->setToolTip(
        tr("A pot needs time to heat up and to cool, not only to simmer: what does not fit is not "
           "planned"));
}

void HoursSection::connectEdits() {
    connect(m_add, &QPushButton::clicked, this, &HoursSection::add);
    connect(m_remove, &QPushButton::clicked, this, &HoursSection::removeChosen);
    auto* deletes = new QShortcut(QKeySequence::Delete, m_table);
    deletes->setContext(Qt::WidgetShortcut);
    connect(deletes, &QShortcut::activated, this, &HoursSection::removeChosen);
    connect(m_day, &QComboBox::activated, this, &HoursSection::saveChosen);
    connect(m_from, &QuantityEdit::valueCommitted, this, &HoursSection::saveChosen);
    connect(m_length, &QuantityEdit::valueCommitted, this, &HoursSection::saveChosen);
    connect(m_pots, &QSpinBox::valueChanged, this, &HoursSection::saveChosen);
    connect(m_table->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            &HoursSection::showChosen);
}

void HoursSection::show(const casebook::Casebook& book) {
    const bool sameFamily = m_family == book.records().family.id;
    m_family = book.records().family.id;
    const int row = sameFamily ? m_table->currentIndex().row() : 0;
    if (!sameFamily || m_model->hours() != book.records().usualHours) {
        const QSignalBlocker blocker(m_table->selectionModel());
        m_model->setHours(book.records().usualHours);
    }
    RecordRows{m_table, m_line, m_remove, m_none}.show(row);
    showChosen();
}

void HoursSection::showChosen() {
    const UsualHours* usual = m_model->hoursAt(m_table->currentIndex().row());
    for (QWidget* widget :
         std::initializer_list<QWidget*>{m_day, m_from, m_length, m_pots, m_remove})
        widget->setEnabled(usual != nullptr);
    if (usual == nullptr)
        return;
    m_day->setCurrentIndex(m_day->findData(usual->weekday));
    m_from->setTime(usual->hours.from);
    m_length->setValue(usual->hours.length, quantity::MeasureSystem::UsCustomary);
    const QSignalBlocker blocker(m_pots);
    m_pots->setValue(usual->hours.pots);
    m_pots->setSuffix(usual->hours.pots == 1 ? tr(" pot") : tr(" pots"));
}

QWidget* HoursSection::firstField() const {
    return m_model->rowCount() > 0 ? static_cast<QWidget*>(m_day) : m_add;
}

UsualHours HoursSection::fromLine() const {
    return {m_day->currentData().toInt(), {m_from->time(), m_length->value(), m_pots->value()}};
}

bool HoursSection::save(QList<UsualHours> hours, const QString& sentence,
                        const UsualHours& chosen) {
    std::ranges::stable_sort(hours, {}, [](const UsualHours& usual) {
        return std::tuple(usual.weekday, !usual.hours.from.isValid(), usual.hours.from);
    });
    const Outcome outcome = m_context.workbook.act(sentence, [&](store::Action& action) {
        return m_context.workbook.families().setUsualHours(action, m_family, hours);
    });
    if (!m_problem->take(outcome)) {
        showChosen();
        return false;
    }
    if (const qsizetype row = m_model->hours().indexOf(chosen); row >= 0)
        m_table->selectRow(static_cast<int>(row));
    return true;
}

void HoursSection::saveChosen() {
    const int row = m_table->currentIndex().row();
    if (m_model->hoursAt(row) == nullptr)
        return;
    QList<UsualHours> hours = m_model->hours();
    const UsualHours changed = fromLine();
    if (hours.at(row) == changed)
        return;
    hours[row] = changed;
    save(hours, tr("Changed the free hours on %1").arg(dayName(changed.weekday)), changed);
}

void HoursSection::add() {
    QList<UsualHours> hours = m_model->hours();
    UsualHours fresh = hours.isEmpty() ? firstStretch() : hours.last();
    if (!hours.isEmpty())
        fresh.weekday = fresh.weekday % Qt::Sunday + 1; // as the last one, a day later
    hours.append(fresh);
    if (!save(hours, tr("Added free hours on %1").arg(dayName(fresh.weekday)), fresh))
        return;
    m_day->setFocus();
}

void HoursSection::removeChosen() {
    const int row = m_table->currentIndex().row();
    const UsualHours* usual = m_model->hoursAt(row);
    if (usual == nullptr)
        return;
    const QString day = dayName(usual->weekday);
    QList<UsualHours> hours = m_model->hours();
    hours.removeAt(row);
    save(hours, tr("Removed the free hours on %1").arg(day), {});
}

} // namespace ladlework::ui
