#include "ui/members/family_section.h"

#include "foundation/language_scope.h"
#include "ui/paint/theme.h"
#include "ui/shared/character_width.h"
#include "ui/shared/day_edit.h"
#include "ui/shared/note_edit.h"
#include "ui/shared/problem_line.h"
#include "ui/shared/section.h"
#include "ui/shared/side_by_side.h"
#include "ui/shared/text_field.h"

#include <QComboBox>
#include <QCompleter>
#include <QFormLayout>
#include <QSignalBlocker>
#include <QSpinBox>
#include <QTimeZone>
#include <QVBoxLayout>

namespace ladlework::ui {

using people::Family;

FamilySection::FamilySection(const ScreenContext& context, QWidget* parent)
    : QWidget(parent), m_context(context), m_name(new TextField(this)),
      m_contact(new NoteEdit(this)), m_status(new QComboBox(this)), m_since(new DayEdit(this)),
      m_review(new DayEdit(this)), m_measures(new QComboBox(this)), m_paper(new QComboBox(this)),
      m_language(new QComboBox(this)), m_zone(new QComboBox(this)),
      m_altitude(new AltitudeEdit(this)), m_fridge(new VolumeEdit(this)),
      m_freezer(new VolumeEdit(this)), m_meat(new MassEdit(this)), m_mostOfOne(new QSpinBox(this)),
      m_remarks(new NoteEdit(this)), m_problem(new ProblemLine(this)) {
    auto* family = new Section(tr("Family"), this);
    auto* left = new QFormLayout;
    left->addRow(tr("&Name"), m_name);
    left->addRow(tr("&Contact"), m_contact);
    left->addRow(tr("S&tatus"), m_status);
    left->addRow(tr("Taken on"), m_since);
    left->addRow(tr("Next review"), m_review);
    left->addRow(tr("&Remarks"), m_remarks);
    family->body()->addLayout(left);
    auto* kitchen = new Section(tr("Kitchen"), this);
    auto* right = new QFormLayout;
    right->addRow(tr("Meas&ures"), m_measures);
    right->addRow(tr("&Paper"), m_paper);
    right->addRow(tr("Pages &in"), m_language);
    right->addRow(tr("Time &zone"), m_zone);
    right->addRow(tr("A&ltitude"), m_altitude);
    right->addRow(tr("Refrigerator holds"), m_fridge);
    right->addRow(tr("Freezer h&olds"), m_freezer);
    right->addRow(tr("&Meat eaten a day"), m_meat);
    right->addRow(tr("Most of one animal"), m_mostOfOne);
    m_fridge->setToolTip(tr("Room for stock in the refrigerator"));
    m_freezer->setToolTip(tr("Room for stock in the freezer"));
    m_meat->setToolTip(tr("Cooked meat that the table eats in a day"));
    m_mostOfOne->setToolTip(tr("How often one animal is cooked in a week at most"));
    m_altitude->setToolTip(tr("Height of the kitchen above the sea; water boils cooler higher up"));
    m_zone->setToolTip(tr("A day of the log is a day of this place"));
    kitchen->body()->addLayout(right);
    kitchen->body()->addStretch();
    family->body()->addStretch();
    auto* sides = new SideBySide(this);
    sides->setSpacing(step(*this));
    sides->add(family);
    sides->add(kitchen);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(sides);
    layout->addWidget(m_problem);
    m_contact->setLines(2);
    constexpr int fieldWidth = 24;
    for (QWidget* field : std::initializer_list<QWidget*>{m_name, m_since, m_review, m_zone})
        CharacterWidth::atLeast(*field, fieldWidth);
    m_review->setMayBeEmpty(true);
    m_review->setPlaceholderText(tr("none planned"));
    fillChoices();
    connectEdits();
}

void FamilySection::fillChoices() {
    m_status->addItem(tr("Active"), people::statusId(Family::Status::Active));
    m_status->addItem(tr("Resting"), people::statusId(Family::Status::Resting));
    m_status->addItem(tr("Finished"), people::statusId(Family::Status::Finished));
    m_measures->addItem(tr("US cups and pounds"));
    m_measures->addItem(tr("Metric"));
    m_paper->addItem(tr("Letter"));
    m_paper->addItem(tr("A4"));
    for (const Language& language : shippedLanguages())
        m_language->addItem(language.name, language.id);
    constexpr int most = 42; // six a day; people::check() says so too
    m_mostOfOne->setRange(0, most);
    m_mostOfOne->setSpecialValueText(tr("as often as it takes"));
    m_mostOfOne->setSuffix(tr(" a week"));
    m_mostOfOne->setKeyboardTracking(false);
    m_zone->setEditable(true);
    m_zone->setInsertPolicy(QComboBox::NoInsert);
    for (const QByteArray& id : QTimeZone::availableTimeZoneIds())
        m_zone->addItem(QString::fromLatin1(id));
    m_zone->completer()->setFilterMode(Qt::MatchContains);
    m_zone->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
}

void FamilySection::connectEdits() {
    const auto save = [this] {
        FamilySection::save();
    };
    for (TextField* field : {m_name})
        connect(field, &TextField::committed, this, save);
    for (NoteEdit* edit : {m_contact, m_remarks})
        connect(edit, &NoteEdit::committed, this, save);
    for (QuantityEdit* edit : std::initializer_list<QuantityEdit*>{m_since, m_review, m_altitude,
                                                                   m_fridge, m_freezer, m_meat})
        connect(edit, &QuantityEdit::valueCommitted, this, save);
    connect(m_mostOfOne, &QSpinBox::valueChanged, this, save);
    for (QComboBox* box : {m_status, m_measures, m_paper, m_language, m_zone})
        connect(box, &QComboBox::activated, this, save);
}

void FamilySection::show(const casebook::Casebook& book) {
    m_family = book.records().family;
    m_since->setToday(book.today());
    m_since->setRange({}, book.today());
    m_review->setToday(book.today());
    showFields();
}

void FamilySection::showFields() {
    const auto measures = m_family.measures;
    m_name->setStored(m_family.name);
    m_contact->setText(m_family.contact);
    m_remarks->setText(m_family.remarks);
    m_status->setCurrentIndex(m_status->findData(people::statusId(m_family.status)));
    m_since->setDay(m_family.since);
    m_review->setDay(m_family.reviewOn);
    m_measures->setCurrentIndex(measures == quantity::MeasureSystem::Metric ? 1 : 0);
    m_paper->setCurrentIndex(m_family.paper == people::Paper::A4 ? 1 : 0);
    m_language->setCurrentIndex(m_language->findData(m_family.handoutLanguage));
    {
        const QSignalBlocker blocker(m_mostOfOne);
        m_mostOfOne->setValue(m_family.mostOfOneAnimal);
    }
    m_zone->setCurrentText(QString::fromLatin1(m_family.zone.id()));
    m_altitude->setValue(m_family.altitude, measures);
    m_fridge->setValue(m_family.fridgeRoom, measures);
    m_freezer->setValue(m_family.freezerRoom, measures);
    m_meat->setValue(m_family.meatPerDay, measures);
}

QWidget* FamilySection::field(const QString& name) const {
    if (name == u"altitude")
        return m_altitude;
    if (name == u"fridge")
        return m_fridge;
    if (name == u"freezer")
        return m_freezer;
    if (name == u"handoutLanguage")
        return m_language;
    if (name == u"mostOfOneAnimal")
        return m_mostOfOne;
    return name == u"review" ? static_cast<QWidget*>(m_review) : nullptr;
}

void FamilySection::save() {
    Family changed = m_family;
    changed.name = m_name->trimmed();
    changed.contact = m_contact->text();
    changed.remarks = m_remarks->text();
    changed.status =
        people::statusFromId(m_status->currentData().toString()).value_or(m_family.status);
    changed.since = m_since->day();
    changed.reviewOn = m_review->day();
    changed.measures = m_measures->currentIndex() == 1 ? quantity::MeasureSystem::Metric
                                                       : quantity::MeasureSystem::UsCustomary;
    changed.paper = m_paper->currentIndex() == 1 ? people::Paper::A4 : people::Paper::Letter;
    // One that this program does not have stays what it is.
    if (m_language->currentIndex() >= 0)
        changed.handoutLanguage = m_language->currentData().toString();
    changed.mostOfOneAnimal = m_mostOfOne->value();
    changed.zone = QTimeZone(m_zone->currentText().toLatin1());
    changed.altitude = m_altitude->value();
    changed.fridgeRoom = m_fridge->value();
    changed.freezerRoom = m_freezer->value();
    changed.meatPerDay = m_meat->value();
    const Outcome outcome = m_context.workbook.act(
        tr("Changed the record of the family %1").arg(changed.name), [&](store::Action& action) {
            return m_context.workbook.families().changeFamily(action, changed);
        });
    if (!m_problem->take(outcome))
        showFields();
}

} // namespace ladlework::ui
