#include "intake/felt_items.h"

#include <QRegularExpression>
#include <algorithm>

namespace ladlework::intake {

namespace {

bool insideAName(const QString& typed, qsizetype place, const QStringList& known) {
    return std::ranges::any_of(known, [&](const QString& name) {
        if (name.isEmpty())
            return false;
        for (qsizetype start = typed.indexOf(name, 0, Qt::CaseInsensitive); start >= 0;
             start = typed.indexOf(name, start + 1, Qt::CaseInsensitive))
            if (start < place && place < start + name.size())
                return true;
        return false;
    });
}

} // namespace

QStringList feltItems(const QString& typed, const QStringList& known) {
    static const QRegularExpression border(
        QStringLiteral("[\\s,:]\\d+(?:\\s+at\\s+\\d+:\\d+|\\s+for\\s+\\d[^,;+]*?)*"
                       "(\\s*[,;+]\\s*(?:and\\s+)?|\\s+and\\s+)(?=\\p{L})"),
        QRegularExpression::CaseInsensitiveOption | QRegularExpression::UseUnicodePropertiesOption);
    QStringList items;
    qsizetype from = 0;
    for (auto found = border.globalMatch(typed); found.hasNext();) {
        const QRegularExpressionMatch match = found.next();
        if (insideAName(typed, match.capturedStart(1), known))
            continue;
        items.append(typed.mid(from, match.capturedStart(1) - from).trimmed());
        from = match.capturedEnd(1);
    }
    items.append(typed.mid(from).trimmed());
    items.removeAll(QString());
    return items;
}

FeltWords feltWords(const QString& item) {
    static const QRegularExpression pattern(QStringLiteral("^(.*?)[\\s,:]*(\\d+)?$"));
    const QRegularExpressionMatch found = pattern.match(item.trimmed());
    return {found.captured(1).trimmed(), found.captured(2)};
}

} // namespace ladlework::intake
