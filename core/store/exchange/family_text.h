#pragma once

#include "casebook/family_records.h"
#include "exchange/text_reader.h"
#include "foundation/clock.h"

#include <QJsonObject>

namespace ladlework::exchange {

/// What one family's file is read into: the records, and the keys that its log may use.
struct FamilyText {
    casebook::FamilyRecords records; ///< ids are provisional
    Keys members;
    Keys vessels;
    Keys containers;
    Keys pots;
    Keys lots;

    /// Begins with the practice's pots, which a family's weeks, batches and log may name.
    FamilyText(const QList<kitchen::Pot>& practicePots, Keys practicePotKeys);
};

/// Reads the pots under "pots" of any object, with keys; `own` holds the vessels and containers to
/// choose from and may be nullptr when there are none. Cooked bones in a meat stock are a
/// problem: that is another brew.
QList<kitchen::Pot> readPots(TextReader& reader, Keys& keys, const FamilyText* own);

/// "us" or "metric"; "letter" or "a4"; a time zone such as "Europe/Dublin".
quantity::MeasureSystem readMeasures(TextReader& reader, const QString& key);
people::Paper readPaper(TextReader& reader, const QString& key);
QTimeZone readZone(TextReader& reader, const QString& key);

/// Reads one family (its head, members, vessels, pots, batches, weeks and notes) into `family`.
Outcome readFamilyText(const QJsonObject& object, const Reading& reading, const Clock& clock,
                       FamilyText& family);

/// The parts of a family's file, each in its own source file.
void readMembers(TextReader& reader, FamilyText& family);
void readKitchen(TextReader& reader, FamilyText& family);

} // namespace ladlework::exchange
