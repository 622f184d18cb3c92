#include "intake/ladder_figures.h"

#include "intake/figure_table.h"

namespace ladlework::intake {

double ladderFigure(const QString& id) {
    static const FigureTable figures(QStringLiteral("ladder-figures"));
    return figures.value(id);
}

} // namespace ladlework::intake
