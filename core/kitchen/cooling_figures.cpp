#include "kitchen/cooling_figures.h"

#include "kitchen/reference_rows.h"

namespace ladlework::kitchen {

const CoolingFigures& CoolingFigures::shipped() {
    static const CoolingFigures figures = [] {
        CoolingFigures read(valueOrThrow(Catalogue::load()));
        const ReferenceTable table = valueOrThrow(ReferenceTable::load(QStringLiteral("cooling")));
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
