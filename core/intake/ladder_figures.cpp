#include "intake/ladder_figures.h"

#include "foundation/reference_table.h"

#include <QHash>
#include <stdexcept>

namespace ladlework::intake {

namespace {
QHash<QString, double> loadFigures() {
    const Result<ReferenceTable> table = ReferenceTable::load(QStringLiteral("ladder-figures"));
    if (!table)
        throw std::runtime_error(toLine(table.error()).toStdString());
    QHash<QString, double> figures;
    for (qsizetype i = 0; i < table->size(); ++i)
        figures.insert(table->row(i).text(QStringLiteral("id")),
                       table->row(i).number(QStringLiteral("value")));
    return figures;
}
} // namespace

double ladderFigure(const QString& id) {
    static const QHash<QString, double> figures = loadFigures();
    const auto found = figures.constFind(id);
    if (found == figures.cend())
        throw std::runtime_error("ladder-figures.csv has no " + id.toStdString());
    return *found;
}

} // namespace ladlework::intake
