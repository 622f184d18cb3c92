#pragma once

#include "handout/document.h"
#include "handout/plain_lines.h"

#include <QStringList>

namespace handout_reader {

using namespace ladlework::handout;

/// The cards of a kind, in order.
QList<Card> cardsOf(const Document& document, Card::Kind kind);
/// The first card of a kind with this title; an empty one when there is none.
Card cardTitled(const Document& document, Card::Kind kind, const QString& title);
/// All text of a card or a document as one text.
QString textOf(const Card& card);
QString textOf(const Document& document);
/// The first table of a card; an empty one when there is none.
Table tableOf(const Card& card);
/// The row whose first cell reads like this, as texts; empty when there is none.
QStringList rowOf(const Table& table, const QString& first);

/// The grade of Flesch and Kincaid: 0.39 words a sentence + 11.8 syllables a word - 15.59
/// (Kincaid, Fishburne, Rogers and Chissom 1975). Syllables are counted as groups of vowels, a
/// silent e at the end left out; numbers count as one syllable. Each line is at least a sentence.
double fleschKincaidGrade(const QStringList& lines);

} // namespace handout_reader
