#include "ui/families/attention_reader.h"

#include "casebook/casebook.h"
#include "casebook/cookings_to_confirm.h"
#include "casebook/next_review.h"

#include <QElapsedTimer>

#include <algorithm>

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
    QElapsedTimer elapsed;
    elapsed.start();
    while (!m_waiting.isEmpty() && elapsed.elapsed() < sliceMs) {
        const FamilyId next = m_waiting.takeFirst();
        const auto found = std::ranges::find(
            m_summaries, next, [](const FamilySummary& summary) { return summary.family.id; });
        if (found != m_summaries.end())
            read(*found);
    }
    if (!m_waiting.isEmpty())
        m_timer.start();
    Q_EMIT changed();
}

void AttentionReader::read(FamilySummary& summary) const {
    const Result<casebook::FamilyRecords> records = m_context.workbook.records(summary.family.id);
    if (!records)
        return;
    const casebook::Casebook book(*records, m_context.catalogue,
                                  m_context.clock.today(records->family.zone));
    summary.known = true;
    summary.attention = book.attention();
    summary.nextReview = casebook::nextReview(*records);
    summary.openCookings.clear();
    for (const week::Placement& placement : casebook::cookingsToConfirm(book)) {
        const kitchen::Pot* pot = book.pot(placement.pot);
        summary.openCookings.append(
            {placement.day, pot != nullptr ? pot->name : tr("a pot that is gone")});
    }
}

} // namespace ladlework::ui
