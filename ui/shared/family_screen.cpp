#include "ui/shared/family_screen.h"

#include <QAction>
#include <utility>

namespace ladlework::ui {

FamilyScreen::FamilyScreen(const ScreenContext& context, QWidget* parent)
    : QWidget(parent), m_context(context) {}

void FamilyScreen::setCasebook(std::shared_ptr<const casebook::Casebook> casebook) {
    const bool sameFamily =
        m_casebook != nullptr && m_casebook->records().family.id == casebook->records().family.id;
    m_casebook = std::move(casebook);
    refresh(sameFamily);
}

void FamilyScreen::showField(const QString& /*field*/) {}

void FamilyScreen::setFindings(Findings findings) {
    if (findings == m_findings)
        return;
    m_findings = std::move(findings);
    Q_EMIT findingsChanged();
}

QAction* FamilyScreen::addScreenAction(const QString& text, const QString& tip,
                                       const QKeySequence& keys, Qt::ShortcutContext context) {
    auto* action = new QAction(text, this);
    action->setShortcut(keys);
    action->setShortcutContext(context);
    action->setStatusTip(tip);
    addAction(action);
    return action;
}

quantity::MeasureSystem FamilyScreen::measures() const {
    return m_casebook == nullptr ? quantity::MeasureSystem::UsCustomary
                                 : m_casebook->records().family.measures;
}

} // namespace ladlework::ui
