#pragma once

#include "foundation/finding.h"
#include "people/family.h"
#include "ui/shared/screen_context.h"
#include "week/week_plan.h"

#include <QHash>
#include <QList>
#include <QObject>
#include <QTimer>

namespace ladlework::ui {

/// A cooking that was planned and of which nothing was recorded.
struct OpenCooking {
    QDate day;
    QString pot;
};

/// What the practitioner wants to know of a family without opening it.
struct FamilySummary {
    people::Family family;
    bool known = false; ///< false until its records have been read
    Findings attention; ///< worst first
    QDate nextReview;   ///< null when none is set
    QList<OpenCooking> openCookings;

    /// The worst severity of the attention; nothing while unknown or all is well.
    [[nodiscard]] std::optional<Finding::Severity> worst() const { return worstOf(attention); }
};

/// Keeps a summary of every family. Names are there at once; what needs a family's whole records
/// is read a few milliseconds at a time while the window stays alive.
class AttentionReader final : public QObject {
    Q_OBJECT
public:
    AttentionReader(const ScreenContext& context, QObject* parent);

    /// All families, by name.
    [[nodiscard]] const QList<FamilySummary>& summaries() const { return m_summaries; }
    /// nullptr when there is no such family.
    [[nodiscard]] const FamilySummary* summary(FamilyId family) const;
    /// True when every summary is known and up to date.
    [[nodiscard]] bool isFinished() const { return m_waiting.isEmpty(); }

    /// Reads the list of families again, and the records of new ones and of `changed`.
    void refresh(FamilyId changed);
    /// Reads everything again: another day, other phases, an action undone.
    void refreshAll();

Q_SIGNALS:
    /// Families came, went or were renamed, or some summaries are newer.
    void changed();

private:
    void readFamilies();
    void readSome();
    void read(FamilySummary& summary) const;

    const ScreenContext& m_context;
    QList<FamilySummary> m_summaries;
    QList<FamilyId> m_waiting;
    QTimer m_timer;
};

} // namespace ladlework::ui
