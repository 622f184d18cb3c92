#pragma once

#include "exchange/practice_text.h"
#include "exchange/text_reader.h"

namespace ladlework::exchange {

/// What the practice sets for all families: "house_rules", "ladder_templates", "symptoms" and
/// "prices".
void readHouse(TextReader& reader, PracticeText& text);

} // namespace ladlework::exchange
