#include "ui/members/ladder_form.h"

#include "intake/ladder_figures.h"
#include "ui/members/ladder_rules_panel.h"
#include "ui/members/rung_stairs.h"
#include "ui/shared/asked_amount.h"
#include "ui/shared/character_width.h"
#include "ui/shared/choices.h"
#include "ui/shared/day_text.h"
#include "ui/shared/easing_words.h"
#include "ui/shared/problem_line.h"
#include "ui/shared/text_field.h"

#include <QComboBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLocale>
#include <QPushButton>
#include <QVBoxLayout>
#include <algorithm>

namespace ladlework::ui {

using quantity::Volume;

namespace {
constexpr int amountWidth = 14;   ///< characters
constexpr int templateWidth = 30; ///< characters
} // namespace

LadderForm::LadderForm(const ScreenContext& context, QWidget* parent)
    : QWidget(parent), m_context(context), m_start(new VolumeEdit(this)),
      m_layOut(new QPushButton(tr("&Lay out the rungs"), this)), m_templates(new QComboBox(this)),
      m_afresh(new QPushButton(tr("Start a new ladder today"), this)), m_rungs(new TextField(this)),
      m_stairs(new RungStairs(this)), m_templateName(new QLineEdit(this)),
      m_where(new QLabel(this)), m_rules(new LadderRulesPanel(this)),
      m_problem(new ProblemLine(this)) {
    auto* form = new QFormLayout;
    form->setContentsMargins(0, 0, 0, 0);
    makeStart(*form);
    makeRungs(*form);
    m_rulesLabel = new QLabel(tr("Rules"), this);
    form->addRow(m_rulesLabel, m_rules);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addLayout(form);
    connectParts();
}

void LadderForm::makeStart(QFormLayout& form) {
    m_start->setAccessibleName(tr("First amount of the ladder"));
    CharacterWidth::hold(*m_start, amountWidth);
    m_templates->setAccessibleName(tr("Start from a template"));
    m_templates->setToolTip(tr("Rungs that the practice keeps, up to this member's target"));
    CharacterWidth::hold(*m_templates, templateWidth);
    auto* start = new QHBoxLayout;
    start->addWidget(m_start);
    start->addWidget(m_layOut);
    start->addWidget(m_templates);
    start->addWidget(m_afresh);
    start->addStretch();
    auto* label = new QLabel(tr("Start with"), this);
    label->setBuddy(m_start);
    form.addRow(label, start);
}

void LadderForm::makeRungs(QFormLayout& form) {
    m_rungs->setAccessibleName(tr("Rungs of the ladder, separated by commas"));
    m_where->setWordWrap(true);
    m_templateName->setPlaceholderText(tr("name, such as: very careful"));
    m_templateName->setAccessibleName(tr("Name of the template"));
    CharacterWidth::hold(*m_templateName, templateWidth);
    m_rungsLabel = new QLabel(tr("R&ungs"), this);
    m_rungsLabel->setBuddy(m_rungs);
    form.addRow(m_rungsLabel, m_rungs);
    form.addRow(QString(), m_problem); // right below what was typed
    form.addRow(QString(), m_stairs);
    m_keepLine = new QWidget(this);
    auto* row = new QHBoxLayout(m_keepLine);
    row->setContentsMargins(0, 0, 0, 0);
    auto* keep = new QPushButton(tr("&Keep these rungs as a template"), m_keepLine);
    row->addWidget(m_templateName);
    row->addWidget(keep);
    row->addStretch();
    connect(keep, &QPushButton::clicked, this, &LadderForm::keepTemplate);
    connect(m_templateName, &QLineEdit::returnPressed, this, &LadderForm::keepTemplate);
    form.addRow(QString(), m_keepLine);
    form.addRow(tr("Now"), m_where);
}

void LadderForm::connectParts() {
    connect(m_layOut, &QPushButton::clicked, this, &LadderForm::layOut);
    connect(m_start, &QLineEdit::returnPressed, this, [this] {
        if (m_standing &&
            !m_standing->ladder) // an existing ladder is laid out anew by the button only
            layOut();
    });
    connect(m_templates, &QComboBox::activated, this, &LadderForm::takeTemplate);
    connect(m_rungs, &TextField::committed, this, &LadderForm::saveRungsText);
    connect(m_stairs, &RungStairs::committed, this, [this] { saveRungs(m_stairs->rungs()); });
    connect(m_afresh, &QPushButton::clicked, this, &LadderForm::startAfresh);
    connect(m_rules, &LadderRulesPanel::committed, this, &LadderForm::saveRules);
}

void LadderForm::show(const casebook::Casebook& book, const casebook::Standing& standing) {
    if (!m_standing || m_standing->member.id != standing.member.id) {
        m_problem->clear();
        m_templateName->clear();
    }
    m_standing = standing;
    m_kept = book.records().ladderTemplates;
    m_houseRules = book.records().houseRules;
    m_today = book.today();
    m_measures = book.records().family.measures;
    showTemplates();
    showLadder();
}

void LadderForm::showTemplates() {
    QList<Choice> choices{{tr("Start from a template"), qint64{0}}};
    for (const intake::LadderTemplate& kept : std::as_const(m_kept))
        choices.append({kept.name, qint64{kept.id.value}});
    setChoices(*m_templates, choices, qint64{0});
    m_templates->setVisible(!m_kept.isEmpty());
}

bool LadderForm::isStopped() const {
    return m_standing->ladder && m_standing->replay.state == intake::LadderState::Stopped;
}

/// Rungs, rules or a new ladder would move a stopped member without a decision: they wait for it.
void LadderForm::holdWhileStopped() {
    const bool stopped = isStopped();
    const bool mayLayOut = m_standing->target.has_value() && !stopped;
    for (QWidget* part : std::initializer_list<QWidget*>{m_layOut, m_start, m_templates})
        part->setEnabled(mayLayOut);
    for (QWidget* part : std::initializer_list<QWidget*>{m_afresh, m_rungs, m_stairs, m_rules})
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

void LadderForm::showLadder() {
    const auto& ladder = m_standing->ladder;
    holdWhileStopped();
    for (QWidget* part : std::initializer_list<QWidget*>{m_afresh, m_rungsLabel, m_rungs, m_stairs,
                                                         m_keepLine, m_rulesLabel, m_rules})
        part->setVisible(ladder.has_value());
    if (!ladder) {
        showNoLadder();
        return;
    }
    m_start->setValue(ladder->rungs.first(), m_measures);
    m_rungs->setStored(rungsText(ladder->rungs));
    m_stairs->setRungs(ladder->rungs, m_standing->replay.rung, m_measures);
    m_where->setText(whereWords());
    m_rules->setRules(ladder->rules);
}

void LadderForm::showNoLadder() {
    m_start->setValue(Volume::fromTeaspoons(intake::ladderFigure(QStringLiteral("first-sip"))),
                      m_measures);
    m_rungs->setStored({});
    m_stairs->setRungs({}, -1, m_measures);
    m_where->setText(m_standing->target
                         ? tr("No ladder yet. Type the first amount and lay out the rungs.")
                         : tr("Set the daily target first; the ladder climbs to its low end."));
    m_rules->setRules(m_houseRules);
}

QString LadderForm::whereWords() const {
    const intake::Ladder& ladder = *m_standing->ladder;
    const int rung = m_standing->replay.rung;
    QString words = tr("%1, rung %2 of %3: %4 a day, on this ladder since %5.")
                        .arg(climbState(*m_standing))
                        .arg(rung + 1)
                        .arg(ladder.rungs.size())
                        .arg(quantity::printVolume(ladder.rungs.at(rung), m_measures),
                             printDay(ladder.from, QLocale()));
    if (m_standing->easedToday)
        words += u' ' + tr("Eased off by the plan: %1 is asked today.")
                            .arg(amountWords(m_standing->askedToday, m_measures));
    const QString last = quantity::printVolume(ladder.rungs.last(), m_measures);
    const QString goal =
        m_standing->target ? quantity::printVolume(m_standing->target->low, m_measures) : last;
    if (last != goal)
        words += u' ' + tr("The last rung is %1 and the target begins at %2: lay out the rungs "
                           "again or mend the last one.")
                            .arg(last, goal);
    if (isStopped())
        words += u' ' + tr("The decision to go on comes first (Progress).");
    return words;
}

QString LadderForm::rungsText(const QList<Volume>& rungs) const {
    QStringList words;
    for (Volume rung : rungs)
        words.append(quantity::printVolume(rung, m_measures));
    return words.join(QStringLiteral(", "));
}

QWidget* LadderForm::field(const QString& name) const {
    return name == u"ladder" ? m_start : nullptr;
}

/// The member's ladder on other rungs; a first one begins with the rules of the house.
intake::Ladder LadderForm::ladderWith(const QList<Volume>& rungs) const {
    intake::Ladder ladder = m_standing->ladder.value_or(intake::Ladder{});
    if (!m_standing->ladder)
        ladder.rules = m_houseRules;
    ladder.member = m_standing->member.id;
    ladder.rungs = rungs;
    if (m_standing->target)
        ladder.rules.holdTargetDays = m_standing->target->holdDays;
    return ladder;
}

void LadderForm::layOut() {
    if (!m_standing->target || !m_start->isGood())
        return;
    const auto rungs = intake::designRungs(m_start->value(), m_standing->target->low, m_measures);
    if (!rungs) {
        m_problem->say(rungs.error().sentence);
        return;
    }
    write(ladderWith(*rungs), !m_standing->ladder,
          tr("Laid out %1's ladder from %2 to %3")
              .arg(m_standing->member.name, quantity::printVolume(rungs->first(), m_measures),
                   quantity::printVolume(rungs->last(), m_measures)));
}

void LadderForm::takeTemplate() {
    const LadderTemplateId id{m_templates->currentData().toLongLong()};
    m_templates->setCurrentIndex(0);
    const auto kept = std::ranges::find(m_kept, id, &intake::LadderTemplate::id);
    if (kept == m_kept.end() || !m_standing->target)
        return;
    write(ladderWith(intake::rungsUpTo(*kept, m_standing->target->low, m_measures)),
          !m_standing->ladder,
          tr("Laid out %1's ladder by the template %2").arg(m_standing->member.name, kept->name));
}

void LadderForm::keepTemplate() {
    intake::LadderTemplate kept;
    kept.name = m_templateName->text().trimmed();
    kept.rungs = m_standing->ladder->rungs;
    const Outcome outcome = m_context.workbook.act(
        tr("Kept rungs as the template %1").arg(kept.name), [&](store::Action& action) -> Outcome {
            const auto added = m_context.workbook.practice().addLadderTemplate(action, kept);
            return added ? Outcome{} : Outcome(passOn(added));
        });
    if (m_problem->take(outcome))
        m_templateName->clear();
    else
        m_templateName->setFocus();
}

Result<QList<Volume>> LadderForm::typedRungs() const {
    QList<Volume> rungs;
    // A rung whose words stand as they were shown keeps its stored amount: the words are rounded.
    QList<Volume> shown = m_standing->ladder->rungs;
    const QStringList parts = m_rungs->trimmed().split(u',', Qt::SkipEmptyParts);
    for (const QString& part : parts) {
        const auto kept = std::ranges::find(shown, part.trimmed(), [this](Volume rung) {
            return quantity::printVolume(rung, m_measures);
        });
        if (kept != shown.end()) {
            rungs.append(*kept);
            shown.erase(kept); // two rungs may read alike
            continue;
        }
        const auto rung = quantity::parseVolume(part, m_measures);
        if (!rung)
            return passOn(rung);
        rungs.append(*rung);
    }
    return rungs;
}

void LadderForm::saveRungsText() {
    const Result<QList<Volume>> rungs = typedRungs();
    if (!rungs) {
        m_problem->say(rungs.error().sentence);
        m_rungs->setStored(rungsText(m_standing->ladder->rungs));
        return;
    }
    saveRungs(*rungs);
}

void LadderForm::saveRungs(const QList<Volume>& rungs) {
    intake::Ladder ladder = *m_standing->ladder;
    ladder.rungs = rungs;
    write(ladder, false, tr("Changed the rungs of %1's ladder").arg(m_standing->member.name));
}

void LadderForm::saveRules() {
    intake::Ladder ladder = *m_standing->ladder;
    ladder.rules = m_rules->rules();
    write(ladder, false, tr("Changed the rules of %1's ladder").arg(m_standing->member.name));
}

void LadderForm::startAfresh() {
    intake::Ladder ladder = *m_standing->ladder;
    if (m_standing->target) {
        const auto rungs =
            intake::designRungs(m_start->value(), m_standing->target->low, m_measures);
        if (rungs)
            ladder.rungs = *rungs;
    }
    write(ladder, true, tr("Started a new ladder for %1").arg(m_standing->member.name));
}

bool LadderForm::write(intake::Ladder ladder, bool afresh, const QString& sentence) {
    if (afresh)
        ladder.from = m_today;
    const bool inPlace = m_standing->ladder && (!afresh || m_standing->ladder->from == m_today);
    const Outcome outcome = m_context.workbook.act(sentence, [&](store::Action& action) -> Outcome {
        if (inPlace)
            return m_context.workbook.climbs().changeLadder(action, ladder);
        const auto added = m_context.workbook.climbs().addLadder(action, ladder);
        return added ? Outcome{} : Outcome(passOn(added));
    });
    if (!m_problem->take(outcome))
        showLadder();
    return outcome.has_value();
}

} // namespace ladlework::ui
