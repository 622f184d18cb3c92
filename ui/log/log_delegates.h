#pragma once

#include "casebook/casebook.h"
#include "ui/log/day_cells.h"

#include <QStyledItemDelegate>
#include <memory>

namespace ladlework::ui {

/// Types what was drunk; the empty editor says what can be typed.
class DrinkDelegate final : public QStyledItemDelegate {
    Q_OBJECT
public:
    using QStyledItemDelegate::QStyledItemDelegate;
    QWidget* createEditor(QWidget* parent, const QStyleOptionViewItem& option,
                          const QModelIndex& index) const override;
};

/// Types a reaction with the practice's symptom list to complete from.
class SymptomDelegate final : public QStyledItemDelegate {
    Q_OBJECT
public:
    /// `strengthFollows`: the strength is typed after the name in the same cell.
    SymptomDelegate(bool strengthFollows, QObject* parent)
        : QStyledItemDelegate(parent), m_strengthFollows(strengthFollows) {}
    void setWords(const QList<SymptomWord>& words) { m_words = words; }
    QWidget* createEditor(QWidget* parent, const QStyleOptionViewItem& option,
                          const QModelIndex& index) const override;

private:
    bool m_strengthFollows;
    QList<SymptomWord> m_words;
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
