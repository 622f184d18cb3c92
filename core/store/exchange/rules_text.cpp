#include "exchange/rules_text.h"

namespace ladlework::exchange {

namespace {

intake::LadderRules readInner(TextReader& reader, intake::LadderRules rules) {
    const auto take = [&reader](const char* key, int& value, int most) {
        value = reader.optionalInteger(QLatin1String(key), 0, most).value_or(value);
    };
    rules.goodShare =
        reader.optionalNumber(QStringLiteral("good_share"), 0.0, 1.0).value_or(rules.goodShare);
    take("mild_to", rules.mildTo, 10);
    take("moderate_to", rules.moderateTo, 10);
    take("strong_to", rules.strongTo, 10);
    take("days_to_advance", rules.daysToAdvance, 365);
    take("hold_days", rules.holdDays, 365);
    take("moderate_window_days", rules.moderateWindowDays, 365);
    take("stale_days", rules.staleDays, 365);
    take("rungs_back", rules.rungsBack, 20);
    take("hold_target_days", rules.holdTargetDays, 730);
    return rules;
}

} // namespace

intake::LadderRules readRules(TextReader& reader, const QString& key, intake::LadderRules start) {
    if (!reader.has(key))
        return start;
    TextReader inner(reader.object(key), reader.pathOf(key), reader.reading());
    const intake::LadderRules rules = readInner(inner, start);
    if (const Outcome finished = inner.finish(); !finished)
        reader.fail(finished.error());
    return rules;
}

} // namespace ladlework::exchange
