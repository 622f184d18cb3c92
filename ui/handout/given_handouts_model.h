#pragma once

#include "casebook/visit_note.h"

#include <QAbstractListModel>
#include <QTimeZone>

namespace ladlework::ui {

/// The handouts that a family was given, newest first.
class GivenHandoutsModel final : public QAbstractListModel {
    Q_OBJECT
public:
    using QAbstractListModel::QAbstractListModel;

    /// `zone` is the family's: a handout was given on its day.
    void setHandouts(const QList<casebook::HandoutRecord>& handouts, const QTimeZone& zone);
    /// nullptr when there is no such row.
    [[nodiscard]] const casebook::HandoutRecord* handout(int row) const;
    /// -1 when it is not in the list.
    [[nodiscard]] int rowOf(HandoutId handout) const;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;

private:
    QList<casebook::HandoutRecord> m_handouts;
    QTimeZone m_zone = QTimeZone::utc();
};

/// "30 October 2026, 2:05 PM" in the family's time zone.
QString givenAt(const casebook::HandoutRecord& handout, const QTimeZone& zone);

} // namespace ladlework::ui
