#pragma once

#include "app/outside.h"
#include "casebook/called_name.h"
#include "casebook/family_records.h"
#include "store/workbook.h"

#include <QByteArray>
#include <QJsonObject>
#include <QMap>
#include <QStringList>
#include <memory>
#include <optional>

namespace ladlework::app {

/// What a command says when it has run: its output, and a problem when the output describes one.
struct Answer {
    QJsonObject json;
    std::optional<Problem> problem;
};

/// The words after a command, taken apart.
class Words {
public:
    /// `options` are names such as "family"; those that end in "!" are switches without a value.
    /// BadInput for an unknown option, one without its value or given twice, for an empty word, or
    /// for fewer or more than `positional` other words. The sentence ends with the usage line.
    static Result<Words> from(const QStringList& arguments, qsizetype positional,
                              const QStringList& options, const QString& usage);

    [[nodiscard]] QString at(qsizetype index) const { return m_positional.value(index); }
    [[nodiscard]] bool has(const QString& option) const { return m_values.contains(option); }
    [[nodiscard]] QString value(const QString& option) const { return m_values.value(option); }
    /// The value of an option that must be there.
    [[nodiscard]] Result<QString> needed(const QString& option) const;
    /// The whole number given with an option, or `otherwise` without it.
    [[nodiscard]] Result<qint64> number(const QString& option, qint64 otherwise, qint64 least,
                                        qint64 most) const;
    /// The day that must be given with an option, at most ten years before `today` and one after: a
    /// year mistyped would otherwise be played through day by day.
    [[nodiscard]] Result<QDate> neededDay(const QString& option, QDate today) const;

private:
    QStringList m_positional;
    QMap<QString, QString> m_values;
    QString m_usage;
};

/// One command of the program.
struct Command {
    QString name;
    QString usage;  ///< the words after "ladlework "
    QString detail; ///< what --help says below the usage
    Result<Answer> (*run)(const Words& words, const Outside& outside);
    qsizetype positional = 1;
    QStringList options;
};

/// All commands there are, in the order of the help.
const QList<Command>& commands();

// The commands, each in its own source file.
Result<Answer> runSample(const Words& words, const Outside& outside);
Result<Answer> runReckon(const Words& words, const Outside& outside);
Result<Answer> runHandout(const Words& words, const Outside& outside);
Result<Answer> runImport(const Words& words, const Outside& outside);
Result<Answer> runExport(const Words& words, const Outside& outside);
Result<Answer> runVerify(const Words& words, const Outside& outside);

// What several commands do.

/// The problem with the file in front of its place, unless it names the file already.
tl::unexpected<Problem> inFile(const QString& path, Problem problem);
/// The bytes of an input file; NotFound when there is none.
Result<QByteArray> readInput(const QString& path);
/// BadInput when the folder that a file is to be written to does not exist.
Outcome checkFolder(const QString& path);
/// The same, and Refused when the file is the workbook itself, under whatever name.
Outcome checkTarget(const QString& out, const QString& workbook);
/// BadInput at the option.
tl::unexpected<Problem> badOption(const QString& option, const QString& mustBe);
/// How people are named, as --names says; first names without it.
Result<casebook::Names> namesFrom(const Words& words);
/// The one family with this name (case does not matter).
Result<FamilyId> familyNamed(store::Workbook& workbook, const QString& name);
/// Opens a workbook that must exist.
Result<std::unique_ptr<store::Workbook>> openWorkbook(const QString& path, store::Opening opening,
                                                      const Outside& outside);
/// The workbook that is the first word, open, and the records of the family given with --family
/// (case does not matter).
struct OpenFamily {
    std::unique_ptr<store::Workbook> workbook;
    casebook::FamilyRecords records;
};
Result<OpenFamily> openFamily(const Words& words, store::Opening opening, const Outside& outside);

} // namespace ladlework::app
