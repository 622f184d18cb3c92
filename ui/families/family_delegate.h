#pragma once

#include <QStyledItemDelegate>

namespace ladlework::ui {

/// Paints a family of the list: its mark, its name, and a line of quiet words below.
class FamilyDelegate final : public QStyledItemDelegate {
    Q_OBJECT
public:
    using QStyledItemDelegate::QStyledItemDelegate;

    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override;
    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;
};

} // namespace ladlework::ui
