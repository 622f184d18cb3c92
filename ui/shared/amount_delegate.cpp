#include "ui/shared/amount_delegate.h"

#include "ui/shared/amount_edit.h"

#include <QKeyEvent>

namespace ladlework::ui {

AmountDelegate::AmountDelegate(Kind kind, quantity::MeasureSystem system, QObject* parent)
    : QStyledItemDelegate(parent), m_kind(kind), m_system(system) {}

QWidget* AmountDelegate::createEditor(QWidget* parent, const QStyleOptionViewItem& /*option*/,
                                      const QModelIndex& index) const {
    QuantityEdit* editor = nullptr;
    if (m_kind == Kind::Volume)
        editor = new VolumeEdit(parent);
    else
        editor = new MassEdit(parent);
    editor->setAccessibleName(
        index.model()->headerData(index.column(), Qt::Horizontal, Qt::DisplayRole).toString());
    return editor;
}

void AmountDelegate::setEditorData(QWidget* editor, const QModelIndex& index) const {
    const double base = index.data(Qt::EditRole).toDouble();
    if (auto* volume = dynamic_cast<VolumeEdit*>(editor))
        volume->setValue(quantity::Volume::fromMillilitres(base), m_system);
    else if (auto* mass = dynamic_cast<MassEdit*>(editor))
        mass->setValue(quantity::Mass::fromGrams(base), m_system);
}

void AmountDelegate::setModelData(QWidget* editor, QAbstractItemModel* model,
                                  const QModelIndex& index) const {
    double base = 0.0;
    if (const auto* volume = dynamic_cast<VolumeEdit*>(editor); volume && volume->isGood())
        base = volume->value().toMillilitres();
    else if (const auto* mass = dynamic_cast<MassEdit*>(editor); mass && mass->isGood())
        base = mass->value().toGrams();
    else
        return;
    // An untouched cell keeps its exact amount: the words shown are rounded for the kitchen.
    if (base != index.data(Qt::EditRole).toDouble())
        model->setData(index, base, Qt::EditRole);
}

bool AmountDelegate::eventFilter(QObject* object, QEvent* event) {
    if (event->type() == QEvent::KeyPress) {
        auto* editor = qobject_cast<QuantityEdit*>(object);
        const int key = static_cast<QKeyEvent*>(event)->key();
        const bool leaves = key == Qt::Key_Return || key == Qt::Key_Enter || key == Qt::Key_Tab ||
                            key == Qt::Key_Backtab;
        // The editor stays open over text that cannot be read, so that it can be mended.
        if (editor != nullptr && leaves && !editor->isGood())
            return key == Qt::Key_Tab || key == Qt::Key_Backtab;
    }
    return QStyledItemDelegate::eventFilter(object, event);
}

} // namespace ladlework::ui
