#pragma once

#include "casebook/casebook.h"
#include "ui/log/import_lines.h"
#include "ui/shared/screen_context.h"

#include <QTimer>
#include <QWidget>
#include <memory>

class QLabel;
class QPlainTextEdit;
class QPushButton;
class QTableView;

namespace ladlework::ui {

class ImportModel;
class ProblemLine;

/// Takes a filled sheet into the log: the lines, pasted, opened or typed, and below, while they are
/// changed, what each would do. One button adds them all as one action.
class ImportPanel final : public QWidget {
    Q_OBJECT
public:
    ImportPanel(const ScreenContext& context, QWidget* parent);

    void setCasebook(std::shared_ptr<const casebook::Casebook> casebook);
    /// Empties the panel: another family.
    void clear();
    /// Takes what is on the clipboard when it is text.
    void paste();
    /// Asks for a file and takes its text.
    void openFile();
    [[nodiscard]] QWidget* firstField() const;

Q_SIGNALS:
    /// The lines are in the log; the latest day among them.
    void added(int lines, QDate latest);
    void leave();

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    QWidget* makeHead();
    void take(const QString& sheet);
    void preview();
    void add();

    const ScreenContext& m_context;
    std::shared_ptr<const casebook::Casebook> m_casebook;
    ImportPreview m_preview;
    QTimer m_pause;
    QPlainTextEdit* m_sheet;
    ProblemLine* m_problem;
    QLabel* m_summary;
    ImportModel* m_model;
    QTableView* m_table;
    QPushButton* m_add;
};

} // namespace ladlework::ui
