#include "ui/week/servings_model.h"

#include <QLocale>

namespace ladlework::ui {

namespace {
/// A drop: less than this is rounding, not a shortage.
const quantity::Volume noticeable = quantity::Volume::fromDrops(1);
} // namespace

void ServingsModel::setOutlook(const week::OutlookInput& input, const week::Outlook& outlook) {
    QList<QList<Amounts>> rows;
    for (const week::Demand& demand : input.demands) {
        QList<Amounts> row(input.days);
        for (int day = 0; day < input.days; ++day)
            row[day].wanted = demand.perDay.value(day) * (1.0 + input.spill);
        for (const week::Serving& serving : outlook.servings) {
            if (serving.member != demand.member || serving.day < 0 || serving.day >= input.days)
                continue;
            row[serving.day].served += serving.volume;
            row[serving.day].from << tr("%1 of %2")
                                         .arg(quantity::printVolume(serving.volume /
                                                                        (1.0 + input.spill),
                                                                    input.measures),
                                              input.sources.at(serving.source).name);
        }
        rows << row;
    }
    const bool sameShape = rows.size() == m_rows.size() && input.days == m_input.days;
    if (!sameShape)
        beginResetModel();
    m_input = input;
    m_rows = rows;
    if (!sameShape) {
        endResetModel();
    } else if (!m_rows.isEmpty()) {
        Q_EMIT headerDataChanged(Qt::Vertical, 0, rowCount() - 1);
        Q_EMIT headerDataChanged(Qt::Horizontal, 0, columnCount() - 1);
        Q_EMIT dataChanged(index(0, 0), index(rowCount() - 1, columnCount() - 1));
    }
}

const ServingsModel::Amounts* ServingsModel::at(const QModelIndex& index) const {
    if (!index.isValid() || index.row() >= m_rows.size() || index.column() >= m_input.days)
        return nullptr;
    return &m_rows.at(index.row()).at(index.column());
}

bool ServingsModel::isShort(const QModelIndex& index) const {
    const Amounts* amounts = at(index);
    return amounts != nullptr && amounts->wanted - amounts->served > noticeable;
}

int ServingsModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

int ServingsModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : m_input.days;
}

QString ServingsModel::printed(quantity::Volume volume) const {
    return quantity::printVolume(volume / (1.0 + m_input.spill), m_input.measures);
}

QString ServingsModel::words(const Amounts& amounts) const {
    if (amounts.wanted < noticeable)
        return QStringLiteral("\u2013");
    if (amounts.wanted - amounts.served <= noticeable)
        return printed(amounts.wanted);
    return tr("%1\nshort %2")
        .arg(printed(amounts.wanted), printed(amounts.wanted - amounts.served));
}

QVariant ServingsModel::data(const QModelIndex& index, int role) const {
    const Amounts* amounts = at(index);
    if (amounts == nullptr)
        return {};
    switch (role) {
    case Qt::DisplayRole:
        return words(*amounts);
    case ShortRole:
        return isShort(index);
    case Qt::AccessibleTextRole:
        return tr("%1, %2: %3")
            .arg(m_input.demands.at(index.row()).name,
                 QLocale().dayName(m_input.start.addDays(index.column()).dayOfWeek()),
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
        return section < m_input.demands.size() ? m_input.demands.at(section).name : QString();
    return QLocale().dayName(m_input.start.addDays(section).dayOfWeek(), QLocale::ShortFormat);
}

} // namespace ladlework::ui
