#pragma once

#include "casebook/family_records.h"
#include "exchange/text_reader.h"

namespace ladlework::exchange {

/// What a note or a retry of a member speaks about, under "kind" and "subject".
people::Subject readSubject(TextReader& reader);

/// What is followed of a member over time: "retries" and "observations".
void readRetries(TextReader& reader, MemberId member, casebook::FamilyRecords& records);
void readObservations(TextReader& reader, MemberId member, casebook::FamilyRecords& records);

} // namespace ladlework::exchange
