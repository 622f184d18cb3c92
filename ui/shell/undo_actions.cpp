#include "ui/shell/undo_actions.h"

#include "store/workbook.h"
#include "ui/shared/desk.h"

#include <QApplication>
#include <QKeyEvent>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QTextDocument>
#include <QWidget>

namespace ladlework::ui {

namespace {

/// True for a text field in which there is nothing of its own to undo or redo.
bool hasNothingToUndo(const QObject* field) {
    if (const auto* line = qobject_cast<const QLineEdit*>(field))
        return !line->isModified();
    if (const auto* text = qobject_cast<const QPlainTextEdit*>(field))
        return !text->document()->isUndoAvailable() && !text->document()->isRedoAvailable();
    return false;
}

QString withSentence(const QString& word, const QString& sentence) {
    QString plain = sentence;
    plain.replace(u'&', QStringLiteral("&&"));
    return UndoActions::tr("%1: %2").arg(word, plain);
}

} // namespace

UndoActions::UndoActions(Desk& desk, QWidget* window)
    : QObject(window), m_desk(desk), m_window(window), m_undo(new QAction(this)),
      m_redo(new QAction(this)) {
    m_undo->setShortcut(QKeySequence(QKeySequence::Undo));
    m_redo->setShortcuts({QKeySequence(tr("Ctrl+Shift+Z")), QKeySequence(tr("Ctrl+Y"))});
    connect(m_undo, &QAction::triggered, this, [this] { run(true); });
    connect(m_redo, &QAction::triggered, this, [this] { run(false); });
    qApp->installEventFilter(this);
    update();
}

void UndoActions::setWorkbook(store::Workbook* workbook) {
    if (m_workbook != nullptr)
        disconnect(m_workbook, nullptr, this, nullptr);
    m_workbook = workbook;
    if (workbook != nullptr)
        connect(workbook, &store::Workbook::changed, this, &UndoActions::update);
    setOnlyFromNow(false);
}

void UndoActions::setOnlyFromNow(bool only) {
    m_onlyFromNow = only;
    m_after = 0;
    m_takenBack = 0;
    if (only && m_workbook != nullptr) {
        const std::optional<store::HistoryEntry> last = m_workbook->history().nextUndo();
        m_after = last ? last->id : 0;
    }
    update();
}

void UndoActions::run(bool back) {
    if (m_workbook == nullptr)
        return;
    const Outcome outcome = back ? m_workbook->undo() : m_workbook->redo();
    if (outcome)
        m_takenBack += back ? 1 : -1;
    else
        m_desk.tell(m_window, outcome.error().sentence);
    update();
    Q_EMIT done();
}

void UndoActions::update() {
    std::optional<store::HistoryEntry> back;
    std::optional<store::HistoryEntry> forth;
    if (m_workbook != nullptr) {
        back = m_workbook->history().nextUndo();
        forth = m_workbook->history().nextRedo();
    }
    if (m_onlyFromNow && back && back->id <= m_after)
        back.reset();
    if (!forth)
        m_takenBack = 0; // a new action has closed the way forth
    if (m_onlyFromNow && m_takenBack <= 0)
        forth.reset();
    m_undo->setEnabled(back.has_value());
    m_undo->setText(back ? withSentence(tr("&Undo"), back->sentence) : tr("&Undo"));
    m_redo->setEnabled(forth.has_value());
    m_redo->setText(forth ? withSentence(tr("&Redo"), forth->sentence) : tr("&Redo"));
}

/// A text field claims Ctrl+Z even when nothing was typed in it; then it is meant for the workbook.
bool UndoActions::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::ShortcutOverride && hasNothingToUndo(watched)) {
        const auto* key = static_cast<QKeyEvent*>(event);
        const QKeySequence pressed(key->keyCombination());
        if (m_undo->shortcuts().contains(pressed) || m_redo->shortcuts().contains(pressed)) {
            event->ignore();
            return true;
        }
    }
    return QObject::eventFilter(watched, event);
}

} // namespace ladlework::ui
