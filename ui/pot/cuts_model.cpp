#include "ui/pot/cuts_model.h"

#include "ui/pot/keeping_panel.h"
#include "ui/pot/price_cell.h"

namespace ladlework::ui {

using kitchen::CutInPot;
using quantity::Mass;

CutsModel::CutsModel(const kitchen::Catalogue& catalogue, QObject* parent)
    : QAbstractTableModel(parent), m_catalogue(catalogue) {}

void CutsModel::show(const QList<CutInPot>& cuts, const Prices& prices) {
    const bool sameShape = cuts.size() == m_cuts.size();
    if (!sameShape)
        beginResetModel();
    m_cuts = cuts;
    m_prices = prices;
    if (!sameShape)
        endResetModel();
    else if (!m_cuts.isEmpty())
        Q_EMIT dataChanged(index(0, 0), index(rowCount() - 1, ColumnCount - 1));
}

void CutsModel::add(const CutInPot& cut) {
    const int row = rowCount();
    beginInsertRows({}, row, row);
    m_cuts.append(cut);
    endInsertRows();
    Q_EMIT edited();
}

void CutsModel::remove(int row) {
    if (row < 0 || row >= rowCount())
        return;
    beginRemoveRows({}, row, row);
    m_cuts.removeAt(row);
    endRemoveRows();
    Q_EMIT edited();
}

int CutsModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_cuts.size());
}

int CutsModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : ColumnCount;
}

QVariant CutsModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid() || index.row() >= rowCount())
        return {};
    const CutInPot& cut = m_cuts.at(index.row());
    const kitchen::Cut* known = m_catalogue.cut(cut.cut);
    if (role == Qt::CheckStateRole && index.column() == RawColumn)
        return cut.raw ? Qt::Checked : Qt::Unchecked;
    if (index.column() == PriceColumn)
        return priceCell(cut.cut, m_prices, role);
    if (role == Qt::ToolTipRole && known)
        return QString(tr("%1. Source: %2").arg(known->name, known->provenance.source) + u'\n' +
                       rawKeepingWords(known->cookClass));
    if (role == Qt::EditRole && index.column() == MassColumn)
        return cut.mass.toGrams();
    if (role == Qt::AccessibleTextRole && index.column() == RawColumn)
        return cut.raw ? tr("raw") : tr("cooked");
    if (role != Qt::DisplayRole)
        return {};
    switch (index.column()) {
    case CutColumn:
        return known ? known->name : cut.cut;
    case MassColumn:
        return quantity::printMass(cut.mass, m_prices.measures);
    default: // the box and the heading say it
        return {};
    }
}

QVariant CutsModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole)
        return QAbstractTableModel::headerData(section, orientation, role);
    switch (section) {
    case CutColumn:
        return tr("Bones and cuts");
    case MassColumn:
        return tr("As bought");
    case RawColumn:
        return tr("Raw");
    default:
        return tr("Price");
    }
}

Qt::ItemFlags CutsModel::flags(const QModelIndex& index) const {
    Qt::ItemFlags flags = QAbstractTableModel::flags(index);
    if (index.column() == MassColumn || index.column() == PriceColumn)
        flags |= Qt::ItemIsEditable;
    if (index.column() == RawColumn)
        flags |= Qt::ItemIsUserCheckable;
    return flags;
}

bool CutsModel::setData(const QModelIndex& index, const QVariant& value, int role) {
    if (!index.isValid() || index.row() >= rowCount())
        return false;
    CutInPot& cut = m_cuts[index.row()];
    if (index.column() == PriceColumn && role == Qt::EditRole)
        return setPriceCell(*this, cut.cut, value.toString(), m_prices);
    const CutInPot before = cut;
    if (index.column() == MassColumn && role == Qt::EditRole && value.toDouble() > 0)
        cut.mass = Mass::fromGrams(value.toDouble());
    else if (index.column() == RawColumn && role == Qt::CheckStateRole)
        cut.raw = value.toInt() == Qt::Checked;
    if (cut == before)
        return false;
    Q_EMIT dataChanged(index, index);
    Q_EMIT edited();
    return true;
}

} // namespace ladlework::ui
