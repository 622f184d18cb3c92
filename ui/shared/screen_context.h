#pragma once

#include "foundation/clock.h"
#include "kitchen/catalogue.h"
#include "store/workbook.h"
#include "ui/shared/desk.h"

#include <functional>

namespace ladlework::ui {

/// What every screen works with. All of it outlives the screens.
struct ScreenContext {
    store::Workbook& workbook;
    const kitchen::Catalogue& catalogue;
    const Clock& clock;
    Desk& desk;

    /// Workbook::act(), with a Problem told at the desk. True when it was done.
    bool act(QWidget* parent, const QString& sentence,
             const std::function<Outcome(store::Action&)>& work) const;
};

} // namespace ladlework::ui
