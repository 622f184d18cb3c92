#include "week/buying.h"

#include "foundation/reference_table.h"

#include <QHash>
#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace ladlework::week {

namespace {
using Sold = Buying::Sold;

Sold soldFrom(const QString& word) {
    if (word == u"weight")
        return Sold::ByWeight;
    if (word == u"piece")
        return Sold::Pieces;
    if (word == u"pack")
        return Sold::Packs;
    throw std::runtime_error("buying.csv: something is sold in no known way");
}

Buying readRow(const ReferenceTable::Row& row) {
    Buying buying;
    buying.waste = row.number(QStringLiteral("waste"));
    if (buying.waste < 0 || buying.waste >= 1)
        throw std::runtime_error("buying.csv: a waste share is outside 0 to 1");
    buying.sold = soldFrom(row.text(QStringLiteral("sold")));
    if (!row.text(QStringLiteral("pack_g")).isEmpty())
        buying.pack = quantity::Mass::fromGrams(row.number(QStringLiteral("pack_g")));
    if (buying.sold == Sold::Packs && !(buying.pack > quantity::Mass()))
        throw std::runtime_error("buying.csv: a pack holds nothing");
    buying.packName = row.text(QStringLiteral("pack_name"));
    return buying;
}

QHash<QString, Buying> loadRows() {
    const ReferenceTable table = valueOrThrow(ReferenceTable::load(QStringLiteral("buying")));
    QHash<QString, Buying> rows;
    for (qsizetype index = 0; index < table.size(); ++index)
        rows.insert(table.row(index).text(QStringLiteral("item")), readRow(table.row(index)));
    for (const QString& general :
         {QStringLiteral("weight-us"), QStringLiteral("weight-metric"), QStringLiteral("cut")})
        if (!rows.contains(general))
            throw std::runtime_error("buying.csv: one of the general rows is missing");
    return rows;
}

const QHash<QString, Buying>& rows() {
    static const QHash<QString, Buying> loaded = loadRows();
    return loaded;
}
} // namespace

const Buying& buyingOf(const QString& item) {
    const auto found = rows().constFind(item);
    return found != rows().cend() ? *found : *rows().constFind(QStringLiteral("cut"));
}

quantity::Mass weightStep(quantity::MeasureSystem measures) {
    const QString row = measures == quantity::MeasureSystem::UsCustomary
                            ? QStringLiteral("weight-us")
                            : QStringLiteral("weight-metric");
    return rows().constFind(row)->pack;
}

double wholeUnits(quantity::Mass needed, quantity::Mass unit) {
    constexpr double rounding = 1e-6;
    return std::max(0.0, std::ceil(needed / unit - rounding));
}

} // namespace ladlework::week
