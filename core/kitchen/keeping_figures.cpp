#include "kitchen/keeping_figures.h"

#include "kitchen/reference_rows.h"

#include <cmath>
#include <stdexcept>

namespace ladlework::kitchen {

const KeepingFigures& KeepingFigures::shipped() {
    static const KeepingFigures figures = [] {
        const ReferenceTable table = valueOrThrow(ReferenceTable::load(QStringLiteral("keeping")));
        KeepingFigures read;
        for (qsizetype index = 0; index < table.size(); ++index) {
            const ReferenceTable::Row row = table.row(index);
            read.m_rows.insert(row.text(QStringLiteral("id")),
                               {row.number(QStringLiteral("value")),
                                row.text(QStringLiteral("unit")), provenanceOf(row)});
            const QString& cite = row.text(QStringLiteral("cite"));
            if (!read.m_sources.contains(cite))
                read.m_sources.append(cite);
        }
        return read;
    }();
    return figures;
}

const KeepingFigures::Row& KeepingFigures::row(const QString& id) const {
    const auto found = m_rows.constFind(id);
    if (found == m_rows.constEnd())
        throw std::runtime_error("keeping.csv: no row " + id.toStdString());
    return *found;
}

const KeepingFigures::Row& KeepingFigures::row(const QString& id, const QStringList& units) const {
    const Row& found = row(id);
    if (!units.contains(found.unit))
        throw std::runtime_error("keeping.csv: another unit is asked of " + id.toStdString());
    return found;
}

const Provenance& KeepingFigures::provenance(const QString& id) const {
    return row(id).provenance;
}

quantity::Temperature KeepingFigures::temperature(const QString& id) const {
    return quantity::Temperature::fromFahrenheit(row(id, {QStringLiteral("F")}).value);
}

quantity::Length KeepingFigures::length(const QString& id) const {
    return quantity::Length::fromInches(row(id, {QStringLiteral("in")}).value);
}

int KeepingFigures::count(const QString& id) const {
    return static_cast<int>(std::lround(
        row(id, {QStringLiteral("h"), QStringLiteral("day"), QStringLiteral("month")}).value));
}

} // namespace ladlework::kitchen
