#pragma once

#include <QHash>
#include <QString>

namespace ladlework::intake {

/// A table of resources/reference with one figure a row (columns `id` and `value`). A broken table
/// or an unknown id is a broken invariant (throws std::runtime_error).
class FigureTable {
public:
    explicit FigureTable(const QString& name);

    /// In the unit of its row.
    [[nodiscard]] double value(const QString& id) const;

private:
    QString m_name;
    QHash<QString, double> m_values;
};

} // namespace ladlework::intake
