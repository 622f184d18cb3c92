#pragma once

#include "handout/document.h"

#include <QStringList>

namespace ladlework::handout {

/// Every text of a document in reading order, a line for each paragraph, item, cell and pair: for
/// tests, for copying and for a reader that cannot see the page. Empty cells are left out.
QStringList plainLines(const Document& document);
QStringList plainLines(const Card& card);

} // namespace ladlework::handout
