#pragma once

#include "casebook/family_needs.h"
#include "foundation/finding.h"
#include "people/family.h"
#include "ui/shared/screen_context.h"

#include <QHash>
#include <QList>
#include <QObject>
#include <QTimer>

namespace ladlework::ui {

using casebook::OpenCooking;

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

/// Keeps a summary of every family. Names are there at once; the rest follows while the window
/// stays alive: excerpts of all families in one reading, and their needs a few milliseconds at a
/// time. A family that was changed, or whose excerpt does not tell, is read whole.
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
    void read(FamilySummary& summary);
    [[nodiscard]] std::optional<casebook::FamilyNeeds> needsOf(const people::Family& family);

    const ScreenContext& m_context;
    QList<FamilySummary> m_summaries;
    QList<FamilyId> m_waiting;
    bool m_excerptsWanted = false;
    QHash<FamilyId, casebook::FamilyExcerpt> m_excerpts; ///< of families that wait
    QTimer m_timer;
};

} // namespace ladlework::ui
