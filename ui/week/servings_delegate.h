#pragma once

#include <QStyledItemDelegate>

namespace ladlework::ui {

/// Draws who gets how much; a shortage stands on a second line with its mark, word and colour.
class ServingsDelegate final : public QStyledItemDelegate {
    Q_OBJECT
public:
    using QStyledItemDelegate::QStyledItemDelegate;

    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override;
    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option,
                                 const QModelIndex& index) const override;
};

} // namespace ladlework::ui
