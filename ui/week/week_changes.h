#pragma once

#include "casebook/casebook.h"
#include "ui/shared/screen_context.h"
#include "week/week_plan.h"
#include "week/week_template.h"

#include <memory>
#include <optional>

class QWidget;

namespace ladlework::ui {

/// What a person changes in one week by hand, each one step that can be undone, with its sentence.
class WeekChanges final {
public:
    /// Problems are told in front of `screen`.
    WeekChanges(const ScreenContext& context, QWidget* screen)
        : m_context(context), m_screen(screen) {}

    void setWeek(std::shared_ptr<const casebook::Casebook> casebook, QDate monday);
    /// As it is stored; an empty one when none is.
    [[nodiscard]] week::WeekPlan plan() const;

    // Those that return a placement return the one to be chosen afterwards; nothing when nothing
    // was changed.
    std::optional<week::Placement> put(PotId pot, QDate day);
    std::optional<week::Placement> move(qsizetype placement, QDate day);
    std::optional<week::Placement> setStart(qsizetype placement, QTime start);
    bool takeOff(qsizetype placement);
    void copyLast();
    void use(const week::WeekTemplate& kept);
    void lock(QDate day, bool locked);
    void setHours(QDate day, const QList<week::FreeHours>& hours);
    void setUsualHours(QDate day);
    /// What the planner found; nothing is written when that is what is planned already.
    void takePlanned(const week::WeekPlan& planned);

private:
    [[nodiscard]] bool has(qsizetype placement) const;
    [[nodiscard]] QString potName(PotId pot) const;
    [[nodiscard]] QString monday() const;
    bool save(const week::WeekPlan& changed, const QString& sentence);

    const ScreenContext& m_context;
    QWidget* m_screen;
    std::shared_ptr<const casebook::Casebook> m_casebook;
    QDate m_monday;
};

} // namespace ladlework::ui
