#include "foundation/finding_json.h"

#include <QJsonObject>

namespace ladlework {

namespace {
QJsonValue numberOrNull(const std::optional<double>& number) {
    return number ? QJsonValue(*number) : QJsonValue(QJsonValue::Null);
}
} // namespace

QJsonArray findingsJson(const Findings& findings) {
    QJsonArray list;
    for (const Finding& finding : findings)
        list.append(QJsonObject{{QStringLiteral("severity"), severityId(finding.severity)},
                                {QStringLiteral("code"), finding.code},
                                {QStringLiteral("text"), finding.text},
                                {QStringLiteral("value"), numberOrNull(finding.value)},
                                {QStringLiteral("limit"), numberOrNull(finding.limit)},
                                {QStringLiteral("unit"), finding.unit},
                                {QStringLiteral("source"), finding.source}});
    return list;
}

} // namespace ladlework
