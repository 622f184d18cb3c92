#include "ui/progress/resume_panel.h"

#include "ui/shared/choices.h"
#include "ui/shared/problem_line.h"
#include "ui/shared/text_field.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace ladlework::ui {

ResumePanel::ResumePanel(const ScreenContext& context, QWidget* parent)
    : QWidget(parent), m_context(context), m_rung(new QComboBox(this)),
      m_reason(new TextField(this)), m_when(new QLabel(this)), m_problem(new ProblemLine(this)),
      m_goOn(new QPushButton(this)),
      m_takeBack(new QPushButton(tr("Take the decision &back"), this)) {
    auto* section = new Section(tr("The ladder is stopped"), this);
    auto* words = new QLabel(
        tr("It goes on only by your recorded decision. After a serious reaction that decision "
           "belongs to the treating clinician first. It begins again on the lowest rung, unless "
           "you "
           "choose a higher one."),
        this);
    words->setWordWrap(true);
    section->body()->addWidget(words);
    m_when->setWordWrap(true);
    section->body()->addWidget(m_when);
    m_goOn->setProperty("primary", true);
    auto* from = new QLabel(tr("From the rung"), this);
    from->setBuddy(m_rung);
    auto* line = new QHBoxLayout;
    line->addWidget(from);
    line->addWidget(m_rung);
    line->addWidget(m_reason, 1);
    line->addWidget(m_goOn);
    line->addWidget(m_takeBack);
    section->body()->addLayout(line);
    section->body()->addWidget(m_problem);
    m_reason->setPlaceholderText(tr("Reason: who was asked, what was decided"));
    m_reason->setAccessibleName(tr("Reason for going on"));
    m_rung->setAccessibleName(tr("Rung to go on from"));
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(section);
    connect(m_goOn, &QPushButton::clicked, this, &ResumePanel::goOn);
    connect(m_takeBack, &QPushButton::clicked, this, &ResumePanel::takeBack);
    connect(m_reason, &QLineEdit::returnPressed, this, &ResumePanel::goOn);
}

void ResumePanel::show(const casebook::Casebook& book, const casebook::Standing& standing) {
    const bool stopped = standing.ladder && standing.replay.state == intake::LadderState::Stopped;
    setVisible(stopped);
    if (!stopped) {
        m_member = {};
        return;
    }
    const bool sameMember = m_member.id == standing.member.id;
    if (!sameMember) {
        m_reason->clear();
        m_reason->setStored({});
        m_problem->clear();
    }
    m_member = standing.member;
    // The day of the stop stays stopped whatever is decided on it.
    const bool stoppedToday = standing.stoppedSince >= book.today();
    m_day = stoppedToday ? book.today().addDays(1) : book.today();
    m_goOn->setText(stoppedToday ? tr("Go on from tomorrow") : tr("Go on from today"));
    QList<Choice> rungs;
    for (const quantity::Volume rung : standing.ladder->rungs)
        rungs.append({quantity::printVolume(rung, book.records().family.measures),
                      static_cast<int>(rungs.size())});
    const int kept = m_rung->currentIndex();
    // After a stop the most careful rung is proposed; a higher one is the practitioner's choice.
    setChoices(*m_rung, rungs, sameMember ? kept : 0);
    showPending(standing, book.records().family.measures);
    m_when->setVisible(stoppedToday || m_pending);
}

void ResumePanel::showPending(const casebook::Standing& standing,
                              quantity::MeasureSystem measures) {
    m_pending = standing.goesOn;
    m_takeBack->setVisible(m_pending.has_value());
    if (m_pending) {
        const QList<quantity::Volume>& rungs = standing.ladder->rungs;
        const qsizetype rung = std::clamp<qsizetype>(m_pending->resumeAtRung, 0, rungs.size() - 1);
        m_when->setText(
            tr("Decided: the ladder goes on tomorrow from %1 (%2). A new decision takes "
               "the place of this one.")
                .arg(quantity::printVolume(rungs.at(rung), measures), m_pending->reason));
    } else {
        m_when->setText(tr("The stop came today, so today stays without stock: a decision counts "
                           "from tomorrow."));
    }
}

void ResumePanel::takeFocus() {
    m_rung->setFocus();
}

void ResumePanel::goOn() {
    intake::Decision decision;
    decision.member = m_member.id;
    decision.day = m_day;
    decision.resumeAtRung = m_rung->currentIndex();
    decision.reason = m_reason->trimmed();
    const Outcome outcome = m_context.workbook.act(
        tr("Let %1's ladder go on from %2").arg(m_member.name, m_rung->currentText()),
        [&](store::Action& action) -> Outcome {
            if (m_pending) {
                if (const Outcome removed =
                        m_context.workbook.climbs().removeDecision(action, m_pending->id);
                    !removed)
                    return removed;
            }
            const auto added = m_context.workbook.climbs().addDecision(action, decision);
            return added ? Outcome{} : Outcome(passOn(added));
        });
    if (m_problem->take(outcome)) {
        m_reason->clear();
        m_reason->setStored({});
    } else {
        m_reason->setFocus();
    }
}

void ResumePanel::takeBack() {
    if (!m_pending)
        return;
    const DecisionId id = m_pending->id;
    m_context.act(this, tr("Took back the decision to let %1's ladder go on").arg(m_member.name),
                  [&](store::Action& action) {
                      return m_context.workbook.climbs().removeDecision(action, id);
                  });
}

} // namespace ladlework::ui
