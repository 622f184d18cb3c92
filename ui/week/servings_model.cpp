#include "ui/week/servings_model.h"

#include <QLocale>

namespace ladlework::ui {

namespace {
/// A drop: less than this is rounding, not a shortage.
const quantity::Volume noticeable = quantity::Volume::fromDrops(1);
} // namespace

void ServingsModel::setWeek(const WeekShown& week) {
    const bool sameShape = week.members.size() == m_week.members.size() &&
                           week.days.size() == m_week.days.size();
    if (!sameShape)
        beginResetModel();
    m_week = week;
    if (!sameShape) {
        endResetModel();
    } else if (rowCount() > 0) {
        Q_EMIT headerDataChanged(Qt::Vertical, 0, rowCount() - 1);
        Q_EMIT headerDataChanged(Qt::Horizontal, 0, columnCount() - 1);
        Q_EMIT dataChanged(index(0, 0), index(rowCount() - 1, columnCount() - 1));
    }
}

const ShownAmounts* ServingsModel::at(const QModelIndex& index) const {
    if (!index.isValid() || index.row() >= m_week.members.size() ||
        index.column() >= m_week.days.size())
        return nullptr;
    return &m_week.members.at(index.row()).at(index.column());
}

bool ServingsModel::isShort(const QModelIndex& index) const {
    const ShownAmounts* amounts = at(index);
    return amounts != nullptr && amounts->wanted - amounts->served > noticeable;
}

int ServingsModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_week.members.size());
}

int ServingsModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_week.days.size());
}

QString ServingsModel::printed(quantity::Volume volume) const {
    return quantity::printVolume(volume / (1.0 + m_week.spill), m_week.measures);
}

QString ServingsModel::words(const ShownAmounts& amounts) const {
    if (amounts.wanted < noticeable)
        return QStringLiteral("\u2013");
    if (amounts.wanted - amounts.served <= noticeable)
        return printed(amounts.wanted);
    return tr("%1\nshort %2")
        .arg(printed(amounts.wanted), printed(amounts.wanted - amounts.served));
}

QVariant ServingsModel::data(const QModelIndex& index, int role) const {
    const ShownAmounts* amounts = at(index);
    if (amounts == nullptr)
        return {};
    switch (role) {
    case Qt::DisplayRole:
        return words(*amounts);
    case ShortRole:
        return isShort(index);
    case Qt::AccessibleTextRole:
        return tr("%1, %2: %3")
            .arg(m_week.names.at(index.row()),
                 QLocale().dayName(m_week.days.at(index.column()).day.dayOfWeek()),
                 amounts->wanted < noticeable
                     ? tr("nothing to drink")
                     : words(*amounts).replace(QLatin1Char('\n'), QStringLiteral(", ")));
    case Qt::ToolTipRole:
        return amounts->from.isEmpty()
                   ? QVariant()
                   : QVariant(tr("Wants %1; gets %2")
                                  .arg(printed(amounts->wanted),
                                       amounts->from.join(QStringLiteral(", "))));
    default:
        return {};
    }
}

QVariant ServingsModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (role != Qt::DisplayRole || section < 0)
        return {};
    if (orientation == Qt::Vertical)
        return section < m_week.names.size() ? m_week.names.at(section) : QString();
    return QLocale().dayName(m_week.days.at(section).day.dayOfWeek(), QLocale::ShortFormat);
}

} // namespace ladlework::ui
