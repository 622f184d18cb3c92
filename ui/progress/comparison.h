#pragma once

#include "casebook/casebook.h"

#include <QAbstractTableModel>
#include <optional>

namespace ladlework::ui {

/// One member's climb as shares of the target, to be laid beside the others.
struct ClimbShares {
    struct Day {
        QDate day;
        std::optional<double> share; ///< of the low end of the target; nothing while stopped
    };
    MemberId member;
    QString name;
    QList<Day> days; ///< every day of the climb, in order
};

/// The members with a ladder and a target, in the order of the family.
QList<ClimbShares> climbShares(const casebook::Casebook& book);

/// Where each member with a ladder stands, a row each.
class ClimbComparisonModel final : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Column {
        MemberColumn,
        StateColumn,
        AskedColumn,
        TargetColumn,
        ShareColumn,
        WhenColumn,
        ColumnCount
    };

    using QAbstractTableModel::QAbstractTableModel;
    void show(const casebook::Casebook& book);
    [[nodiscard]] MemberId memberAt(int row) const;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                      int role) const override;

private:
    struct Line {
        MemberId member;
        QStringList words; ///< by column
    };
    QList<Line> m_lines;
};

} // namespace ladlework::ui
