#pragma once

#include "week/week_outlook.h"

#include <QAbstractTableModel>

namespace ladlework::ui {

/// Who gets how much of what they should drink: a row a member, a column a day. A cell that is
/// short says so in words and carries the mark of a caution.
class ServingsModel final : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Role { ShortRole = Qt::UserRole };

    using QAbstractTableModel::QAbstractTableModel;

    void setOutlook(const week::OutlookInput& input, const week::Outlook& outlook);
    [[nodiscard]] bool isShort(const QModelIndex& index) const;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                      int role) const override;

private:
    struct Amounts {
        quantity::Volume wanted; ///< with the spill
        quantity::Volume served;
        QStringList from; ///< "½ cup of Chicken legs, Tuesday"
    };
    [[nodiscard]] const Amounts* at(const QModelIndex& index) const;
    [[nodiscard]] QString printed(quantity::Volume volume) const;
    [[nodiscard]] QString words(const Amounts& amounts) const;

    week::OutlookInput m_input;
    QList<QList<Amounts>> m_rows;
};

} // namespace ladlework::ui
