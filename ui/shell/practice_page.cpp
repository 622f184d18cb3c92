#include "ui/shell/practice_page.h"

#include "kitchen/keeping_figures.h"
#include "ui/paint/theme.h"
#include "ui/shared/note_edit.h"
#include "ui/shared/problem_line.h"
#include "ui/shared/section.h"
#include "ui/shared/text_field.h"
#include "ui/shell/ladder_house_section.h"
#include "ui/shell/phases_model.h"
#include "ui/shell/symptoms_section.h"

#include <QComboBox>
#include <QCompleter>
#include <QFormLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLocale>
#include <QPushButton>
#include <QScrollArea>
#include <QSpinBox>
#include <QTableView>
#include <QVBoxLayout>

#include <cmath>

namespace ladlework::ui {

namespace {

QLabel* quiet(const QString& text) {
    auto* label = new QLabel(text);
    label->setForegroundRole(QPalette::PlaceholderText);
    label->setWordWrap(true);
    label->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    return label;
}

QFormLayout* formIn(Section& section) {
    auto* form = new QFormLayout;
    form->setSpacing(step(section));
    section.body()->addLayout(form);
    return form;
}

QString keeps(const char* figure) {
    return QLocale().toString(kitchen::KeepingFigures::shipped().count(QLatin1String(figure)));
}

} // namespace

PracticePage::PracticePage(const ScreenContext& context, QWidget* parent)
    : QWidget(parent), m_context(context), m_name(new TextField), m_practitioner(new TextField),
      m_contact(new NoteEdit), m_emergency(new TextField), m_measures(new QComboBox),
      m_paper(new QComboBox), m_zone(new QComboBox), m_fridgeDays(new QSpinBox),
      m_spill(new QSpinBox), m_currency(new TextField), m_phases(new PhasesModel(context, this)),
      m_phaseView(new QTableView), m_problem(new ProblemLine(this)),
      m_phaseProblem(new ProblemLine(this)), m_ladders(new LadderHouseSection(context, this)),
      m_symptoms(new SymptomsSection(context, this)) {
    fillChoices();
    const int gap = step(*this);
    auto* title = new QLabel(tr("Practice"));
    title->setFont(titleFont(font()));
    auto* upper = new QHBoxLayout;
    upper->setSpacing(2 * gap);
    upper->addWidget(makeLetterhead(), 1);
    upper->addWidget(makeRules(), 1);

    auto* page = new QWidget;
    auto* column = new QVBoxLayout(page);
    column->setContentsMargins(2 * gap, 2 * gap, 2 * gap, 2 * gap);
    column->setSpacing(2 * gap);
    column->addWidget(title);
    column->addLayout(upper);
    column->addWidget(m_problem);
    column->addWidget(makePhases());
    column->addWidget(m_ladders);
    column->addWidget(m_symptoms);
    column->addStretch();
    auto* area = new QScrollArea;
    area->setWidget(page);
    area->setWidgetResizable(true);
    area->setFocusPolicy(Qt::NoFocus);
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->addWidget(area);

    connectFields();
    connect(&context.workbook, &store::Workbook::changed, this, [this] {
        if (isVisible())
            refresh();
    });
}

void PracticePage::fillChoices() {
    m_measures->addItems({tr("US cups and pounds"), tr("Metric")});
    m_paper->addItems({tr("Letter"), tr("A4")});
    m_zone->setEditable(true);
    m_zone->setInsertPolicy(QComboBox::NoInsert);
    for (const QByteArray& id : QTimeZone::availableTimeZoneIds())
        m_zone->addItem(QString::fromLatin1(id));
    m_zone->completer()->setFilterMode(Qt::MatchContains);
    m_zone->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    m_fridgeDays->setRange(people::leastFridgeDays(), people::mostFridgeDays());
    m_fridgeDays->setSuffix(tr(" days"));
    m_spill->setRange(0, 100);
    m_spill->setSuffix(tr(" %"));
}

Section* PracticePage::makeLetterhead() {
    auto* section = new Section(tr("Letterhead"));
    section->setRemark(tr("as it prints on handouts"));
    QFormLayout* form = formIn(*section);
    m_contact->setLines(3);
    m_contact->setAccessibleName(tr("Contact"));
    m_emergency->setPlaceholderText(tr("the number to dial in an emergency"));
    form->addRow(tr("&Name of the practice"), m_name);
    form->addRow(tr("Pract&itioner"), m_practitioner);
    form->addRow(tr("&Contact"), m_contact);
    form->addRow(tr("Emergency n&umber"), m_emergency);
    form->addRow(QString(), quiet(tr("Shown first when a red flag is entered, and on every "
                                     "handout.")));
    section->body()->addStretch();
    return section;
}

Section* PracticePage::makeRules() {
    auto* section = new Section(tr("House rules"));
    section->setRemark(tr("what a new family starts with"));
    QFormLayout* form = formIn(*section);
    form->addRow(tr("&Measures"), m_measures);
    form->addRow(tr("&Paper"), m_paper);
    form->addRow(tr("&Time zone"), m_zone);
    form->addRow(tr("Stock &keeps in the refrigerator"), m_fridgeDays);
    form->addRow(QString(),
                 quiet(tr("The published storage charts allow %1 to %2 days for soups "
                          "and stews; an older row gives broth %3 to %4. It can be "
                          "made stricter, never more than %2.")
                           .arg(keeps("soup-fridge-least"), keeps("soup-fridge-most"),
                                keeps("broth-fridge-least"), keeps("broth-fridge-most"))));
    form->addRow(tr("Added for spi&lls"), m_spill);
    form->addRow(QString(), quiet(tr("Put on top of what is drunk when a week is reckoned.")));
    m_currency->setPlaceholderText(tr("such as $"));
    form->addRow(tr("Currency of prices"), m_currency);
    section->body()->addStretch();
    return section;
}

Section* PracticePage::makePhases() {
    auto* section = new Section(tr("Phases"));
    section->setRemark(tr("in order; what each asks of a pot"));
    m_phaseView->setModel(m_phases);
    m_phaseView->setAccessibleName(tr("Phases"));
    m_phaseView->verticalHeader()->hide();
    m_phaseView->verticalHeader()->setDefaultSectionSize(fontMetrics().height() * 2);
    m_phaseView->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    m_phaseView->horizontalHeader()->setSectionResizeMode(PhasesModel::NameColumn,
                                                          QHeaderView::Stretch);
    m_phaseView->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    m_phaseView->horizontalHeader()->setHighlightSections(false);
    m_phaseView->setSelectionMode(QAbstractItemView::SingleSelection);
    m_phaseView->setTabKeyNavigation(false);
    m_phaseView->setMinimumHeight(fontMetrics().height() * 11);
    section->body()->addWidget(m_phaseView);
    section->body()->addWidget(m_phaseProblem);
    connect(m_phases, &PhasesModel::said, m_phaseProblem, &ProblemLine::say);

    const auto button = [this, section](const QString& text, auto&& work) {
        auto* made = new QPushButton(text);
        connect(made, &QPushButton::clicked, m_phases, work);
        section->addAction(made);
    };
    const auto row = [this] {
        return m_phaseView->currentIndex().row();
    };
    button(tr("Add a phase"), [this] { m_phases->addPhase(); });
    button(tr("Earlier"), [this, row] { m_phases->movePhase(row(), -1); });
    button(tr("Later"), [this, row] { m_phases->movePhase(row(), 1); });
    button(tr("Remove"), [this, row] {
        if (row() >= 0)
            m_phases->removePhase(row());
    });
    return section;
}

void PracticePage::connectFields() {
    const auto changed = [this](const QString& what) {
        return [this, what] {
            save(tr("Changed the practice's %1").arg(what));
        };
    };
    connect(m_name, &TextField::committed, this, changed(tr("name")));
    connect(m_practitioner, &TextField::committed, this, changed(tr("practitioner")));
    connect(m_contact, &NoteEdit::committed, this, changed(tr("contact")));
    connect(m_emergency, &TextField::committed, this, changed(tr("emergency number")));
    connect(m_measures, &QComboBox::activated, this, changed(tr("measures")));
    connect(m_paper, &QComboBox::activated, this, changed(tr("paper")));
    connect(m_zone, &QComboBox::activated, this, changed(tr("time zone")));
    connect(m_fridgeDays, &QSpinBox::valueChanged, this, changed(tr("refrigerator days")));
    connect(m_currency, &TextField::committed, this, changed(tr("currency")));
    m_spill->setKeyboardTracking(false);
    connect(m_spill, &QSpinBox::valueChanged, this, changed(tr("share for spills")));
}

void PracticePage::refresh() {
    const people::Practice practice = m_context.workbook.practice().practice();
    const QSignalBlocker quietDays(m_fridgeDays);
    const QSignalBlocker quietSpill(m_spill);
    m_name->setStored(practice.name);
    m_practitioner->setStored(practice.practitioner);
    m_contact->setText(practice.contact);
    m_emergency->setStored(practice.emergencyNumber);
    m_measures->setCurrentIndex(practice.measures == quantity::MeasureSystem::Metric ? 1 : 0);
    m_paper->setCurrentIndex(practice.paper == people::Paper::A4 ? 1 : 0);
    m_zone->setCurrentText(QString::fromLatin1(practice.zone.id()));
    m_fridgeDays->setValue(practice.fridgeDays);
    m_spill->setValue(static_cast<int>(std::lround(practice.spill * 100.0)));
    m_currency->setStored(practice.currency);
    m_phases->refresh();
    m_ladders->refresh();
    m_symptoms->refresh();
}

void PracticePage::save(const QString& sentence) {
    people::Practice practice = m_context.workbook.practice().practice();
    practice.name = m_name->trimmed();
    practice.practitioner = m_practitioner->trimmed();
    practice.contact = m_contact->text();
    practice.emergencyNumber = m_emergency->trimmed();
    practice.measures = m_measures->currentIndex() == 1 ? quantity::MeasureSystem::Metric
                                                        : quantity::MeasureSystem::UsCustomary;
    practice.paper = m_paper->currentIndex() == 1 ? people::Paper::A4 : people::Paper::Letter;
    practice.zone = QTimeZone(m_zone->currentText().trimmed().toLatin1());
    practice.fridgeDays = m_fridgeDays->value();
    practice.spill = m_spill->value() / 100.0;
    practice.currency = m_currency->trimmed();
    const Outcome outcome = m_context.workbook.act(sentence, [&](store::Action& action) {
        return m_context.workbook.practice().setPractice(action, practice);
    });
    if (!m_problem->take(outcome))
        refresh();
}

void PracticePage::showEvent(QShowEvent* event) {
    refresh();
    QWidget::showEvent(event);
}

} // namespace ladlework::ui
