#pragma once

#include "casebook/casebook.h"

#include <QAbstractListModel>
#include <memory>

namespace ladlework::ui {

/// The members of a family by name, with band and state in quiet words, and after them the row for
/// the family and its kitchen.
class MemberListModel final : public QAbstractListModel {
    Q_OBJECT
public:
    using QAbstractListModel::QAbstractListModel;

    void setCasebook(std::shared_ptr<const casebook::Casebook> casebook);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;

    /// The member of a row; not stored for the family's row.
    [[nodiscard]] MemberId memberAt(int row) const;
    /// The row of a member; the first row when it is not there.
    [[nodiscard]] int rowOf(MemberId member) const;

private:
    [[nodiscard]] int memberCount() const;
    std::shared_ptr<const casebook::Casebook> m_casebook;
};

} // namespace ladlework::ui
