#include "ui/log/what_now_panel.h"

#include "intake/red_flags.h"
#include "ui/paint/theme.h"
#include "ui/shared/finding_line.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>
#include <QPushButton>
#include <QVBoxLayout>
#include <algorithm>

namespace ladlework::ui {

namespace {

/// The youngest band among those with a red flag: its signs are shown.
AgeBand youngest(const casebook::Casebook& book, const QList<intake::Reaction>& flags) {
    AgeBand band = AgeBand::Adult;
    for (const intake::Reaction& flag : flags)
        if (const casebook::Standing* standing = book.standing(flag.member))
            band = std::min(band, standing->band);
    return band;
}

} // namespace

WhatNowPanel::WhatNowPanel(QWidget* parent)
    : QFrame(parent), m_title(new QLabel(this)), m_fold(new QPushButton(this)),
      m_decision(new QPushButton(tr("Record the decision"), this)), m_call(new QLabel(this)),
      m_body(new QWidget(this)), m_lines(nullptr) {
    const int gap = step(*this);
    m_title->setFont(sectionFont(font()));
    m_title->setWordWrap(true);
    m_title->setTextFormat(Qt::PlainText);
    m_call->setFont(titleFont(font()));
    m_call->setTextFormat(Qt::PlainText);
    m_decision->setToolTip(tr("The ladder goes on only by your recorded decision (Progress)"));
    auto* head = new QHBoxLayout;
    head->setSpacing(gap);
    head->addWidget(new FindingMark(Finding::Severity::Stop, this));
    head->addWidget(m_title, 1);
    head->addWidget(m_decision);
    head->addWidget(m_fold);
    m_lines = new QVBoxLayout(m_body);
    m_lines->setContentsMargins(0, 0, 0, 0);
    m_lines->setSpacing(gap / 2);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(3 * gap / 2, gap, 3 * gap / 2, gap);
    column->setSpacing(gap / 2);
    column->addLayout(head);
    column->addWidget(m_call);
    column->addWidget(m_body);
    setAccessibleName(tr("What now"));
    connect(m_fold, &QPushButton::clicked, this, [this] { fold(m_body->isVisibleTo(this)); });
    connect(m_decision, &QPushButton::clicked, this, &WhatNowPanel::decisionWanted);
    fold(false);
    hide();
}

void WhatNowPanel::fold(bool folded) {
    m_body->setVisible(!folded);
    m_fold->setText(folded ? tr("Show what to do") : tr("Fold"));
}

QLabel* WhatNowPanel::addWords(const QString& text, bool quiet) {
    auto* label = new QLabel(text, m_body);
    label->setWordWrap(true);
    label->setTextFormat(Qt::PlainText);
    if (quiet)
        label->setForegroundRole(QPalette::PlaceholderText);
    m_lines->addWidget(label);
    return label;
}

void WhatNowPanel::show(const casebook::Casebook& book, QDate day) {
    QList<intake::Reaction> flags;
    QList<ReactionId> ids;
    for (const intake::Reaction& reaction : book.records().reactions) {
        if (reaction.day != day || !reaction.redFlag || !book.standing(reaction.member))
            continue;
        flags.append(reaction);
        ids.append(reaction.id);
    }
    const bool isNew =
        std::ranges::any_of(ids, [this](ReactionId id) { return !m_shown.contains(id); });
    m_shown = ids;
    setVisible(!flags.isEmpty());
    if (flags.isEmpty())
        return;
    fill(book, flags);
    if (isNew)
        fold(false);
}

void WhatNowPanel::fill(const casebook::Casebook& book, const QList<intake::Reaction>& flags) {
    while (QLayoutItem* item = m_lines->takeAt(0)) {
        delete item->widget();
        delete item;
    }
    QStringList felt;
    QStringList stopped;
    for (const intake::Reaction& flag : flags) {
        const casebook::Standing& standing = *book.standing(flag.member);
        felt.append(tr("%1: %2").arg(standing.member.name, flag.symptom));
        if (standing.replay.state == intake::LadderState::Stopped &&
            !stopped.contains(standing.member.name))
            stopped.append(standing.member.name);
    }
    m_title->setText(tr("What now? %1").arg(felt.join(QStringLiteral("; "))));
    const QString number = book.records().practice.emergencyNumber.trimmed();
    m_call->setText(number.isEmpty() ? tr("Call the local emergency number")
                                     : tr("Call %1").arg(number));
    setAccessibleDescription(m_call->text() + QStringLiteral(". ") + m_title->text());
    const QString anySymptom = flags.first().symptom;
    const AgeBand band = youngest(book, flags);
    QStringList said;
    const auto add = [&](const Finding& finding) {
        if (said.contains(finding.text))
            return;
        said.append(finding.text);
        addWords(finding.text, false);
        if (!finding.source.isEmpty())
            addWords(tr("Source: %1").arg(finding.source), true);
    };
    for (const Finding& finding : intake::redFlagFindings(anySymptom, band, number))
        if (finding.code == u"red-flag-call")
            add(finding);
    for (const intake::Reaction& flag : flags)
        for (const Finding& finding : intake::redFlagFindings(flag.symptom, band, number))
            if (finding.code == u"red-flag-do")
                add(finding);
    for (const Finding& finding : intake::redFlagFindings(anySymptom, band, number))
        if (finding.code != u"red-flag-call" && finding.code != u"red-flag-do")
            add(finding);
    m_decision->setVisible(!stopped.isEmpty());
    if (!stopped.isEmpty())
        addWords(stopped.size() == 1
                     ? tr("%1's ladder is stopped: nothing more is asked until your recorded "
                          "decision.")
                           .arg(stopped.first())
                     : tr("These ladders are stopped: %1. Nothing more is asked until your "
                          "recorded decision.")
                           .arg(stopped.join(QStringLiteral(", "))),
                 false);
    if (number.isEmpty())
        addWords(tr("The emergency number of your place can be set on the Practice page; then it "
                    "stands here."),
                 true);
}

void WhatNowPanel::paintEvent(QPaintEvent* /*event*/) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const Colours& c = coloursOf(*this);
    painter.setPen(QPen(c.beet, 2));
    painter.setBrush(c.raised);
    painter.drawRoundedRect(QRectF(rect()).adjusted(1, 1, -1, -1), 4, 4);
}

void WhatNowPanel::changeEvent(QEvent* event) {
    if (event->type() == QEvent::FontChange) {
        m_title->setFont(sectionFont(font()));
        m_call->setFont(titleFont(font()));
    }
    QFrame::changeEvent(event);
}

} // namespace ladlework::ui
