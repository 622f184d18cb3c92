#include "ui/pot/extras_model.h"

#include "ui/pot/price_cell.h"

#include <QLocale>

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>

namespace ladlework::ui {

using kitchen::ExtraInPot;
using quantity::Mass;

namespace {
constexpr double quarters = 4.0;
constexpr double mostPieces = 500.0;

/// "2", "1/2", "1 1/2", "1½": numbers as a kitchen writes them, read as cups are.
std::optional<double> readPieces(const QString& text) {
    if (std::ranges::any_of(text, [](QChar c) { return c.isLetter(); }))
        return std::nullopt;
    const auto cups = quantity::parseVolume(QString(text + QStringLiteral(" cups")),
                                            quantity::MeasureSystem::UsCustomary);
    if (!cups)
        return std::nullopt;
    const double count = *cups / quantity::Volume::fromCups(1);
    return count > 0 && count <= mostPieces ? std::optional(count) : std::nullopt;
}

/// "1¾": to the quarter, as a kitchen counts.
QString countWords(double pieces) {
    static const std::array<QString, 4> rests{QString(), QStringLiteral("¼"), QStringLiteral("½"),
                                              QStringLiteral("¾")};
    const auto count = static_cast<qint64>(std::round(pieces * quarters));
    const QString& rest = rests.at(static_cast<std::size_t>(count % 4));
    return count >= 4 || rest.isEmpty() ? QString(QLocale().toString(count / 4) + rest) : rest;
}

/// "2 × clove", but "2 tsp": a measure is no piece.
QString piecesWords(double pieces, const QString& piece) {
    const bool isMeasure = quantity::parseVolume(QString(QStringLiteral("1 ") + piece),
                                                 quantity::MeasureSystem::UsCustomary)
                               .has_value();
    const QString number = countWords(pieces);
    return isMeasure ? QString(number + u' ' + piece)
                     : QStringLiteral("%1 × %2").arg(number, piece);
}

} // namespace

ExtrasModel::ExtrasModel(const kitchen::Catalogue& catalogue, QObject* parent)
    : QAbstractTableModel(parent), m_catalogue(catalogue) {}

void ExtrasModel::show(const QList<ExtraInPot>& extras, const Prices& prices) {
    const bool sameShape = extras.size() == m_extras.size();
    if (!sameShape)
        beginResetModel();
    m_extras = extras;
    m_prices = prices;
    if (!sameShape)
        endResetModel();
    else if (!m_extras.isEmpty())
        Q_EMIT dataChanged(index(0, 0), index(rowCount() - 1, ColumnCount - 1));
}

void ExtrasModel::add(const ExtraInPot& extra) {
    const int row = rowCount();
    beginInsertRows({}, row, row);
    m_extras.append(extra);
    endInsertRows();
    Q_EMIT edited();
}

void ExtrasModel::remove(int row) {
    if (row < 0 || row >= rowCount())
        return;
    beginRemoveRows({}, row, row);
    m_extras.removeAt(row);
    endRemoveRows();
    Q_EMIT edited();
}

int ExtrasModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_extras.size());
}

int ExtrasModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : ColumnCount;
}

double ExtrasModel::pieces(const ExtraInPot& extra) const {
    const kitchen::Extra* known = m_catalogue.extra(extra.item);
    return known && known->piece > Mass{} ? extra.mass / known->piece : 0.0;
}

QVariant ExtrasModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid() || index.row() >= rowCount())
        return {};
    const ExtraInPot& extra = m_extras.at(index.row());
    const kitchen::Extra* known = m_catalogue.extra(extra.item);
    if (index.column() == PriceColumn)
        return priceCell(extra.item, m_prices, role);
    if (role == Qt::ToolTipRole && known)
        return tr("%1. Source: %2").arg(known->name, known->provenance.source);
    if (role == Qt::EditRole && index.column() == MassColumn)
        return extra.mass.toGrams();
    if (role == Qt::EditRole && index.column() == PiecesColumn)
        return countWords(pieces(extra));
    if (role != Qt::DisplayRole)
        return {};
    switch (index.column()) {
    case ItemColumn:
        return known ? known->name : extra.item;
    case PiecesColumn: {
        const double count = std::round(pieces(extra) * quarters) / quarters;
        return count > 0 && known ? piecesWords(count, known->pieceName) : QString();
    }
    default:
        return quantity::printMass(extra.mass, m_prices.measures);
    }
}

QVariant ExtrasModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole)
        return QAbstractTableModel::headerData(section, orientation, role);
    switch (section) {
    case ItemColumn:
        return tr("Vegetables, herbs");
    case PiecesColumn:
        return tr("Pieces");
    case MassColumn:
        return tr("Prepared");
    default:
        return tr("Price");
    }
}

Qt::ItemFlags ExtrasModel::flags(const QModelIndex& index) const {
    Qt::ItemFlags flags = QAbstractTableModel::flags(index);
    if (index.isValid() && index.column() != ItemColumn)
        flags |= Qt::ItemIsEditable;
    return flags;
}

bool ExtrasModel::setData(const QModelIndex& index, const QVariant& value, int role) {
    if (!index.isValid() || index.row() >= rowCount() || role != Qt::EditRole)
        return false;
    ExtraInPot& extra = m_extras[index.row()];
    if (index.column() == PriceColumn)
        return setPriceCell(*this, extra.item, value.toString(), m_prices);
    const kitchen::Extra* known = m_catalogue.extra(extra.item);
    Mass mass = extra.mass;
    if (index.column() == MassColumn) {
        mass = Mass::fromGrams(value.toDouble());
    } else if (index.column() == PiecesColumn && known) {
        const QString text = value.toString().trimmed();
        if (text == data(index, Qt::EditRole).toString())
            return false; // only walked through: the exact weight stays
        const std::optional<double> count = readPieces(text);
        if (!count) {
            Q_EMIT refused(tr("Write how many pieces, such as 2 or 1 1/2."));
            return false;
        }
        mass = known->piece * *count;
    }
    if (mass <= Mass{} || mass == extra.mass)
        return false;
    extra.mass = mass;
    Q_EMIT dataChanged(index.siblingAtColumn(0), index.siblingAtColumn(ColumnCount - 1));
    Q_EMIT edited();
    return true;
}

} // namespace ladlework::ui
