#include "ui/members/climb_section.h"

#include "intake/ladder_figures.h"
#include "ui/members/ladder_rules_panel.h"
#include "ui/shared/character_width.h"
#include "ui/shared/day_edit.h"
#include "ui/shared/day_text.h"
#include "ui/shared/section.h"
#include "ui/shared/text_field.h"

#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLocale>
#include <QPushButton>
#include <QSpinBox>
#include <QStyle>
#include <QVBoxLayout>
#include <algorithm>

namespace ladlework::ui {

using quantity::Volume;

namespace {
constexpr int longestHoldDays = 730;
} // namespace

ClimbSection::ClimbSection(const ScreenContext& context, QWidget* parent)
    : QWidget(parent), m_context(context), m_section(nullptr), m_body(new QWidget(this)),
      m_refer(new QLabel(this)), m_low(new VolumeEdit(this)), m_high(new VolumeEdit(this)),
      m_holdDays(new QSpinBox(this)), m_easeOff(new DayEdit(this)), m_usual(new QPushButton(this)),
      m_start(new VolumeEdit(this)), m_rungs(new TextField(this)), m_where(new QLabel(this)),
      m_layOut(new QPushButton(tr("&Lay out the rungs"), this)),
      m_afresh(new QPushButton(tr("Start a new ladder today"), this)),
      m_rules(new LadderRulesPanel(this)) {
    m_section = new Section(tr("Target and ladder"), this);
    m_refer->setWordWrap(true);
    m_refer->setText(tr("Under 6 months there is no target and no ladder. Refer to the child's "
                        "own clinician."));
    m_section->body()->addWidget(m_refer);
    m_section->body()->addWidget(m_body);
    auto* form = new QFormLayout(m_body);
    form->setContentsMargins(0, 0, 0, 0);
    makeTarget(*form);
    makeLadder(*form);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_section);
    // Amounts and days are short: the edits stay as wide as such words are.
    constexpr int amountWidth = 14;
    constexpr int dayWidth = 24;
    for (VolumeEdit* edit : {m_low, m_high, m_start})
        CharacterWidth::hold(*edit, amountWidth);
    CharacterWidth::hold(*m_easeOff, dayWidth);
}

void ClimbSection::makeTarget(QFormLayout& form) {
    m_low->setAccessibleName(tr("Low end of the daily target"));
    m_high->setAccessibleName(tr("High end of the daily target"));
    m_holdDays->setRange(1, longestHoldDays);
    m_holdDays->setSuffix(tr(" days"));
    m_holdDays->setToolTip(tr("Two to twelve months by common practice; yours to set."));
    m_easeOff->setMayBeEmpty(true);
    m_easeOff->setPlaceholderText(tr("not planned"));
    m_easeOff->setAccessibleName(tr("Easing off from"));
    auto* range = new QHBoxLayout;
    range->addWidget(m_low);
    range->addWidget(new QLabel(tr("to"), this));
    range->addWidget(m_high);
    range->addWidget(m_usual);
    range->addStretch();
    auto* label = new QLabel(tr("Daily &target"), this);
    label->setBuddy(m_low);
    form.addRow(label, range);
    auto* held = new QHBoxLayout;
    held->addWidget(m_holdDays);
    held->addWidget(new QLabel(tr("then easing off from"), this));
    held->addWidget(m_easeOff);
    held->addStretch();
    auto* heldLabel = new QLabel(tr("Held for"), this);
    heldLabel->setBuddy(m_holdDays);
    form.addRow(heldLabel, held);
    connect(m_low, &QuantityEdit::valueCommitted, this, [this] {
        // A new low end above the old high end means that the range moved up.
        if (m_high->value() < m_low->value())
            m_high->setValue(m_low->value(), m_measures);
        saveTarget();
    });
    connect(m_high, &QuantityEdit::valueCommitted, this, &ClimbSection::saveTarget);
    connect(m_holdDays, &QSpinBox::editingFinished, this, [this] {
        if (m_standing && m_standing->target) // walking past the days sets no target
            saveTarget();
    });
    connect(m_easeOff, &QuantityEdit::valueCommitted, this, &ClimbSection::saveTarget);
    connect(m_usual, &QPushButton::clicked, this, &ClimbSection::takeUsualTarget);
}

void ClimbSection::makeLadder(QFormLayout& form) {
    m_start->setAccessibleName(tr("First amount of the ladder"));
    m_rungs->setAccessibleName(tr("Rungs of the ladder, separated by commas"));
    m_where->setWordWrap(true);
    auto* start = new QHBoxLayout;
    start->addWidget(m_start);
    start->addWidget(m_layOut);
    start->addWidget(m_afresh);
    start->addStretch();
    auto* startLabel = new QLabel(tr("Start with"), this);
    startLabel->setBuddy(m_start);
    form.addRow(startLabel, start);
    m_rungsLabel = new QLabel(tr("R&ungs"), this);
    m_rungsLabel->setBuddy(m_rungs);
    form.addRow(m_rungsLabel, m_rungs);
    form.addRow(tr("Now"), m_where);
    m_rulesLabel = new QLabel(tr("Rules"), this);
    form.addRow(m_rulesLabel, m_rules);
    connect(m_layOut, &QPushButton::clicked, this, &ClimbSection::layOutRungs);
    connect(m_start, &QLineEdit::returnPressed, this, [this] {
        if (m_standing &&
            !m_standing->ladder) // an existing ladder is laid out anew by the button only
            layOutRungs();
    });
    connect(m_rungs, &TextField::committed, this, &ClimbSection::saveRungs);
    connect(m_afresh, &QPushButton::clicked, this, &ClimbSection::startAfresh);
    connect(m_rules, &LadderRulesPanel::committed, this, &ClimbSection::saveRules);
}

void ClimbSection::show(const casebook::Casebook& book, const casebook::Standing& standing) {
    m_standing = standing;
    m_today = book.today();
    m_measures = book.records().family.measures;
    const bool infant = standing.band == AgeBand::InfantUnderSixMonths;
    m_refer->setVisible(infant);
    m_body->setVisible(!infant);
    if (infant)
        return;
    showTarget();
    showLadder();
}

void ClimbSection::showTarget() {
    const std::optional<intake::Target> usual = intake::usualTarget(m_standing->band);
    const intake::Target target = m_standing->target.value_or(usual.value_or(intake::Target{}));
    m_low->setValue(target.low, m_measures);
    m_high->setValue(target.high, m_measures);
    const QSignalBlocker blocker(m_holdDays);
    m_holdDays->setValue(target.holdDays);
    m_easeOff->setToday(m_today);
    m_easeOff->setDay(target.easeOffFrom);
    const bool isUsual =
        m_standing->target && usual && target.low == usual->low && target.high == usual->high;
    m_usual->setVisible(usual && !isUsual);
    m_usual->setProperty("primary", !m_standing->target);
    m_usual->style()->polish(m_usual);
    m_section->setRemark(m_standing->target ? QString()
                                            : tr("No target yet: these are the usual amounts."));
    if (!usual)
        return;
    m_usual->setText(m_standing->target ? tr("Usual: %1 to %2")
                                              .arg(quantity::printVolume(usual->low, m_measures),
                                                   quantity::printVolume(usual->high, m_measures))
                                        : tr("Set this target"));
}

bool ClimbSection::isStopped() const {
    return m_standing->ladder && m_standing->replay.state == intake::LadderState::Stopped;
}

/// Rungs, rules or a new ladder would move a stopped member without a decision: they wait for it.
void ClimbSection::holdWhileStopped() {
    const bool stopped = isStopped();
    const bool mayLayOut = m_standing->target.has_value() && !stopped;
    m_layOut->setEnabled(mayLayOut);
    m_start->setEnabled(mayLayOut);
    for (QWidget* part : std::initializer_list<QWidget*>{m_afresh, m_rungs, m_rules})
        part->setEnabled(!stopped);
    const QString why = stopped ? tr("The ladder is stopped: the decision to go on comes first "
                                     "(Progress).")
                                : QString();
    for (QWidget* part : std::initializer_list<QWidget*>{m_layOut, m_start, m_afresh, m_rules})
        part->setToolTip(why);
    m_rungs->setToolTip(stopped ? why
                                : tr("The amounts from the first sip up to the target, separated "
                                     "by commas. Changing them replays the log on the new rungs."));
}

void ClimbSection::showLadder() {
    const auto& ladder = m_standing->ladder;
    holdWhileStopped();
    m_afresh->setVisible(ladder.has_value());
    for (QWidget* part :
         std::initializer_list<QWidget*>{m_rungsLabel, m_rungs, m_rulesLabel, m_rules})
        part->setVisible(ladder.has_value());
    if (!ladder) {
        m_start->setValue(Volume::fromTeaspoons(intake::ladderFigure(QStringLiteral("first-sip"))),
                          m_measures);
        m_rungs->setStored({});
        m_where->setText(m_standing->target
                             ? tr("No ladder yet. Type the first amount and lay out the rungs.")
                             : tr("Set the daily target first; the ladder climbs to its low end."));
        m_rules->setRules({});
        return;
    }
    m_start->setValue(ladder->rungs.first(), m_measures);
    m_rungs->setStored(rungsText(ladder->rungs));
    const int rung = m_standing->replay.rung;
    QString words = tr("%1, rung %2 of %3: %4 a day, on this ladder since %5.")
                        .arg(intake::stateName(m_standing->replay.state))
                        .arg(rung + 1)
                        .arg(ladder->rungs.size())
                        .arg(quantity::printVolume(ladder->rungs.at(rung), m_measures),
                             printDay(ladder->from, QLocale()));
    const QString last = quantity::printVolume(ladder->rungs.last(), m_measures);
    const QString goal =
        m_standing->target ? quantity::printVolume(m_standing->target->low, m_measures) : last;
    if (last != goal)
        words += u' ' + tr("The last rung is %1 and the target begins at %2: lay out the rungs "
                           "again or mend the last one.")
                            .arg(last, goal);
    if (isStopped())
        words += u' ' + tr("The decision to go on comes first (Progress).");
    m_where->setText(words);
    m_rules->setRules(ladder->rules);
}

QString ClimbSection::rungsText(const QList<Volume>& rungs) const {
    QStringList words;
    for (Volume rung : rungs)
        words.append(quantity::printVolume(rung, m_measures));
    return words.join(QStringLiteral(", "));
}

QWidget* ClimbSection::field(const QString& name) const {
    if (name == u"target")
        return m_low;
    if (name == u"ladder")
        return m_start;
    return nullptr;
}

void ClimbSection::takeUsualTarget() {
    const auto usual = intake::usualTarget(m_standing->band);
    if (!usual)
        return;
    if (m_standing->target) {
        m_low->setValue(usual->low, m_measures);
        m_high->setValue(usual->high, m_measures);
    }
    saveTarget(); // the first time it takes what stands in the fields
}

void ClimbSection::saveTarget() {
    intake::Target target = m_standing->target.value_or(intake::Target{});
    target.member = m_standing->member.id;
    target.low = m_low->value();
    target.high = m_high->value();
    target.holdDays = m_holdDays->value();
    target.easeOffFrom = m_easeOff->day();
    const auto& set = m_standing->target;
    if (set && set->low == target.low && set->high == target.high &&
        set->holdDays == target.holdDays && set->easeOffFrom == target.easeOffFrom)
        return;
    // A target of an earlier day stays as history; today's is put right in place.
    const bool inPlace = m_standing->target && m_standing->target->from == m_today;
    target.from = m_today;
    const QString sentence =
        tr("Set %1's target to %2 to %3 a day")
            .arg(m_standing->member.name, quantity::printVolume(target.low, m_measures),
                 quantity::printVolume(target.high, m_measures));
    const bool done = m_context.act(this, sentence, [&](store::Action& action) -> Outcome {
        if (inPlace)
            return m_context.workbook.climbs().changeTarget(action, target);
        const auto added = m_context.workbook.climbs().addTarget(action, target);
        return added ? Outcome{} : Outcome(passOn(added));
    });
    if (!done)
        showTarget();
}

void ClimbSection::layOutRungs() {
    if (!m_standing->target || !m_start->isGood())
        return;
    const auto rungs = intake::designRungs(m_start->value(), m_standing->target->low, m_measures);
    if (!rungs) {
        m_context.desk.tell(this, rungs.error().sentence);
        return;
    }
    intake::Ladder ladder = m_standing->ladder.value_or(intake::Ladder{});
    ladder.member = m_standing->member.id;
    ladder.rungs = *rungs;
    ladder.rules.holdTargetDays = m_standing->target->holdDays;
    storeLadder(ladder, !m_standing->ladder,
                tr("Laid out %1's ladder from %2 to %3")
                    .arg(m_standing->member.name, quantity::printVolume(rungs->first(), m_measures),
                         quantity::printVolume(rungs->last(), m_measures)));
}

void ClimbSection::saveRungs() {
    intake::Ladder ladder = *m_standing->ladder;
    ladder.rungs.clear();
    // A rung whose words stand as they were shown keeps its stored amount: the words are rounded.
    QList<Volume> shown = m_standing->ladder->rungs;
    const QStringList parts = m_rungs->trimmed().split(u',', Qt::SkipEmptyParts);
    for (const QString& part : parts) {
        const auto kept = std::ranges::find(shown, part.trimmed(), [this](Volume rung) {
            return quantity::printVolume(rung, m_measures);
        });
        if (kept != shown.end()) {
            ladder.rungs.append(*kept);
            shown.erase(kept); // two rungs may read alike
            continue;
        }
        const auto rung = quantity::parseVolume(part, m_measures);
        if (!rung) {
            m_context.desk.tell(this, rung.error().sentence);
            m_rungs->setStored(rungsText(m_standing->ladder->rungs));
            return;
        }
        ladder.rungs.append(*rung);
    }
    storeLadder(ladder, false, tr("Changed the rungs of %1's ladder").arg(m_standing->member.name));
}

void ClimbSection::saveRules() {
    intake::Ladder ladder = *m_standing->ladder;
    ladder.rules = m_rules->rules();
    storeLadder(ladder, false, tr("Changed the rules of %1's ladder").arg(m_standing->member.name));
}

void ClimbSection::startAfresh() {
    intake::Ladder ladder = *m_standing->ladder;
    if (m_standing->target) {
        const auto rungs =
            intake::designRungs(m_start->value(), m_standing->target->low, m_measures);
        if (rungs)
            ladder.rungs = *rungs;
    }
    storeLadder(ladder, true, tr("Started a new ladder for %1").arg(m_standing->member.name));
}

void ClimbSection::storeLadder(intake::Ladder ladder, bool afresh, const QString& sentence) {
    if (afresh)
        ladder.from = m_today;
    const bool inPlace = m_standing->ladder && (!afresh || m_standing->ladder->from == m_today);
    const bool done = m_context.act(this, sentence, [&](store::Action& action) -> Outcome {
        if (inPlace)
            return m_context.workbook.climbs().changeLadder(action, ladder);
        const auto added = m_context.workbook.climbs().addLadder(action, ladder);
        return added ? Outcome{} : Outcome(passOn(added));
    });
    if (!done)
        showLadder();
}

} // namespace ladlework::ui
