#pragma once

#include "kitchen/catalogue.h"

#include <QHash>
#include <QString>

namespace ladlework::kitchen {

/// The figures of resources/reference/cooling.csv, and those of the catalogue that cooling needs.
class CoolingFigures {
public:
    /// Reads the shipped tables once; broken ones are a broken invariant (throws).
    static const CoolingFigures& shipped();

    /// A figure of cooling.csv, else of figures.csv; an unknown id is a broken invariant (throws).
    [[nodiscard]] const Figure& figure(const QString& id) const;
    [[nodiscard]] double value(const QString& id) const { return figure(id).value; }
    [[nodiscard]] const Catalogue& catalogue() const { return m_catalogue; }

private:
    explicit CoolingFigures(Catalogue catalogue) : m_catalogue(std::move(catalogue)) {}

    Catalogue m_catalogue;
    QHash<QString, Figure> m_figures;
};

} // namespace ladlework::kitchen
