#pragma once

#include "ui/week/board_model.h"

#include <QTableView>
#include <optional>

namespace ladlework::ui {

/// The board of a week. Arrows go to a day, Enter asks for a pot to put there, typing sets the
/// start of a pot, Delete takes it off, Ctrl+Left and Ctrl+Right put it on the day before or after.
class BoardView final : public QTableView {
    Q_OBJECT
public:
    explicit BoardView(BoardModel* model, QWidget* parent = nullptr);

    /// High enough for all rows, so that the screen scrolls and not the board.
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;
    /// The row height, which depends on the font.
    void fitRows();

Q_SIGNALS:
    void chooserWanted(QDate day);
    void removeWanted(qsizetype placement);
    void moveWanted(qsizetype placement, QDate day);
    /// While dragging: what would be dropped where; nothing when the drag left or ended.
    void dropHovered(const std::optional<ladlework::ui::BoardDrop>& drop);

protected:
    void dragMoveEvent(QDragMoveEvent* event) override;
    void dragLeaveEvent(QDragLeaveEvent* event) override;
    void dropEvent(QDropEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void moveCurrent(int days);
    void hover(const std::optional<BoardDrop>& drop);
    /// Rows that no day has filled yet are lower.
    void setRowHeights();

    BoardModel* m_model;
    std::optional<BoardDrop> m_hovered;
};

} // namespace ladlework::ui
