#include "ui/members/ladder_rules_panel.h"

#include "ui/paint/theme.h"
#include "ui/shared/side_by_side.h"

#include <QFormLayout>
#include <QSignalBlocker>
#include <QSpinBox>
#include <QVBoxLayout>

namespace ladlework::ui {

namespace {
constexpr double percent = 100.0;
constexpr int strongest = 10;
constexpr int mostDays = 60;
} // namespace

LadderRulesPanel::LadderRulesPanel(QWidget* parent) : QWidget(parent) {
    auto* columns = new SideBySide(this);
    columns->setSpacing(3 * step(*this));
    QFormLayout* up = addColumn(*columns);
    QFormLayout* back = addColumn(*columns);
    QFormLayout* strengths = addColumn(*columns);
    m_daysToAdvance = addBox(*up, tr("Good days for a step up"),
                             tr("Good days counted on a rung before the next one."), 1, mostDays);
    m_goodPercent = addBox(*up, tr("Good day from, % of amount"),
                           tr("A day counts when at least this share was drunk."), 1, 100);
    m_staleDays =
        addBox(*up, tr("Empty days for a step back"),
               tr("Each run of this many days without an entry goes back one rung."), 1, mostDays);
    m_rungsBack =
        addBox(*back, tr("Rungs of a step back"), tr("How far a step back goes."), 1, strongest);
    m_holdDays = addBox(*back, tr("Days held after it"),
                        tr("Days after a step back that do not count."), 0, mostDays);
    m_moderateWindow = addBox(
        *back, tr("Days joining two moderate"),
        tr("Two moderate days within this many days go back; one alone holds."), 0, mostDays);
    m_mildTo = addBox(*strengths, tr("Mild up to"), tr("Strength, 0-10."), 0, strongest);
    m_moderateTo = addBox(*strengths, tr("Moderate up to"),
                          tr("Strength, 0-10; above it goes back."), 0, strongest);
    m_strongTo = addBox(*strengths, tr("Strong up to"),
                        tr("Strength, 0-10; above it the ladder stops."), 0, strongest);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(columns, 0, Qt::AlignLeft);
}

QFormLayout* LadderRulesPanel::addColumn(SideBySide& columns) {
    auto* part = new QWidget(&columns);
    auto* form = new QFormLayout(part);
    form->setContentsMargins(0, 0, 0, 0);
    form->setLabelAlignment(Qt::AlignLeft);
    columns.add(part, 0);
    return form;
}

QSpinBox* LadderRulesPanel::addBox(QFormLayout& column, const QString& words, const QString& tip,
                                   int least, int most) {
    auto* box = new QSpinBox(this);
    box->setRange(least, most);
    box->setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
    box->setToolTip(tip);
    box->setAccessibleName(words);
    column.addRow(words, box);
    connect(box, &QSpinBox::editingFinished, this, &LadderRulesPanel::commit);
    return box;
}

void LadderRulesPanel::setRules(const intake::LadderRules& rules) {
    m_rules = rules;
    const auto put = [](QSpinBox* box, int value) {
        const QSignalBlocker blocker(box);
        box->setValue(value);
    };
    put(m_goodPercent, qRound(rules.goodShare * percent));
    put(m_daysToAdvance, rules.daysToAdvance);
    put(m_holdDays, rules.holdDays);
    put(m_staleDays, rules.staleDays);
    put(m_rungsBack, rules.rungsBack);
    put(m_moderateWindow, rules.moderateWindowDays);
    put(m_mildTo, rules.mildTo);
    put(m_moderateTo, rules.moderateTo);
    put(m_strongTo, rules.strongTo);
}

intake::LadderRules LadderRulesPanel::rules() const {
    intake::LadderRules rules = m_rules;
    rules.goodShare = m_goodPercent->value() / percent;
    rules.daysToAdvance = m_daysToAdvance->value();
    rules.holdDays = m_holdDays->value();
    rules.staleDays = m_staleDays->value();
    rules.rungsBack = m_rungsBack->value();
    rules.moderateWindowDays = m_moderateWindow->value();
    rules.mildTo = m_mildTo->value();
    rules.moderateTo = m_moderateTo->value();
    rules.strongTo = m_strongTo->value();
    return rules;
}

void LadderRulesPanel::commit() {
    if (rules() != m_rules)
        Q_EMIT committed();
}

} // namespace ladlework::ui
