#include "kitchen/cooling_figures.h"

#include "foundation/reference_table.h"

#include <stdexcept>

namespace ladlework::kitchen {

namespace {
template <class Value>
Value sound(Result<Value> read) {
    if (!read)
        throw std::runtime_error(toLine(read.error()).toStdString());
    return *std::move(read);
}

Figure figureOf(const ReferenceTable::Row& row) {
    const auto numberOr = [&row](const QString& column, double otherwise) {
        return row.text(column).isEmpty() ? otherwise : row.number(column);
    };
    Figure figure;
    figure.id = row.text(QStringLiteral("id"));
    figure.value = row.number(QStringLiteral("value"));
    figure.low = numberOr(QStringLiteral("low"), figure.value);
    figure.high = numberOr(QStringLiteral("high"), figure.value);
    figure.unit = row.text(QStringLiteral("unit"));
    figure.provenance = {row.text(QStringLiteral("source")), row.text(QStringLiteral("basis"))};
    return figure;
}
} // namespace

const CoolingFigures& CoolingFigures::shipped() {
    static const CoolingFigures figures = [] {
        CoolingFigures read(sound(Catalogue::load()));
        const ReferenceTable table = sound(ReferenceTable::load(QStringLiteral("cooling")));
        for (qsizetype index = 0; index < table.size(); ++index) {
            const Figure figure = figureOf(table.row(index));
            read.m_figures.insert(figure.id, figure);
        }
        return read;
    }();
    return figures;
}

const Figure& CoolingFigures::figure(const QString& id) const {
    const auto found = m_figures.constFind(id);
    return found == m_figures.constEnd() ? m_catalogue.figure(id) : *found;
}

} // namespace ladlework::kitchen
