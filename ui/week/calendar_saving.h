#pragma once

#include "calendar/calendar_options.h"
#include "casebook/week_ahead.h"
#include "ui/shared/screen_context.h"

class QWidget;

namespace ladlework::ui {

/// What is to be thawed as a plan goes, for a calendar.
QList<calendar::ThawMove> thawMoves(const casebook::WeekAhead& ahead,
                                    const week::WeekSolution& solution);

/// Asks for a file and saves the family's calendar of a week (by its Monday) there, with first
/// names and the stock that is to be thawed. What stands in the way, or that the week has nothing
/// for a calendar, is told at the desk. True when it was saved.
bool saveForCalendar(QWidget* parent, const ScreenContext& context,
                     const casebook::Casebook& casebook, QDate monday,
                     const QList<calendar::ThawMove>& thaws = {});

} // namespace ladlework::ui
