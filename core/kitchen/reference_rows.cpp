#include "kitchen/reference_rows.h"

namespace ladlework::kitchen {

Provenance provenanceOf(const ReferenceTable::Row& row) {
    return {row.text(QStringLiteral("source")), row.text(QStringLiteral("basis"))};
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
    figure.provenance = provenanceOf(row);
    return figure;
}

} // namespace ladlework::kitchen
