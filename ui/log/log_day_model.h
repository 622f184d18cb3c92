#pragma once

#include "casebook/casebook.h"

#include <QAbstractTableModel>
#include <memory>

namespace ladlework::ui {

/// One day of a family: a row for each member who has a ladder or may have one. What is typed is
/// handed on through drinkTyped() and reactionTyped(); the model itself holds no records.
class LogDayModel final : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Column {
        MemberColumn,
        AskedColumn,
        DrunkColumn,
        BorneColumn,
        DecisionColumn,
        ColumnCount
    };

    using QAbstractTableModel::QAbstractTableModel;
    void show(std::shared_ptr<const casebook::Casebook> casebook, QDate day);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                      int role) const override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;
    bool setData(const QModelIndex& index, const QVariant& value, int role) override;

    [[nodiscard]] const casebook::Standing* standingAt(int row) const;
    /// What the member was asked to drink on the day.
    [[nodiscard]] quantity::Volume askedAt(int row) const;
    /// True when something can be typed for the member of that row.
    [[nodiscard]] bool isOpen(int row) const;

Q_SIGNALS:
    void drinkTyped(int row, const QString& text);
    void reactionTyped(int row, const QString& text);

private:
    [[nodiscard]] QString drunkText(const casebook::Standing& standing, bool forEditing) const;
    [[nodiscard]] QString borneText(const casebook::Standing& standing) const;
    /// A question for each reaction of the day that is neither a red flag nor on any list.
    [[nodiscard]] QStringList unlistedWords(const casebook::Standing& standing) const;
    [[nodiscard]] const intake::LadderDay* ladderDay(const casebook::Standing& standing) const;

    std::shared_ptr<const casebook::Casebook> m_casebook;
    QDate m_day;
};

} // namespace ladlework::ui
