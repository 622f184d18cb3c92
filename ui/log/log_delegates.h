#pragma once

#include "casebook/casebook.h"

#include <QStyledItemDelegate>
#include <memory>

namespace ladlework::ui {

/// Types a reaction with the practice's symptom list to complete from.
class SymptomDelegate final : public QStyledItemDelegate {
    Q_OBJECT
public:
    using QStyledItemDelegate::QStyledItemDelegate;
    QWidget* createEditor(QWidget* parent, const QStyleOptionViewItem& option,
                          const QModelIndex& index) const override;
};

/// Chooses the container or pot that a drink came out of.
class SourceDelegate final : public QStyledItemDelegate {
    Q_OBJECT
public:
    using QStyledItemDelegate::QStyledItemDelegate;
    void setCasebook(std::shared_ptr<const casebook::Casebook> casebook);
    QWidget* createEditor(QWidget* parent, const QStyleOptionViewItem& option,
                          const QModelIndex& index) const override;
    void setEditorData(QWidget* editor, const QModelIndex& index) const override;
    void setModelData(QWidget* editor, QAbstractItemModel* model,
                      const QModelIndex& index) const override;

private:
    std::shared_ptr<const casebook::Casebook> m_casebook;
};

} // namespace ladlework::ui
