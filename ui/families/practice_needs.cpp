#include "ui/families/attention_reader.h"
#include "ui/families/practice_today.h"

#include <QLocale>

#include <algorithm>

namespace ladlework::ui {

namespace {

constexpr int daysAhead = 7;

QString dayWords(QDate day) {
    return QLocale().toString(day, QStringLiteral("ddd d MMM"));
}

/// Where a finding is dealt with.
QString screenFor(const Finding& finding) {
    if (finding.code == u"no-entry" || finding.code == u"red-flag")
        return QStringLiteral("log");
    if (finding.code == u"ladder-stopped" || finding.code == u"ladder-stuck" ||
        finding.code == u"target-reached" || finding.code.startsWith(u"weight-"))
        return QStringLiteral("progress");
    if (finding.code.startsWith(u"retry-") || finding.code == u"target-held")
        return QStringLiteral("members");
    if (finding.code == u"review-due")
        return QStringLiteral("notes");
    return QStringLiteral("today");
}

template <class Key>
void sortBy(QList<std::pair<Key, Need>>& keyed, QList<Need>& needs) {
    std::ranges::stable_sort(keyed, {}, &std::pair<Key, Need>::first);
    for (const auto& [key, need] : keyed)
        needs.append(need);
}

} // namespace

QList<Need> needsNow(const AttentionReader& reader) {
    QList<Need> needs;
    for (const FamilySummary& summary : reader.summaries()) {
        for (const Finding& finding : summary.attention) {
            needs.append({summary.family.id,
                          summary.family.name,
                          finding.severity,
                          {},
                          finding.text,
                          screenFor(finding)});
        }
    }
    // A family's needs stay together, at the place of its worst.
    QHash<FamilyId, int> worst;
    for (const FamilySummary& summary : reader.summaries()) {
        if (summary.worst())
            worst.insert(summary.family.id, static_cast<int>(*summary.worst()));
    }
    std::ranges::stable_sort(needs, [&](const Need& a, const Need& b) {
        return worst.value(a.family) > worst.value(b.family);
    });
    return needs;
}

QList<Need> reviewsToCome(const AttentionReader& reader, QDate today) {
    QList<std::pair<QDate, Need>> keyed;
    for (const FamilySummary& summary : reader.summaries()) {
        const QDate day = summary.nextReview;
        if (summary.family.status == people::Family::Status::Finished || !day.isValid() ||
            day <= today || day > today.addDays(daysAhead))
            continue;
        keyed.append({day,
                      {summary.family.id, summary.family.name, std::nullopt, dayWords(day),
                       PracticeToday::tr("Review"), QStringLiteral("notes")}});
    }
    QList<Need> needs;
    sortBy(keyed, needs);
    return needs;
}

QList<Need> cookingsToRecord(const AttentionReader& reader) {
    QList<std::pair<QDate, Need>> keyed;
    for (const FamilySummary& summary : reader.summaries()) {
        if (summary.family.status != people::Family::Status::Active)
            continue;
        for (const OpenCooking& cooking : summary.openCookings) {
            keyed.append({cooking.day,
                          {summary.family.id, summary.family.name, std::nullopt,
                           dayWords(cooking.day), cooking.pot, QStringLiteral("week")}});
        }
    }
    QList<Need> needs;
    sortBy(keyed, needs);
    return needs;
}

} // namespace ladlework::ui
