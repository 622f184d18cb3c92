#include "ui/members/target_form.h"

#include "ui/shared/character_width.h"
#include "ui/shared/day_edit.h"
#include "ui/shared/day_text.h"
#include "ui/shared/easing_words.h"
#include "ui/shared/problem_line.h"

#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLocale>
#include <QPushButton>
#include <QSignalBlocker>
#include <QSpinBox>
#include <QStyle>
#include <QVBoxLayout>

namespace ladlework::ui {

using quantity::Volume;

namespace {
constexpr int longestHoldDays = 730;
constexpr int longestStepDays = 90;
constexpr int amountWidth = 14; ///< characters
constexpr int dayWidth = 24;    ///< characters
} // namespace

TargetForm::TargetForm(const ScreenContext& context, QWidget* parent)
    : QWidget(parent), m_context(context), m_low(new VolumeEdit(this)),
      m_high(new VolumeEdit(this)), m_holdDays(new QSpinBox(this)), m_easeOff(new DayEdit(this)),
      m_easeEvery(new QSpinBox(this)), m_easeTo(new VolumeEdit(this)),
      m_easingWords(new QLabel(this)), m_usual(new QPushButton(this)),
      m_problem(new ProblemLine(this)) {
    auto* form = new QFormLayout;
    form->setContentsMargins(0, 0, 0, 0);
    makeRange(*form);
    makeHold(*form);
    makeEasing(*form);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addLayout(form);
    column->addWidget(m_problem);
    for (VolumeEdit* edit : {m_low, m_high, m_easeTo})
        CharacterWidth::hold(*edit, amountWidth);
    CharacterWidth::hold(*m_easeOff, dayWidth);
}

void TargetForm::makeRange(QFormLayout& form) {
    m_low->setAccessibleName(tr("Low end of the daily target"));
    m_high->setAccessibleName(tr("High end of the daily target"));
    auto* range = new QHBoxLayout;
    range->addWidget(m_low);
    range->addWidget(new QLabel(tr("to"), this));
    range->addWidget(m_high);
    range->addWidget(m_usual);
    range->addStretch();
    auto* label = new QLabel(tr("Daily &target"), this);
    label->setBuddy(m_low);
    form.addRow(label, range);
    connect(m_low, &QuantityEdit::valueCommitted, this, [this] {
        // A new low end above the old high end means that the range moved up.
        if (m_high->value() < m_low->value())
            m_high->setValue(m_low->value(), m_measures);
        save();
    });
    connect(m_high, &QuantityEdit::valueCommitted, this, &TargetForm::save);
    connect(m_usual, &QPushButton::clicked, this, &TargetForm::takeUsual);
}

void TargetForm::makeHold(QFormLayout& form) {
    m_holdDays->setRange(1, longestHoldDays);
    m_holdDays->setSuffix(tr(" days"));
    m_holdDays->setAccessibleName(tr("Good days for which the target is held"));
    m_holdDays->setToolTip(tr("Two to twelve months by common practice; yours to set."));
    auto* held = new QHBoxLayout;
    held->addWidget(m_holdDays);
    held->addStretch();
    auto* label = new QLabel(tr("Held for"), this);
    label->setBuddy(m_holdDays);
    form.addRow(label, held);
    connect(m_holdDays, &QSpinBox::editingFinished, this, [this] {
        if (m_standing && m_standing->target) // walking past the days sets no target
            save();
    });
}

void TargetForm::makeEasing(QFormLayout& form) {
    m_easeOff->setMayBeEmpty(true);
    m_easeOff->setPlaceholderText(tr("not planned"));
    m_easeOff->setAccessibleName(tr("Easing off from"));
    m_easeEvery->setRange(1, longestStepDays);
    m_easeEvery->setSuffix(tr(" days"));
    m_easeEvery->setAccessibleName(tr("Days between two steps of easing off"));
    m_easeTo->setAccessibleName(tr("Amount that stays after easing off"));
    m_easeTo->setToolTip(tr("0: down to nothing"));
    m_easingWords->setWordWrap(true);
    m_easingWords->setForegroundRole(QPalette::PlaceholderText);
    auto* row = new QHBoxLayout;
    row->addWidget(m_easeOff);
    row->addWidget(new QLabel(tr("a rung less every"), this));
    row->addWidget(m_easeEvery);
    row->addWidget(new QLabel(tr("down to"), this));
    row->addWidget(m_easeTo);
    row->addStretch();
    auto* label = new QLabel(tr("Eas&ing off from"), this);
    label->setBuddy(m_easeOff);
    form.addRow(label, row);
    form.addRow(QString(), m_easingWords);
    connect(m_easeOff, &QuantityEdit::valueCommitted, this, &TargetForm::save);
    connect(m_easeEvery, &QSpinBox::editingFinished, this, [this] {
        if (m_standing && m_standing->target)
            save();
    });
    connect(m_easeTo, &QuantityEdit::valueCommitted, this, &TargetForm::save);
    // The words follow while the plan is typed.
    connect(m_easeOff, &QuantityEdit::valueEdited, this, &TargetForm::showEasing);
    connect(m_easeEvery, &QSpinBox::valueChanged, this, &TargetForm::showEasing);
    connect(m_easeTo, &QuantityEdit::valueEdited, this, &TargetForm::showEasing);
}

void TargetForm::show(const casebook::Casebook& book, const casebook::Standing& standing) {
    if (!m_standing || m_standing->member.id != standing.member.id)
        m_problem->clear();
    m_standing = standing;
    m_today = book.today();
    m_measures = book.records().family.measures;
    const std::optional<intake::Target> usual = intake::usualTarget(standing.band);
    const intake::Target target = standing.target.value_or(usual.value_or(intake::Target{}));
    m_low->setValue(target.low, m_measures);
    m_high->setValue(target.high, m_measures);
    const QSignalBlocker hold(m_holdDays);
    const QSignalBlocker every(m_easeEvery);
    m_holdDays->setValue(target.holdDays);
    m_easeOff->setToday(m_today);
    m_easeOff->setDay(target.easeOffFrom);
    m_easeEvery->setValue(target.easeEveryDays);
    m_easeTo->setValue(target.easeTo, m_measures);
    showUsual();
    showEasing();
}

void TargetForm::showUsual() {
    const std::optional<intake::Target> usual = intake::usualTarget(m_standing->band);
    const auto& target = m_standing->target;
    const bool isUsual =
        target && usual && target->low == usual->low && target->high == usual->high;
    m_usual->setVisible(usual && !isUsual);
    m_usual->setProperty("primary", !target);
    m_usual->style()->polish(m_usual);
    if (!usual)
        return;
    m_usual->setText(target ? tr("Usual: %1 to %2")
                                  .arg(quantity::printVolume(usual->low, m_measures),
                                       quantity::printVolume(usual->high, m_measures))
                            : tr("Set this target"));
}

void TargetForm::showEasing() {
    if (!m_standing)
        return;
    const intake::Target target = typed();
    const bool planned = target.easeOffFrom.isValid();
    m_easeEvery->setEnabled(planned);
    m_easeTo->setEnabled(planned);
    QString words;
    if (!m_standing->target)
        words = tr("No target yet: these are the usual amounts.");
    else if (planned && !m_standing->ladder)
        words = tr("The steps down are the rungs of the ladder: lay it out first.");
    else if (planned)
        words = easingWords(target, *m_standing->ladder, m_measures);
    m_easingWords->setText(words);
    m_easingWords->setVisible(!words.isEmpty());
}

intake::Target TargetForm::typed() const {
    intake::Target target = m_standing->target.value_or(intake::Target{});
    target.member = m_standing->member.id;
    target.low = m_low->value();
    target.high = m_high->value();
    target.holdDays = m_holdDays->value();
    target.easeOffFrom = m_easeOff->day();
    target.easeEveryDays = m_easeEvery->value();
    target.easeTo = m_easeTo->value();
    return target;
}

void TargetForm::takeUsual() {
    const auto usual = intake::usualTarget(m_standing->band);
    if (!usual)
        return;
    if (m_standing->target) {
        m_low->setValue(usual->low, m_measures);
        m_high->setValue(usual->high, m_measures);
    }
    save(); // the first time it takes what stands in the fields
}

QString TargetForm::sentenceOf(const intake::Target& target) const {
    const QString& name = m_standing->member.name;
    const auto& set = m_standing->target;
    if (!set || set->low != target.low || set->high != target.high)
        return tr("Set %1's target to %2 to %3 a day")
            .arg(name, quantity::printVolume(target.low, m_measures),
                 quantity::printVolume(target.high, m_measures));
    if (set->holdDays != target.holdDays)
        return tr("Set %1's target to be held for %2 good days").arg(name).arg(target.holdDays);
    if (!target.easeOffFrom.isValid())
        return tr("Took back the plan to ease off %1's stock").arg(name);
    return tr("Planned to ease off %1's stock from %2")
        .arg(name, printDay(target.easeOffFrom, QLocale()));
}

/// Another range begins today and the one before stays as history; what is held and eased off is a
/// plan for the same range. A plan that has begun is mended in place too.
bool TargetForm::isKeptInPlace(const intake::Target& target) const {
    const auto& set = m_standing->target;
    if (!set)
        return false;
    const bool sameRange = set->low == target.low && set->high == target.high;
    const bool hasBegun = set->easeOffFrom.isValid() && set->easeOffFrom < m_today;
    return sameRange || hasBegun || set->from == m_today;
}

Outcome TargetForm::write(store::Action& action, const intake::Target& target, bool inPlace) const {
    store::ClimbRepository& climbs = m_context.workbook.climbs();
    if (inPlace) {
        if (const Outcome changed = climbs.changeTarget(action, target); !changed)
            return changed;
    } else if (const auto added = climbs.addTarget(action, target); !added) {
        return passOn(added);
    }
    // The ladder counts the good days at target by the same number.
    if (!m_standing->ladder || m_standing->ladder->rules.holdTargetDays == target.holdDays)
        return {};
    intake::Ladder ladder = *m_standing->ladder;
    ladder.rules.holdTargetDays = target.holdDays;
    return climbs.changeLadder(action, ladder);
}

void TargetForm::save() {
    intake::Target target = typed();
    const auto& set = m_standing->target;
    if (set && set->low == target.low && set->high == target.high &&
        set->holdDays == target.holdDays && set->easeOffFrom == target.easeOffFrom &&
        set->easeEveryDays == target.easeEveryDays && set->easeTo == target.easeTo)
        return;
    const bool inPlace = isKeptInPlace(target);
    if (!inPlace)
        target.from = m_today;
    const Outcome outcome = m_context.workbook.act(
        sentenceOf(target), [&](store::Action& action) { return write(action, target, inPlace); });
    if (m_problem->take(outcome))
        return;
    // What was typed stands in the sentence; the fields go back to what is kept.
    const std::optional<intake::Target> usual = intake::usualTarget(m_standing->band);
    const intake::Target kept = m_standing->target.value_or(usual.value_or(intake::Target{}));
    m_low->setValue(kept.low, m_measures);
    m_high->setValue(kept.high, m_measures);
    m_easeOff->setDay(kept.easeOffFrom);
    m_easeTo->setValue(kept.easeTo, m_measures);
    showEasing();
}

QWidget* TargetForm::field(const QString& name) const {
    if (name == u"target")
        return m_low;
    return name == u"easeOffFrom" ? static_cast<QWidget*>(m_easeOff) : nullptr;
}

} // namespace ladlework::ui
