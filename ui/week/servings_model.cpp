#include "ui/week/servings_model.h"

#include <QLocale>
#include <algorithm>

namespace ladlework::ui {

namespace {
/// A drop: less than this is rounding, not a shortage.
const quantity::Volume noticeable = quantity::Volume::fromDrops(1);
const quantity::Mass noticeableMeat = quantity::Mass::fromGrams(1);

QString sentenceOf(const ShownDay& day, const QString& words) {
    return ServingsModel::tr("%1: %2").arg(QLocale().dayName(day.day.dayOfWeek()), words);
}
} // namespace

void ServingsModel::setWeek(const WeekShown& week) {
    const auto any = [&week](const auto& has) {
        return std::any_of(week.days.cbegin(), week.days.cend(), has);
    };
    const bool hasMoves = any([](const ShownDay& day) { return !day.shortMoves.isEmpty(); });
    const bool hasMeat = any([](const ShownDay& day) { return day.meat >= noticeableMeat; });
    const bool sameShape = week.members.size() == m_week.members.size() &&
                           week.days.size() == m_week.days.size() && hasMoves == m_hasMoves &&
                           hasMeat == m_hasMeat;
    if (!sameShape)
        beginResetModel();
    m_week = week;
    m_hasMoves = hasMoves;
    m_hasMeat = hasMeat;
    if (!sameShape) {
        endResetModel();
    } else if (rowCount() > 0) {
        Q_EMIT headerDataChanged(Qt::Vertical, 0, rowCount() - 1);
        Q_EMIT headerDataChanged(Qt::Horizontal, 0, columnCount() - 1);
        Q_EMIT dataChanged(index(0, 0), index(rowCount() - 1, columnCount() - 1));
    }
}

ServingsModel::Row ServingsModel::kindOf(int row) const {
    if (row < m_week.members.size())
        return Row::Member;
    return m_hasMoves && row == m_week.members.size() ? Row::Moves : Row::Meat;
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
    return parent.isValid() ? 0
                            : static_cast<int>(m_week.members.size()) + (m_hasMoves ? 1 : 0) +
                                  (m_hasMeat ? 1 : 0);
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

QVariant ServingsModel::moves(const ShownDay& day, int role) const {
    switch (role) {
    case Qt::DisplayRole:
        return day.shortMoves.join(QLatin1Char('\n'));
    case LinesRole:
        return std::max<qsizetype>(1, day.shortMoves.size());
    case QuietRole:
        return true;
    case Qt::AccessibleTextRole:
    case Qt::ToolTipRole:
        return day.moves.isEmpty() ? QString()
                                   : sentenceOf(day, day.moves.join(QStringLiteral("; ")));
    default:
        return {};
    }
}

QVariant ServingsModel::meat(const ShownDay& day, int role) const {
    const QString there = quantity::printMass(day.meat, m_week.measures);
    switch (role) {
    case Qt::DisplayRole:
        return day.meat < noticeableMeat ? QStringLiteral("\u2013") : there;
    case LinesRole:
        return 1;
    case QuietRole:
        return true;
    case Qt::AccessibleTextRole:
    case Qt::ToolTipRole:
        return sentenceOf(day, tr("%1 of cooked meat for the table, which eats %2 a day")
                                   .arg(day.meat < noticeableMeat ? tr("nothing") : there,
                                        quantity::printMass(m_week.meatPerDay, m_week.measures)));
    default:
        return {};
    }
}

QVariant ServingsModel::data(const QModelIndex& index, int role) const {
    if (index.isValid() && index.row() < rowCount() && index.column() < m_week.days.size()) {
        const ShownDay& day = m_week.days.at(index.column());
        if (kindOf(index.row()) == Row::Moves)
            return moves(day, role);
        if (kindOf(index.row()) == Row::Meat)
            return meat(day, role);
    }
    const ShownAmounts* amounts = at(index);
    if (amounts == nullptr)
        return {};
    switch (role) {
    case Qt::DisplayRole:
        return words(*amounts);
    case ShortRole:
        return isShort(index);
    case LinesRole:
        return isShort(index) ? 2 : 1;
    case QuietRole:
        return false;
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

QString ServingsModel::rowName(int row) const {
    if (row >= rowCount())
        return {};
    switch (kindOf(row)) {
    case Row::Member:
        return m_week.names.at(row);
    case Row::Moves:
        return tr("freezer");
    case Row::Meat:
        return tr("meat, %1 a day").arg(quantity::printMass(m_week.meatPerDay, m_week.measures));
    }
    return {};
}

QVariant ServingsModel::headerData(int section, Qt::Orientation orientation, int role) const {
    const bool named = orientation == Qt::Vertical && role == Qt::ToolTipRole;
    if ((role != Qt::DisplayRole && !named) || section < 0)
        return {};
    if (orientation == Qt::Vertical)
        return rowName(section);
    return QLocale().dayName(m_week.days.at(section).day.dayOfWeek(), QLocale::ShortFormat);
}

} // namespace ladlework::ui
