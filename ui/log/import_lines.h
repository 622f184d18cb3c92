#pragma once

#include "exchange/log_csv.h"

#include <QList>
#include <QString>

namespace ladlework::ui {

/// One line of a sheet and what would become of it.
struct ImportLine {
    enum class Fate { Added, AlreadyThere, Refused };
    int line = 0; ///< of the sheet, from 1
    Fate fate = Fate::Added;
    QString text;  ///< the line as it was read
    QString words; ///< what will be added, or why it is refused
    friend bool operator==(const ImportLine&, const ImportLine&) = default;
};

/// A dry run over a filled sheet: nothing is stored.
struct ImportPreview {
    QList<ImportLine> lines; ///< in the order of the sheet
    exchange::LogReport report;

    [[nodiscard]] int count(ImportLine::Fate fate) const;
};

/// Lines that were copied out of a table (separated by tabs) as commas, each on its own line still;
/// other text as it is.
QString withCommas(const QString& sheet);

/// What reading the sheet into this family's log would do. A Problem is for the sheet as a whole.
Result<ImportPreview> previewImport(const QString& sheet, const casebook::FamilyRecords& records,
                                    QDate today);

} // namespace ladlework::ui
