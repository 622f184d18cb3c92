#pragma once

#include <QStyledItemDelegate>

namespace ladlework::ui {

/// Draws a pot on a day as a small card: when it starts, its name, what it makes; and an empty
/// place with a quiet sign when it is the current one. Its editor is the start time.
class BoardDelegate final : public QStyledItemDelegate {
    Q_OBJECT
public:
    using QStyledItemDelegate::QStyledItemDelegate;

    /// The height of a place: a line for the start, two for the name, one for the yield.
    static int heightFor(const QWidget& widget);
    /// The height of a row that holds no pot on any day.
    static int emptyHeightFor(const QWidget& widget);

    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override;
    QWidget* createEditor(QWidget* parent, const QStyleOptionViewItem& option,
                          const QModelIndex& index) const override;
    void updateEditorGeometry(QWidget* editor, const QStyleOptionViewItem& option,
                              const QModelIndex& index) const override;

private:
    static void paintCard(QPainter& painter, const QStyleOptionViewItem& option,
                          const QModelIndex& index);
    static void paintEmpty(QPainter& painter, const QStyleOptionViewItem& option);
};

} // namespace ladlework::ui
