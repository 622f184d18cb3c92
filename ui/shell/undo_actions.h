#pragma once

#include <QAction>
#include <QObject>
#include <QPointer>

namespace ladlework::store {
class Workbook;
}

namespace ladlework::ui {

class Desk;

/// Undo and Redo, with the sentence of the action in their text. While one family is on screen for
/// a client, only what was done since then can be taken back, so that no other family's name and
/// no other family's record is touched by it.
class UndoActions final : public QObject {
    Q_OBJECT
public:
    UndoActions(Desk& desk, QWidget* window);

    [[nodiscard]] QAction* undo() const { return m_undo; }
    [[nodiscard]] QAction* redo() const { return m_redo; }

    /// nullptr: no workbook, nothing to undo.
    void setWorkbook(store::Workbook* workbook);
    /// From now on only newer actions (true), or all of them (false).
    void setOnlyFromNow(bool only);

Q_SIGNALS:
    /// An action of any family was taken back or done again.
    void done();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void run(bool back);
    void update();

    Desk& m_desk;
    QWidget* m_window;
    QPointer<store::Workbook> m_workbook;
    QAction* m_undo;
    QAction* m_redo;
    qint64 m_after = 0;  ///< only history entries above this id are taken back
    int m_takenBack = 0; ///< since then, and not done again
    bool m_onlyFromNow = false;
};

} // namespace ladlework::ui
