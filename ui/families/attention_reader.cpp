#include "ui/families/attention_reader.h"

#include <QElapsedTimer>

#include <algorithm>
#include <utility>

namespace ladlework::ui {

namespace {
/// Half a frame: the window still answers in the same frame.
constexpr qint64 sliceMs = 8;
} // namespace

AttentionReader::AttentionReader(const ScreenContext& context, QObject* parent)
    : QObject(parent), m_context(context) {
    m_timer.setInterval(0);
    connect(&m_timer, &QTimer::timeout, this, &AttentionReader::readSome);
    refreshAll();
}

const FamilySummary* AttentionReader::summary(FamilyId family) const {
    const auto found = std::ranges::find(
        m_summaries, family, [](const FamilySummary& summary) { return summary.family.id; });
    return found == m_summaries.end() ? nullptr : &*found;
}

void AttentionReader::refresh(FamilyId changed) {
    readFamilies();
    if (changed.isStored() && summary(changed) != nullptr) {
        m_waiting.removeAll(changed);
        m_waiting.prepend(changed);
        m_excerpts.remove(changed);
    }
    if (!m_waiting.isEmpty())
        m_timer.start();
    Q_EMIT this->changed();
}

void AttentionReader::refreshAll() {
    readFamilies();
    m_waiting.clear();
    for (const FamilySummary& summary : m_summaries)
        m_waiting.append(summary.family.id);
    m_excerpts.clear();
    m_excerptsWanted = !m_waiting.isEmpty();
    if (!m_waiting.isEmpty())
        m_timer.start();
    Q_EMIT changed();
}

void AttentionReader::readFamilies() {
    QHash<FamilyId, FamilySummary> earlier;
    for (const FamilySummary& summary : std::as_const(m_summaries))
        earlier.insert(summary.family.id, summary);
    m_summaries.clear();
    for (const people::Family& family : m_context.workbook.families().families()) {
        FamilySummary summary = earlier.take(family.id);
        summary.family = family;
        if (!summary.known && !m_waiting.contains(family.id))
            m_waiting.append(family.id);
        m_summaries.append(std::move(summary));
    }
    for (auto gone = earlier.keyBegin(); gone != earlier.keyEnd(); ++gone)
        m_waiting.removeAll(*gone);
}

void AttentionReader::readSome() {
    // Stopped before reading: a disk that fails must not be asked again on every turn.
    m_timer.stop();
    // Not wanted any more when it fails: then each family is read whole at the next refresh.
    if (std::exchange(m_excerptsWanted, false))
        m_excerpts = m_context.workbook.excerpts();
    QElapsedTimer elapsed;
    elapsed.start();
    while (!m_waiting.isEmpty() && elapsed.elapsed() < sliceMs) {
        const FamilyId next = m_waiting.takeFirst();
        const auto found = std::ranges::find(
            m_summaries, next, [](const FamilySummary& summary) { return summary.family.id; });
        if (found != m_summaries.end())
            read(*found);
    }
    if (m_waiting.isEmpty())
        m_excerpts.clear();
    else
        m_timer.start();
    Q_EMIT changed();
}

void AttentionReader::read(FamilySummary& summary) {
    std::optional<casebook::FamilyNeeds> needs = needsOf(summary.family);
    if (!needs)
        return;
    summary.known = true;
    summary.attention = std::move(needs->attention);
    summary.nextReview = needs->nextReview;
    summary.openCookings = std::move(needs->openCookings);
}

std::optional<casebook::FamilyNeeds> AttentionReader::needsOf(const people::Family& family) {
    const QDate today = m_context.clock.today(family.zone);
    if (m_excerpts.contains(family.id))
        if (auto needs = casebook::needsOf(m_excerpts.take(family.id), m_context.catalogue, today))
            return needs;
    Result<casebook::FamilyRecords> records = m_context.workbook.records(family.id);
    if (!records)
        return std::nullopt;
    return casebook::needsOf(casebook::Casebook(*std::move(records), m_context.catalogue, today));
}

} // namespace ladlework::ui
