#pragma once

#include "handout/document.h"

#include <QStringList>

namespace ladlework::ui {

/// An invented handout with every kind of block: `members` ladder cards and `pots` pot cards.
handout::Document sampleDocument(int members, int pots);

/// Every text of the document, block by block and cell by cell, without empty ones.
QStringList textsOf(const handout::Document& document);

} // namespace ladlework::ui
