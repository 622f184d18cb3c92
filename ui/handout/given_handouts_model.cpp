#include "ui/handout/given_handouts_model.h"

#include "ui/shared/week_stepper.h"

#include <QLocale>
#include <algorithm>

namespace ladlework::ui {

void GivenHandoutsModel::setHandouts(const QList<casebook::HandoutRecord>& handouts,
                                     const QTimeZone& zone) {
    const auto same = [](const casebook::HandoutRecord& a, const casebook::HandoutRecord& b) {
        return a.id == b.id && a.week == b.week && a.madeUtc == b.madeUtc && a.title == b.title;
    };
    if (zone == m_zone && std::equal(handouts.cbegin(), handouts.cend(), m_handouts.cbegin(),
                                     m_handouts.cend(), same))
        return;
    beginResetModel();
    m_handouts = handouts;
    m_zone = zone;
    endResetModel();
}

const casebook::HandoutRecord* GivenHandoutsModel::handout(int row) const {
    return row >= 0 && row < m_handouts.size() ? &m_handouts.at(row) : nullptr;
}

int GivenHandoutsModel::rowOf(HandoutId handout) const {
    for (int row = 0; row < rowCount(); ++row)
        if (m_handouts.at(row).id == handout)
            return row;
    return -1;
}

int GivenHandoutsModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_handouts.size());
}

QVariant GivenHandoutsModel::data(const QModelIndex& index, int role) const {
    const casebook::HandoutRecord* record = index.isValid() ? handout(index.row()) : nullptr;
    if (record == nullptr)
        return {};
    switch (role) {
    case Qt::DisplayRole:
    case Qt::AccessibleTextRole:
        return QString(weekInWords(record->week) + QLatin1Char('\n') +
                       tr("given %1").arg(givenAt(*record, m_zone)));
    case Qt::ToolTipRole:
        return record->title;
    default:
        return {};
    }
}

QString givenAt(const casebook::HandoutRecord& handout, const QTimeZone& zone) {
    const QDateTime local = handout.madeUtc.toTimeZone(zone);
    return GivenHandoutsModel::tr("%1, %2").arg(
        QLocale().toString(local.date(), QStringLiteral("d MMMM yyyy")),
        QLocale().toString(local.time(), QLocale::ShortFormat));
}

} // namespace ladlework::ui
