#include "ui/members/person_section.h"

#include "ui/members/phase_change.h"
#include "ui/paint/theme.h"
#include "ui/shared/character_width.h"
#include "ui/shared/choices.h"
#include "ui/shared/day_edit.h"
#include "ui/shared/note_edit.h"
#include "ui/shared/problem_line.h"
#include "ui/shared/side_by_side.h"
#include "ui/shared/text_field.h"

#include <QComboBox>
#include <QFormLayout>
#include <QLabel>
#include <QSignalBlocker>
#include <QVBoxLayout>

namespace ladlework::ui {

namespace {

QString ageText(QDate birth, QDate today) {
    constexpr int monthsAYear = 12;
    constexpr int monthsShownUpTo = 24;
    const int months = monthsBetween(birth, today);
    if (months >= monthsShownUpTo)
        return PersonSection::tr("%1 years").arg(months / monthsAYear);
    return months == 1 ? PersonSection::tr("1 month") : PersonSection::tr("%1 months").arg(months);
}

} // namespace

PersonSection::PersonSection(const ScreenContext& context, QWidget* parent)
    : QWidget(parent), m_context(context), m_name(new TextField(this)), m_birth(new DayEdit(this)),
      m_age(new QLabel(this)), m_band(new QComboBox(this)), m_bandReason(new TextField(this)),
      m_phase(new QComboBox(this)), m_phaseChange(new PhaseChange(this)),
      m_problem(new ProblemLine(this)), m_remarks(new NoteEdit(this)) {
    lay();
    m_band->addItem(tr("by birth date"));
    for (AgeBand band : {AgeBand::InfantStartingSolids, AgeBand::Child, AgeBand::Adult})
        m_band->addItem(ageBandName(band), ageBandId(band));
    m_bandReason->setPlaceholderText(tr("needed for another band"));
    m_bandReason->setToolTip(
        tr("Why this person is treated by another band than the birth date's"));
    connectEdits();
}

void PersonSection::lay() {
    auto* section = new Section(tr("Person"), this);
    auto* columns = new SideBySide(section);
    auto* leftPart = new QWidget(columns);
    auto* left = new QFormLayout(leftPart);
    left->addRow(tr("&Name"), m_name);
    left->addRow(tr("&Born on"), m_birth);
    left->addRow(tr("Age"), m_age);
    left->addRow(tr("&Phase"), m_phase);
    auto* rightPart = new QWidget(columns);
    auto* right = new QFormLayout(rightPart);
    right->addRow(tr("Age ban&d"), m_band);
    right->addRow(tr("&Reason for it"), m_bandReason);
    right->addRow(tr("Re&marks"), m_remarks);
    m_remarks->setLines(2);
    constexpr int fieldWidth = 24;
    for (QWidget* field : std::initializer_list<QWidget*>{m_name, m_birth, m_bandReason})
        CharacterWidth::atLeast(*field, fieldWidth);
    columns->setSpacing(3 * step(*this));
    for (QWidget* part : {leftPart, rightPart}) {
        part->layout()->setContentsMargins(0, 0, 0, 0);
        part->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Maximum);
        columns->add(part);
    }
    section->body()->addWidget(columns, 0, Qt::AlignTop);
    section->body()->addWidget(m_phaseChange);
    section->body()->addWidget(m_problem);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(section);
    const QList<QWidget*> order{m_name, m_birth, m_phase, m_band, m_bandReason, m_remarks};
    for (qsizetype i = 1; i < order.size(); ++i)
        setTabOrder(order.at(i - 1), order.at(i));
}

void PersonSection::connectEdits() {
    connect(m_name, &TextField::committed, this, [this] {
        people::Member changed = m_member;
        changed.name = m_name->trimmed();
        save(tr("Renamed %1 to %2").arg(m_member.name, changed.name), changed);
    });
    connect(m_birth, &QuantityEdit::valueCommitted, this, [this] {
        people::Member changed = m_member;
        changed.birth = m_birth->day();
        save(tr("Changed %1's birth date").arg(m_member.name), changed);
    });
    connect(m_band, &QComboBox::activated, this, &PersonSection::saveBand);
    connect(m_bandReason, &TextField::committed, this, &PersonSection::saveBand);
    connect(m_bandReason, &QLineEdit::editingFinished, this, [this] {
        // Left without a reason: the band that was chosen is not kept.
        if (m_bandReason->trimmed().isEmpty())
            showBand();
    });
    connect(m_phase, &QComboBox::activated, this, &PersonSection::choosePhase);
    connect(m_phaseChange, &PhaseChange::moveWanted, this, &PersonSection::savePhase);
    connect(m_phaseChange, &PhaseChange::stayWanted, this, [this] {
        showPhase();
        m_phase->setFocus();
    });
    connect(m_remarks, &NoteEdit::committed, this, [this] {
        people::Member changed = m_member;
        changed.remarks = m_remarks->text();
        save(tr("Changed the remarks on %1").arg(m_member.name), changed);
    });
}

void PersonSection::show(std::shared_ptr<const casebook::Casebook> casebook,
                         const casebook::Standing& standing) {
    m_casebook = std::move(casebook);
    const casebook::Casebook& book = *m_casebook;
    if (m_member.id != standing.member.id)
        m_problem->clear();
    m_member = standing.member;
    m_name->setStored(m_member.name);
    m_birth->setToday(book.today());
    m_birth->setRange({}, book.today());
    m_birth->setDay(m_member.birth);
    m_today = book.today();
    m_age->setText(tr("%1, %2").arg(ageText(m_member.birth, m_today), ageBandName(standing.band)));
    showBand();
    showPhase();
    m_remarks->setText(m_member.remarks);
}

void PersonSection::showPhase() {
    QList<Choice> phases{{tr("no phase yet"), qint64{0}}};
    for (const people::Phase& phase : m_casebook->records().phases)
        phases.append({phase.name, qint64{phase.id.value}});
    setChoices(*m_phase, phases, qint64{m_member.phase.value});
    m_phaseChange->hide();
}

void PersonSection::showBand() {
    const QSignalBlocker blocker(m_band);
    const auto& own = m_member.bandOverride;
    m_band->setCurrentIndex(own ? std::max(0, m_band->findData(ageBandId(own->band))) : 0);
    const bool infant = ageBandOn(m_member.birth, m_today) == AgeBand::InfantUnderSixMonths;
    m_band->setEnabled(!infant);
    m_band->setToolTip(infant ? tr("Under 6 months the band cannot be changed.") : QString());
    m_bandReason->setStored(own ? own->reason : QString());
    m_bandReason->setEnabled(!infant);
}

QWidget* PersonSection::field(const QString& name) const {
    if (name == u"name")
        return m_name;
    if (name == u"birth")
        return m_birth;
    if (name == u"phase")
        return m_phase;
    return name == u"band" ? static_cast<QWidget*>(m_band) : nullptr;
}

void PersonSection::save(const QString& sentence, people::Member changed) {
    const Outcome outcome = m_context.workbook.act(sentence, [&](store::Action& action) {
        return m_context.workbook.families().changeMember(action, changed);
    });
    if (!m_problem->take(outcome)) {
        m_name->setStored(m_member.name);
        m_birth->setDay(m_member.birth);
        showBand();
    }
}

void PersonSection::saveBand() {
    people::Member changed = m_member;
    const auto band = ageBandFromId(m_band->currentData().toString());
    if (!band) {
        changed.bandOverride.reset();
    } else if (m_bandReason->trimmed().isEmpty()) {
        if (m_member.bandOverride) {
            m_problem->say(tr("An age band of your own needs its reason. Choose \"by birth date\" "
                              "to take it back."));
            showBand();
        } else {
            m_bandReason->setFocus(); // the band is kept together with its reason
        }
        return;
    } else {
        changed.bandOverride = people::Member::BandOverride{*band, m_bandReason->trimmed()};
    }
    if (changed.bandOverride != m_member.bandOverride)
        save(tr("Changed %1's age band").arg(m_member.name), changed);
}

/// A first phase is set at once; from one to another the kitchen's changes are shown first.
void PersonSection::choosePhase() {
    const PhaseId wanted{m_phase->currentData().toLongLong()};
    const casebook::Standing* standing = m_casebook->standing(m_member.id);
    if (wanted == m_member.phase || !standing) {
        m_phaseChange->hide();
        return;
    }
    if (!standing->phase) {
        savePhase();
        return;
    }
    std::optional<people::Phase> after;
    for (const people::Phase& phase : m_casebook->records().phases)
        if (phase.id == wanted)
            after = phase;
    m_phaseChange->ask(*m_casebook, *standing, after);
}

void PersonSection::savePhase() {
    people::Member changed = m_member;
    changed.phase = PhaseId{m_phase->currentData().toLongLong()};
    if (changed.phase != m_member.phase)
        save(tr("Moved %1 to the phase %2").arg(m_member.name, m_phase->currentText()), changed);
}

} // namespace ladlework::ui
