#include "ui/progress/resume_panel.h"

#include "ui/shared/choices.h"
#include "ui/shared/text_field.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace ladlework::ui {

ResumePanel::ResumePanel(const ScreenContext& context, QWidget* parent)
    : QWidget(parent), m_context(context), m_rung(new QComboBox(this)),
      m_reason(new TextField(this)) {
    auto* section = new Section(tr("The ladder is stopped"), this);
    auto* words = new QLabel(
        tr("It goes on only by your recorded decision. After a serious reaction that decision "
           "belongs to the treating clinician first."),
        this);
    words->setWordWrap(true);
    section->body()->addWidget(words);
    auto* button = new QPushButton(tr("&Go on from today"), this);
    button->setProperty("primary", true);
    auto* from = new QLabel(tr("&From the rung"), this);
    from->setBuddy(m_rung);
    auto* line = new QHBoxLayout;
    line->addWidget(from);
    line->addWidget(m_rung);
    line->addWidget(m_reason, 1);
    line->addWidget(button);
    section->body()->addLayout(line);
    m_reason->setPlaceholderText(tr("Reason: who was asked, what was decided"));
    m_reason->setAccessibleName(tr("Reason for going on"));
    m_rung->setAccessibleName(tr("Rung to go on from"));
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(section);
    connect(button, &QPushButton::clicked, this, &ResumePanel::goOn);
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
    }
    m_member = standing.member;
    m_today = book.today();
    QList<Choice> rungs;
    for (const quantity::Volume rung : standing.ladder->rungs)
        rungs.append({quantity::printVolume(rung, book.records().family.measures),
                      static_cast<int>(rungs.size())});
    const int kept = m_rung->currentIndex();
    setChoices(*m_rung, rungs, sameMember ? kept : std::max(0, standing.replay.rung - 1));
}

void ResumePanel::takeFocus() {
    m_rung->setFocus();
}

void ResumePanel::goOn() {
    intake::Decision decision;
    decision.member = m_member.id;
    decision.day = m_today;
    decision.resumeAtRung = m_rung->currentIndex();
    decision.reason = m_reason->trimmed();
    const bool done = m_context.act(
        this, tr("Let %1's ladder go on from %2").arg(m_member.name, m_rung->currentText()),
        [&](store::Action& action) -> Outcome {
            const auto added = m_context.workbook.climbs().addDecision(action, decision);
            return added ? Outcome{} : Outcome(passOn(added));
        });
    if (done) {
        m_reason->clear();
        m_reason->setStored({});
    } else {
        m_reason->setFocus();
    }
}

} // namespace ladlework::ui
