#pragma once

#include "ui/print/card_layout.h"

namespace ladlework::ui {

/// The letterhead in one strip: the picture at the left, the practice and the practitioner beside
/// it, how to reach them at the right, a rule below. A picture that cannot be read is left out.
QList<Strip> layOutLetterhead(const handout::Letterhead& head, const PrintStyle& style,
                              double width);

} // namespace ladlework::ui
