#include "ui/members/phase_change.h"

#include "ui/paint/theme.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace ladlework::ui {

namespace {

QString phaseName(const std::optional<people::Phase>& phase) {
    return phase ? phase->name : PhaseChange::tr("no phase");
}

} // namespace

QStringList kitchenChanges(const kitchen::PhaseRules& before, const kitchen::PhaseRules& after) {
    QStringList words;
    const auto add = [&words](bool was, bool is, const QString& whenOn, const QString& whenOff) {
        if (was != is)
            words.append(is ? whenOn : whenOff);
    };
    add(before.strainHerbs, after.strainHerbs,
        PhaseChange::tr("Herbs were left in; they are strained out."),
        PhaseChange::tr("Herbs were strained out; they may be left in."));
    add(before.strainVegetables, after.strainVegetables,
        PhaseChange::tr("Vegetables were left in; they are strained out."),
        PhaseChange::tr("Vegetables were strained out; they may be left in."));
    add(before.strainPeppercorns, after.strainPeppercorns,
        PhaseChange::tr("Peppercorns were left in; they are strained out."),
        PhaseChange::tr("Peppercorns were strained out; they may be left in."));
    add(before.groundPepper, after.groundPepper,
        PhaseChange::tr("Ground pepper was kept out; it may be used."),
        PhaseChange::tr("Ground pepper was used; it is kept out."));
    add(before.boneBroth, after.boneBroth,
        PhaseChange::tr("Bone broth was kept out; it may be drunk."),
        PhaseChange::tr("Bone broth was drunk; it is kept out."));
    return words;
}

QStringList potChanges(const casebook::Casebook& book, const casebook::Standing& standing,
                       const std::optional<people::Phase>& after) {
    casebook::Standing moved = standing;
    moved.phase = after;
    QStringList may;
    QStringList mayNot;
    for (const kitchen::Pot& pot : book.records().pots) {
        const bool before = book.whoMay(standing, pot).may;
        const bool then = book.whoMay(moved, pot).may;
        if (before != then)
            (then ? may : mayNot).append(pot.name);
    }
    QStringList words;
    if (!may.isEmpty())
        words.append(PhaseChange::tr("%1 may then drink: %2.")
                         .arg(standing.member.name, may.join(QStringLiteral(", "))));
    if (!mayNot.isEmpty())
        words.append(PhaseChange::tr("%1 may then no longer drink: %2.")
                         .arg(standing.member.name, mayNot.join(QStringLiteral(", "))));
    return words;
}

PhaseChange::PhaseChange(QWidget* parent)
    : QFrame(parent), m_words(new QLabel(this)), m_move(new QPushButton(this)),
      m_stay(new QPushButton(this)) {
    m_words->setWordWrap(true);
    m_words->setTextFormat(Qt::PlainText);
    m_move->setProperty("primary", true);
    auto* buttons = new QHBoxLayout;
    buttons->addWidget(m_move);
    buttons->addWidget(m_stay);
    buttons->addStretch();
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, step(*this) / 2, 0, 0);
    column->addWidget(m_words);
    column->addLayout(buttons);
    setAccessibleName(tr("Move to another phase"));
    connect(m_move, &QPushButton::clicked, this, &PhaseChange::moveWanted);
    connect(m_stay, &QPushButton::clicked, this, &PhaseChange::stayWanted);
    hide();
}

void PhaseChange::ask(const casebook::Casebook& book, const casebook::Standing& standing,
                      const std::optional<people::Phase>& after) {
    const kitchen::PhaseRules before =
        standing.phase ? standing.phase->rules : kitchen::PhaseRules{};
    const kitchen::PhaseRules then = after ? after->rules : kitchen::PhaseRules{};
    QStringList lines = kitchenChanges(before, then);
    lines += potChanges(book, standing, after);
    if (lines.isEmpty())
        lines.append(tr("Nothing changes in the kitchen: both phases have the same rules."));
    else
        lines.append(
            tr("A pot that several drink is cooked by the most careful phase among them."));
    m_words->setText(tr("From %1 to %2:").arg(phaseName(standing.phase), phaseName(after)) + u'\n' +
                     lines.join(u'\n'));
    m_words->setAccessibleName(m_words->text());
    m_move->setText(tr("Move %1 to %2").arg(standing.member.name, phaseName(after)));
    m_stay->setText(tr("Stay in %1").arg(phaseName(standing.phase)));
    show();
}

void PhaseChange::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape) {
        Q_EMIT stayWanted();
        return;
    }
    QFrame::keyPressEvent(event);
}

} // namespace ladlework::ui
