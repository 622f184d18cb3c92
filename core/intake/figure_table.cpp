#include "intake/figure_table.h"

#include "foundation/reference_table.h"

#include <stdexcept>

namespace ladlework::intake {

FigureTable::FigureTable(const QString& name) : m_name(name) {
    const ReferenceTable table = valueOrThrow(ReferenceTable::load(name));
    for (qsizetype i = 0; i < table.size(); ++i)
        m_values.insert(table.row(i).text(QStringLiteral("id")),
                        table.row(i).number(QStringLiteral("value")));
}

double FigureTable::value(const QString& id) const {
    const auto found = m_values.constFind(id);
    if (found == m_values.cend())
        throw std::runtime_error(m_name.toStdString() + ".csv has no " + id.toStdString());
    return *found;
}

} // namespace ladlework::intake
