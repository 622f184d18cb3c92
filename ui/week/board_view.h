#pragma once

#include <QTableView>

namespace ladlework::ui {

class BoardModel;

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

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void moveCurrent(int days);

    BoardModel* m_model;
};

} // namespace ladlework::ui
