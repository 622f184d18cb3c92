#pragma once

#include "casebook/casebook.h"
#include "foundation/finding.h"
#include "ui/shared/screen_context.h"

#include <QWidget>
#include <memory>

class QAction;
class QKeySequence;

namespace ladlework::ui {

/// A screen about one family. Data comes in through setCasebook() and goes out through
/// ScreenContext::act(); after each action the shell hands in a new casebook. A screen keeps its
/// selection, scroll position and keyboard focus across that.
class FamilyScreen : public QWidget {
    Q_OBJECT
public:
    FamilyScreen(const ScreenContext& context, QWidget* parent);

    void setCasebook(std::shared_ptr<const casebook::Casebook> casebook);

    /// What there is to say about what is on screen; the shell shows it in the findings strip.
    [[nodiscard]] const Findings& findings() const { return m_findings; }
    /// Puts the keyboard focus on the input that a finding's `field` names; ignored when unknown.
    virtual void showField(const QString& field);
    /// The widget that gets the focus when the screen is opened by keyboard.
    [[nodiscard]] virtual QWidget* firstField() { return this; }

Q_SIGNALS:
    void findingsChanged();
    /// Asks the shell for another screen of this family: "pots", "week", "handout"...
    void screenWanted(const QString& screen);

protected:
    /// Shows the new casebook. `sameFamily` is false when the family changed: start afresh.
    virtual void refresh(bool sameFamily) = 0;
    void setFindings(Findings findings);
    /// An action of this screen, for the menu and the command list; its shortcut works while the
    /// focus is in the screen, or wherever `context` says.
    QAction* addScreenAction(const QString& text, const QString& tip, const QKeySequence& keys,
                             Qt::ShortcutContext context = Qt::WidgetWithChildrenShortcut);

    [[nodiscard]] const casebook::Casebook& book() const { return *m_casebook; }
    [[nodiscard]] std::shared_ptr<const casebook::Casebook> sharedBook() const {
        return m_casebook;
    }
    [[nodiscard]] const ScreenContext& context() const { return m_context; }
    [[nodiscard]] quantity::MeasureSystem measures() const;

private:
    const ScreenContext& m_context;
    std::shared_ptr<const casebook::Casebook> m_casebook;
    Findings m_findings;
};

} // namespace ladlework::ui
