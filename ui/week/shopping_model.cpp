#include "ui/week/shopping_model.h"

#include <QFont>
#include <QLocale>
#include <algorithm>

namespace ladlework::ui {

using quantity::Mass;
using week::ShoppingItem;

namespace {

QString number(double count) {
    return QLocale().toString(count, 'g', 3);
}

QString toBuyWords(const ShoppingItem& item, quantity::MeasureSystem measures) {
    if (item.isHousehold())
        return item.name;
    if (item.isAtHome())
        return ShoppingModel::tr("%1: at home").arg(item.name);
    const QString weight = quantity::printMass(item.toBuy, measures);
    if (item.count <= 0)
        return ShoppingModel::tr("%1: %2").arg(item.name, weight);
    return ShoppingModel::tr("%1: %2 \u00d7 %3 (%4)")
        .arg(item.name, number(item.count), item.countName, weight);
}

/// What a cook counts, where there is something to count; else the weight.
QString neededWords(const ShoppingItem& item, quantity::MeasureSystem measures) {
    if (item.neededPieces > 0)
        return ShoppingModel::tr("%1 \u00d7 %2 needed")
            .arg(number(item.neededPieces), item.pieceName);
    return ShoppingModel::tr("%1 needed").arg(quantity::printMass(item.needed, measures));
}

/// What stands behind what is bought; nothing where it says the same again.
QString behindWords(const ShoppingItem& item, quantity::MeasureSystem measures) {
    const bool soldAsUsed = item.count > 0 && item.countName == item.pieceName;
    const bool sameWeight =
        item.count <= 0 && item.neededPieces <= 0 &&
        quantity::printMass(item.needed, measures) == quantity::printMass(item.toBuy, measures);
    if (item.isHousehold() || (!(item.atHome > Mass()) && (soldAsUsed || sameWeight)))
        return {};
    return neededWords(item, measures);
}

} // namespace

QString ShoppingModel::sectionName(week::ShopSection section) {
    switch (section) {
    case week::ShopSection::Meat:
        return tr("Meat");
    case week::ShopSection::Fish:
        return tr("Fish");
    case week::ShopSection::Vegetables:
        return tr("Vegetables");
    case week::ShopSection::Herbs:
        return tr("Fresh herbs");
    case week::ShopSection::Dry:
        return tr("Dry goods");
    case week::ShopSection::Household:
        return tr("For the house");
    }
    return {};
}

bool ShoppingModel::sameRows(const QList<Line>& a, const QList<Line>& b) {
    return std::ranges::equal(a, b, [](const Line& one, const Line& other) {
        return one.section == other.section && one.item.has_value() == other.item.has_value() &&
               (!one.item ||
                (one.item->id == other.item->id && one.item->name == other.item->name));
    });
}

void ShoppingModel::setList(const week::ShoppingList& list, quantity::MeasureSystem measures) {
    QList<Line> lines;
    for (qsizetype i = 0; i < list.items.size(); ++i) {
        const ShoppingItem& item = list.items.at(i);
        if (i == 0 || item.section != list.items.at(i - 1).section)
            lines << Line{item.section, std::nullopt};
        lines << Line{item.section, item};
    }
    if (lines == m_lines && measures == m_measures)
        return;
    m_measures = measures;
    if (sameRows(lines, m_lines)) { // an amount has changed: selection and scrolling stay
        m_lines = lines;
        if (!m_lines.isEmpty())
            Q_EMIT dataChanged(index(0, 0), index(rowCount() - 1, ColumnCount - 1));
        return;
    }
    beginResetModel();
    m_lines = lines;
    endResetModel();
}

QString ShoppingModel::asText() const {
    QString text;
    for (const Line& line : m_lines) {
        const QString words =
            line.item ? toBuyWords(*line.item, m_measures) : sectionName(line.section);
        text += (line.item ? QStringLiteral("  ") : QString()) + words + QLatin1Char('\n');
    }
    return text;
}

const ShoppingItem* ShoppingModel::itemAt(int row) const {
    if (row < 0 || row >= m_lines.size() || !m_lines.at(row).item)
        return nullptr;
    return &*m_lines.at(row).item;
}

int ShoppingModel::rowOf(const QString& item) const {
    for (int row = 0; row < rowCount(); ++row)
        if (const ShoppingItem* found = itemAt(row); found != nullptr && found->id == item)
            return row;
    return -1;
}

int ShoppingModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_lines.size());
}

int ShoppingModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : ColumnCount;
}

QVariant ShoppingModel::textOf(const Line& line, int column) const {
    if (!line.item)
        return column == ThingColumn ? QVariant(sectionName(line.section)) : QVariant();
    if (column == AtHomeColumn) {
        if (line.item->isHousehold())
            return {};
        return line.item->atHome > Mass() ? quantity::printMass(line.item->atHome, m_measures)
                                          : QStringLiteral("\u2013");
    }
    const QString behind = behindWords(*line.item, m_measures);
    const QString first = toBuyWords(*line.item, m_measures);
    return behind.isEmpty() ? first : QString(first + QLatin1Char('\n') + behind);
}

QVariant ShoppingModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid() || index.row() >= m_lines.size())
        return {};
    const Line& line = m_lines.at(index.row());
    switch (role) {
    case Qt::DisplayRole:
        return textOf(line, index.column());
    case Qt::EditRole:
        if (index.column() == AtHomeColumn && line.item)
            return line.item->atHome.toGrams();
        return textOf(line, index.column());
    case HeadingRole:
        return !line.item.has_value();
    case Qt::FontRole: {
        QFont font;
        font.setBold(!line.item);
        font.setStrikeOut(line.item && line.item->isAtHome() && index.column() == ThingColumn);
        return font;
    }
    default:
        return {};
    }
}

QVariant ShoppingModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole)
        return QAbstractTableModel::headerData(section, orientation, role);
    return section == ThingColumn ? tr("To buy") : tr("At home");
}

bool ShoppingModel::setData(const QModelIndex& index, const QVariant& value, int role) {
    const ShoppingItem* item = index.isValid() ? itemAt(index.row()) : nullptr;
    if (item == nullptr || item->isHousehold() || role != Qt::EditRole ||
        index.column() != AtHomeColumn)
        return false;
    Q_EMIT atHomeWanted(item->id, Mass::fromGrams(value.toDouble()));
    return true;
}

Qt::ItemFlags ShoppingModel::flags(const QModelIndex& index) const {
    const ShoppingItem* item = index.isValid() ? itemAt(index.row()) : nullptr;
    if (!index.isValid())
        return Qt::NoItemFlags;
    if (item == nullptr)
        return Qt::ItemIsEnabled | Qt::ItemNeverHasChildren;
    Qt::ItemFlags flags = Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemNeverHasChildren;
    if (index.column() == AtHomeColumn && !item->isHousehold())
        flags |= Qt::ItemIsEditable;
    return flags;
}

} // namespace ladlework::ui
