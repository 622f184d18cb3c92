#include "ui/week/board_model.h"

#include "ui/shared/start_time.h"
#include "ui/week/plan_edits.h"

#include <QLocale>
#include <QMimeData>
#include <algorithm>

namespace ladlework::ui {

namespace {

QString placementMimeType() {
    return QStringLiteral("application/x-ladlework-placement");
}

QMimeData* numberAs(const QString& type, qint64 number) {
    auto* data = new QMimeData;
    data->setData(type, QByteArray::number(number));
    return data;
}

} // namespace

QString potMimeType() {
    return QStringLiteral("application/x-ladlework-pot");
}

QMimeData* potMimeData(PotId pot) {
    return numberAs(potMimeType(), pot.value);
}

void BoardModel::setPlan(const week::WeekPlan& plan, const QHash<PotId, BoardPot>& pots,
                         QDate today) {
    QList<QList<qsizetype>> days;
    qsizetype most = 0;
    for (int day = 0; day < week::daysAWeek; ++day) {
        days << placementsOn(plan, plan.start.addDays(day));
        most = std::max(most, days.last().size());
    }
    const int rows = std::max(leastRows, static_cast<int>(most) + 1);
    // Rows come and go at the end only, so that the selection stays where it is.
    if (rows > m_rows)
        beginInsertRows({}, m_rows, rows - 1);
    else if (rows < m_rows)
        beginRemoveRows({}, rows, m_rows - 1);
    const int before = m_rows;
    m_plan = plan;
    m_pots = pots;
    m_today = today;
    m_days = days;
    m_rows = rows;
    if (rows > before)
        endInsertRows();
    else if (rows < before)
        endRemoveRows();
    Q_EMIT headerDataChanged(Qt::Horizontal, 0, week::daysAWeek - 1);
    Q_EMIT dataChanged(index(0, 0), index(m_rows - 1, week::daysAWeek - 1));
}

void BoardModel::setHours(const QStringList& inShort, const QStringList& inWords) {
    m_hoursInShort = inShort;
    m_hoursInWords = inWords;
    Q_EMIT headerDataChanged(Qt::Horizontal, 0, week::daysAWeek - 1);
}

void BoardModel::setProposed(bool proposed, const week::WeekPlan& kept) {
    m_proposed = proposed;
    m_kept = kept.placements;
    Q_EMIT dataChanged(index(0, 0), index(m_rows - 1, week::daysAWeek - 1));
}

int BoardModel::filledRows() const {
    qsizetype most = 0;
    for (const QList<qsizetype>& day : m_days)
        most = std::max(most, day.size());
    return static_cast<int>(most);
}

std::optional<BoardDrop> BoardModel::dropOf(const QMimeData* data, const QModelIndex& over) const {
    if (!over.isValid() || !canDropMimeData(data, Qt::CopyAction, -1, -1, over))
        return std::nullopt;
    BoardDrop drop;
    drop.day = dayOf(over.column());
    if (data->hasFormat(placementMimeType()))
        drop.placement = data->data(placementMimeType()).toLongLong();
    else
        drop.pot = PotId{data->data(potMimeType()).toLongLong()};
    return drop;
}

qsizetype BoardModel::placementAt(const QModelIndex& index) const {
    if (!index.isValid() || index.column() >= m_days.size())
        return -1;
    return m_days.at(index.column()).value(index.row(), -1);
}

QModelIndex BoardModel::indexOf(qsizetype placement) const {
    for (int column = 0; column < m_days.size(); ++column) {
        const qsizetype row = m_days.at(column).indexOf(placement);
        if (row >= 0)
            return index(static_cast<int>(row), column);
    }
    return {};
}

QModelIndex BoardModel::firstEmpty(int column) const {
    const QList<qsizetype> day = m_days.value(column);
    return index(std::min(static_cast<int>(day.size()), m_rows - 1), column);
}

int BoardModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : m_rows;
}

int BoardModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : week::daysAWeek;
}

QVariant BoardModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid())
        return {};
    if (role == Qt::AccessibleTextRole)
        return spoken(index);
    const qsizetype place = placementAt(index);
    if (role == PlacementRole)
        return QVariant::fromValue(place);
    if (place < 0)
        return {};
    const week::Placement& placement = m_plan.placements.at(place);
    const BoardPot pot = m_pots.value(placement.pot);
    switch (role) {
    case Qt::DisplayRole:
    case PotNameRole:
        return pot.name;
    case Qt::EditRole:
    case StartRole:
        return printStartTime(placement.start);
    case YieldRole:
        return pot.yield;
    case ProposedRole:
        return m_proposed && !m_kept.contains(placement);
    case Qt::ToolTipRole:
        return spoken(index);
    default:
        return {};
    }
}

QString BoardModel::spoken(const QModelIndex& index) const {
    const QString day = QLocale().dayName(dayOf(index.column()).dayOfWeek());
    const qsizetype place = placementAt(index);
    if (place < 0)
        return tr("%1, empty").arg(day);
    const week::Placement& placement = m_plan.placements.at(place);
    const BoardPot pot = m_pots.value(placement.pot);
    const QString start = placement.start.isValid()
                              ? tr("starts %1").arg(printStartTime(placement.start))
                              : tr("no start time");
    QStringList parts{day, pot.name, start, pot.yield};
    if (m_proposed && !m_kept.contains(placement))
        parts << tr("proposed");
    return parts.join(QStringLiteral(", "));
}

QVariant BoardModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation == Qt::Vertical || section < 0 || section >= week::daysAWeek)
        return {};
    const QDate day = dayOf(section);
    if (role == Qt::DisplayRole)
        return day == m_today
                   ? tr("%1 \u2013 today").arg(QLocale().toString(day, QStringLiteral("ddd d")))
                   : QLocale().toString(day, QStringLiteral("ddd d MMM"));
    switch (role) {
    case HoursRole:
        return m_hoursInShort.value(section);
    case LockedRole:
        return m_plan.lockedDays.contains(day);
    case TodayRole:
        return day == m_today;
    case Qt::AccessibleTextRole:
    case Qt::ToolTipRole: {
        QStringList parts{QLocale().toString(day, QLocale::LongFormat),
                          m_hoursInWords.value(section)};
        if (m_plan.lockedDays.contains(day))
            parts << tr("locked: planning leaves this day alone");
        parts.removeAll(QString());
        return parts.join(QStringLiteral(", "));
    }
    default:
        return {};
    }
}

Qt::ItemFlags BoardModel::flags(const QModelIndex& index) const {
    if (!index.isValid())
        return Qt::ItemIsDropEnabled;
    Qt::ItemFlags flags = Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsDropEnabled;
    if (placementAt(index) >= 0)
        flags |= Qt::ItemIsEditable | Qt::ItemIsDragEnabled;
    return flags;
}

bool BoardModel::setData(const QModelIndex& index, const QVariant& value, int role) {
    const qsizetype place = placementAt(index);
    // No value at all comes from a view that clears what was dragged away, not from a person.
    if (role != Qt::EditRole || place < 0 || !value.isValid())
        return false;
    const Result<QTime> start = parseStartTime(value.toString());
    if (!start) {
        Q_EMIT startNotUnderstood(start.error().sentence);
        return false;
    }
    if (*start == m_plan.placements.at(place).start)
        return false;
    Q_EMIT startWanted(place, *start);
    return true;
}

QStringList BoardModel::mimeTypes() const {
    return {placementMimeType(), potMimeType()};
}

QMimeData* BoardModel::mimeData(const QModelIndexList& indexes) const {
    for (const QModelIndex& index : indexes)
        if (placementAt(index) >= 0)
            return numberAs(placementMimeType(), placementAt(index));
    return nullptr;
}

Qt::DropActions BoardModel::supportedDropActions() const {
    return Qt::CopyAction | Qt::MoveAction;
}

QDate BoardModel::dropDay(int column, const QModelIndex& parent) const {
    const int day = parent.isValid() ? parent.column() : column;
    return day >= 0 && day < week::daysAWeek ? dayOf(day) : QDate();
}

bool BoardModel::canDropMimeData(const QMimeData* data, Qt::DropAction /*action*/, int /*row*/,
                                 int column, const QModelIndex& parent) const {
    return data != nullptr && dropDay(column, parent).isValid() &&
           (data->hasFormat(placementMimeType()) || data->hasFormat(potMimeType()));
}

bool BoardModel::dropMimeData(const QMimeData* data, Qt::DropAction action, int row, int column,
                              const QModelIndex& parent) {
    if (!canDropMimeData(data, action, row, column, parent))
        return false;
    const QDate day = dropDay(column, parent);
    if (data->hasFormat(placementMimeType()))
        Q_EMIT moveWanted(data->data(placementMimeType()).toLongLong(), day);
    else
        Q_EMIT putWanted(PotId{data->data(potMimeType()).toLongLong()}, day);
    // False: the view that the drag came from must not take anything away by itself.
    return false;
}

} // namespace ladlework::ui
