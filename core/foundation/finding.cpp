#include "foundation/finding.h"

#include <algorithm>

namespace ladlework {

Finding makeFinding(Finding::Severity severity, const QString& code, const QString& text,
                    const QString& field) {
    Finding made;
    made.severity = severity;
    made.code = code;
    made.text = text;
    made.field = field;
    return made;
}

QString severityId(Finding::Severity severity) {
    switch (severity) {
    case Finding::Severity::Note:
        return QStringLiteral("note");
    case Finding::Severity::Caution:
        return QStringLiteral("caution");
    case Finding::Severity::Stop:
        return QStringLiteral("stop");
    }
    return {};
}

std::optional<Finding::Severity> worstOf(const Findings& findings) {
    std::optional<Finding::Severity> worst;
    for (const Finding& finding : findings)
        worst = worst ? std::max(*worst, finding.severity) : finding.severity;
    return worst;
}

bool hasCode(const Findings& findings, QStringView code) {
    return std::ranges::any_of(findings, [code](const Finding& f) { return f.code == code; });
}

} // namespace ladlework
