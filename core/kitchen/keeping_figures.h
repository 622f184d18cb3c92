#pragma once

#include "kitchen/catalogue.h"
#include "quantity/length.h"
#include "quantity/temperature.h"

#include <QHash>
#include <QString>
#include <QStringList>

namespace ladlework::kitchen {

/// The figures of resources/reference/keeping.csv. An unknown id or a unit that does not fit the
/// question is a broken invariant (throws).
class KeepingFigures {
public:
    /// Reads the shipped table once.
    static const KeepingFigures& shipped();

    [[nodiscard]] quantity::Temperature temperature(const QString& id) const;
    [[nodiscard]] quantity::Length length(const QString& id) const;
    /// Hours, days or months, whichever the row is in.
    [[nodiscard]] int count(const QString& id) const;
    [[nodiscard]] const Provenance& provenance(const QString& id) const;
    /// The sources of all rows as they are printed, each once, in the order of the table.
    [[nodiscard]] const QStringList& sources() const { return m_sources; }

private:
    struct Row {
        double value = 0;
        QString unit;
        Provenance provenance;
    };
    [[nodiscard]] const Row& row(const QString& id) const;
    [[nodiscard]] const Row& row(const QString& id, const QStringList& units) const;

    QHash<QString, Row> m_rows;
    QStringList m_sources;
};

} // namespace ladlework::kitchen
