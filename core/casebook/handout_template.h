#pragma once

#include "foundation/id.h"
#include "foundation/result.h"

#include <QList>
#include <QString>
#include <optional>

namespace ladlework::casebook {

/// A part of the printed pages that can be left out or moved.
enum class HandoutPart {
    Cover,
    Week,
    Pots,
    Ladders,
    Shopping,
    Keeping,
    Cautions,
    OwnWords, ///< a page of the practitioner's own text
    LogSheet, ///< a blank log to fill in by hand
    JarLabels
};

QString handoutPartId(HandoutPart part); ///< "cover", "week", ..., "own-words", "log-sheet", ...
std::optional<HandoutPart> handoutPartFromId(QStringView id);

/// One part in its place.
struct HandoutSection {
    HandoutPart part = HandoutPart::Cover;
    bool shown = true;
    QString title; ///< of a page of own words
    QString words; ///< the practitioner's own text: the page itself, or what is put above the part
    friend bool operator==(const HandoutSection&, const HandoutSection&) = default;
};

/// Cover, week, pots, ladders, shopping, keeping and cautions shown; the log sheet and the labels
/// there, but not shown.
QList<HandoutSection> usualSections();

/// How pages are put together, kept under a name in the workbook.
struct HandoutTemplate {
    HandoutTemplateId id;
    QString name;
    QList<HandoutSection> sections; ///< in the order they are printed
    bool largePrint = false;
    friend bool operator==(const HandoutTemplate&, const HandoutTemplate&) = default;
};

/// A name that is not blank; every part but OwnWords at most once; the cautions shown whenever a
/// pot or a ladder is (they may not be left out of pages that tell someone what to drink).
Outcome check(const HandoutTemplate& kept);

/// A sheet of self-adhesive labels, by its measures.
struct LabelStock {
    LabelStockId id;
    QString name;
    double pageWidthMm = 215.9; ///< 50 to 500
    double pageHeightMm = 279.4;
    int columns = 2; ///< 1 to 20
    int rows = 5;
    double leftMm = 4.0; ///< from the edge of the page to the first label
    double topMm = 12.7;
    double labelWidthMm = 101.6;
    double labelHeightMm = 50.8;
    double gapAcrossMm = 4.8; ///< between labels
    double gapDownMm = 0;
    friend bool operator==(const LabelStock&, const LabelStock&) = default;
};

/// A name; counts from 1 to 20; measures not negative, labels at least 10 mm a side, and all of
/// them on the page: the sentence says which way they run over and by how much.
Outcome check(const LabelStock& stock);

} // namespace ladlework::casebook
