#pragma once

#include "casebook/called_name.h"
#include "casebook/casebook.h"
#include "handout/document.h"

#include <QDate>
#include <optional>

namespace ladlework::handout {

using casebook::calledName;
using casebook::Names;

/// What the sheets of jar labels hold.
struct JarLabelChoice {
    std::optional<casebook::LabelStock> stock; ///< else labelStockFor()
    quantity::Volume jar;                      ///< what a jar is filled with; 0: usualJar()
    bool planned = true; ///< a label for each jar that the pots of the week are expected to fill
    bool onHand = false; ///< a label for each lot that is kept now
    int placesUsed = 0;  ///< labels gone from the first sheet; 0 to 399
    friend bool operator==(const JarLabelChoice&, const JarLabelChoice&) = default;
};

struct HandoutOptions {
    QDate week; ///< its Monday
    Names names = Names::First;
    std::optional<people::Paper> paper; ///< else the family's
    bool largePrint = false;
    QString language; ///< "en", "es"; when empty the family's
    /// What is printed, in this order, and the practitioner's own text.
    QList<casebook::HandoutSection> sections = casebook::usualSections();
    JarLabelChoice labels;
};

/// The pages for one family and one week: letterhead and cover, week grid, a card per pot with
/// clock times, a ladder card per member with boxes to tick, shopping list, cooling and keeping,
/// cautions and whom to call, pages of the practitioner's own words, a blank log, jar labels: those
/// that are shown, in their order (see printedSections()). A part that has nothing to say this week
/// (pots without a pot) gives no card, and its own words go with it. All of it
/// in the language chosen, with its dates and decimals (page_language.h), except what people typed;
/// a language that is not shipped gives English. To be called on the application's thread.
Document familyHandout(const casebook::Casebook& casebook, const HandoutOptions& options);

/// The sections that are printed: those shown, and the cautions at the end when they are not among
/// them though a pot or a ladder is.
QList<casebook::HandoutSection> printedSections(const QList<casebook::HandoutSection>& sections);
/// True when a pot or a ladder is shown, so that the cautions may not be left out.
bool needsCautions(const QList<casebook::HandoutSection>& sections);

/// The own text of a part in a list of sections; `part` is put at the end when it is not there.
QString& ownWordsOf(QList<casebook::HandoutSection>& sections, casebook::HandoutPart part);

/// The labels that a family's handout is printed on when none are chosen: the first of the
/// practice, else sheets of the family's paper in a usual size.
casebook::LabelStock labelStockFor(const casebook::FamilyRecords& records);
/// The sizes of labels that are common for a paper, to begin with.
casebook::LabelStock usualLabelStock(people::Paper paper);
/// A quart or a litre, as the family measures.
quantity::Volume usualJar(quantity::MeasureSystem measures);

} // namespace ladlework::handout
