#pragma once

#include "quantity/measure.h"

#include <QStyledItemDelegate>

namespace ladlework::ui {

/// Edits and shows a Volume or Mass cell of a model in kitchen words. The model's EditRole is a
/// double in the base unit (mL, g); what is shown comes from the model's DisplayRole.
class AmountDelegate final : public QStyledItemDelegate {
    Q_OBJECT
public:
    enum class Kind { Volume, Mass };
    AmountDelegate(Kind kind, quantity::MeasureSystem system, QObject* parent);
    void setMeasures(quantity::MeasureSystem system) { m_system = system; }

    QWidget* createEditor(QWidget* parent, const QStyleOptionViewItem& option,
                          const QModelIndex& index) const override;
    void setEditorData(QWidget* editor, const QModelIndex& index) const override;
    void setModelData(QWidget* editor, QAbstractItemModel* model,
                      const QModelIndex& index) const override;

protected:
    bool eventFilter(QObject* object, QEvent* event) override;

private:
    Kind m_kind;
    quantity::MeasureSystem m_system;
};

} // namespace ladlework::ui
