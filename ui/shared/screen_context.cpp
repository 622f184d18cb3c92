#include "ui/shared/screen_context.h"

namespace ladlework::ui {

bool ScreenContext::act(QWidget* parent, const QString& sentence,
                        const std::function<Outcome(store::Action&)>& work) const {
    // The workbook lets nothing through that breaks: it comes as a Problem, and only before the
    // save.
    const Outcome outcome = workbook.act(sentence, work);
    if (!outcome)
        desk.tell(parent, outcome.error().sentence);
    return outcome.has_value();
}

} // namespace ladlework::ui
