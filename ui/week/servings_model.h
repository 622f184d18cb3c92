#pragma once

#include "ui/week/week_shown.h"

#include <QAbstractTableModel>

namespace ladlework::ui {

/// Who gets how much of what they should drink: a row a member, a column a day. A cell that is
/// short says so in words and carries the mark of a caution. Below the members a row for what is
/// thawed and frozen and one for the meat on the table, each when there is any.
class ServingsModel final : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Role { ShortRole = Qt::UserRole, LinesRole, QuietRole };

    using QAbstractTableModel::QAbstractTableModel;

    void setWeek(const WeekShown& week);
    [[nodiscard]] bool isShort(const QModelIndex& index) const;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                      int role) const override;

private:
    enum class Row { Member, Moves, Meat };
    [[nodiscard]] Row kindOf(int row) const;
    [[nodiscard]] QVariant moves(const ShownDay& day, int role) const;
    [[nodiscard]] QVariant meat(const ShownDay& day, int role) const;
    [[nodiscard]] const ShownAmounts* at(const QModelIndex& index) const;
    [[nodiscard]] QString rowName(int row) const;
    [[nodiscard]] QString printed(quantity::Volume volume) const;
    [[nodiscard]] QString words(const ShownAmounts& amounts) const;

    WeekShown m_week;
    bool m_hasMoves = false;
    bool m_hasMeat = false;
};

} // namespace ladlework::ui
