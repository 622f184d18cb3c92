#pragma once

#include "foundation/result.h"

#include <QHash>
#include <QString>
#include <QStringList>
#include <vector>

namespace ladlework {

/// A table of resources/reference: RFC 4180 CSV with a header line; lines that start with # are
/// remarks. Every table has the columns `source` and `basis`.
class ReferenceTable {
public:
    /// One line of the table, read by column name.
    class Row {
    public:
        Row(const ReferenceTable& table, qsizetype index) : m_table(table), m_index(index) {}
        /// The text of a cell; an unknown column is a broken invariant (throws).
        [[nodiscard]] const QString& text(const QString& column) const;
        /// The number of a cell; text that is no number is a broken invariant (throws
        /// std::runtime_error naming file, line and column). The shipped tables are tested.
        [[nodiscard]] double number(const QString& column) const;
        /// True for "yes", false for "no"; any other text is a broken invariant (throws as number).
        [[nodiscard]] bool flag(const QString& column) const;

        /// "source (basis)": how what the row says is cited.
        [[nodiscard]] QString cited() const;

    private:
        [[noreturn]] void broken(const QString& column, const QString& wanted) const;

        const ReferenceTable& m_table;
        qsizetype m_index;
    };

    /// Reads ":/reference/<name>.csv". A missing or ragged table, or one without the columns
    /// `source` and `basis`, is a Damaged problem that names the file and the line.
    static Result<ReferenceTable> load(const QString& name);

    [[nodiscard]] qsizetype size() const { return static_cast<qsizetype>(m_rows.size()); }
    [[nodiscard]] Row row(qsizetype index) const { return {*this, index}; }
    [[nodiscard]] const QString& name() const { return m_name; }

private:
    friend class Row;
    QString m_name;
    QHash<QString, qsizetype> m_columns;
    std::vector<QStringList> m_rows;
    std::vector<int> m_lines;
};

} // namespace ladlework
