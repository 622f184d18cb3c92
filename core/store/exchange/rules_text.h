#pragma once

#include "exchange/text_reader.h"

namespace ladlework::exchange {

/// Reads the rules of the ladder machine under `key`, each of which may be left out; `start` when
/// there is no such key.
intake::LadderRules readRules(TextReader& reader, const QString& key, intake::LadderRules start);

} // namespace ladlework::exchange
