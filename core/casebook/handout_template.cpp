#include "casebook/handout_template.h"

#include "foundation/name.h"

#include <QCoreApplication>
#include <QLocale>
#include <QSet>
#include <algorithm>
#include <array>
#include <cmath>

namespace ladlework::casebook {

namespace {
struct Words {
    Q_DECLARE_TR_FUNCTIONS(HandoutTemplate)
};

constexpr std::array allParts{HandoutPart::Cover,    HandoutPart::Week,     HandoutPart::Pots,
                              HandoutPart::Ladders,  HandoutPart::Shopping, HandoutPart::Keeping,
                              HandoutPart::Cautions, HandoutPart::OwnWords, HandoutPart::LogSheet,
                              HandoutPart::JarLabels};

constexpr double leastPageMm = 50;
constexpr double mostPageMm = 500;
constexpr double leastLabelMm = 10;
constexpr int mostLabels = 20;
/// Measures are given to the tenth of a millimetre, also those that were inches.
constexpr double roundingMm = 0.1;

auto bad(const QString& sentence, const QString& place) {
    return problem(Problem::Kind::BadInput, sentence, place);
}

bool isShown(const HandoutTemplate& kept, HandoutPart part) {
    return std::ranges::any_of(kept.sections, [part](const HandoutSection& section) {
        return section.part == part && section.shown;
    });
}

/// True also keeps a not-a-number out.
bool within(double value, double least, double most) {
    return value >= least && value <= most;
}

Outcome checkCounts(const LabelStock& stock) {
    if (stock.columns < 1 || stock.columns > mostLabels)
        return bad(Words::tr("A sheet has 1 to %1 labels side by side.").arg(mostLabels),
                   QStringLiteral("columns"));
    if (stock.rows < 1 || stock.rows > mostLabels)
        return bad(Words::tr("A sheet has 1 to %1 labels one below the other.").arg(mostLabels),
                   QStringLiteral("rows"));
    return {};
}

Outcome checkMeasures(const LabelStock& stock) {
    struct Measure {
        double value;
        QString place;
    };
    for (const Measure& page : {Measure{stock.pageWidthMm, QStringLiteral("pageWidth")},
                                Measure{stock.pageHeightMm, QStringLiteral("pageHeight")}})
        if (!within(page.value, leastPageMm, mostPageMm))
            return bad(Words::tr("A side of the sheet must be %1 to %2 mm long.")
                           .arg(leastPageMm)
                           .arg(mostPageMm),
                       page.place);
    for (const Measure& label : {Measure{stock.labelWidthMm, QStringLiteral("labelWidth")},
                                 Measure{stock.labelHeightMm, QStringLiteral("labelHeight")}})
        if (!within(label.value, leastLabelMm, mostPageMm))
            return bad(Words::tr("A side of a label must be at least %1 mm long: less holds no "
                                 "word.")
                           .arg(leastLabelMm),
                       label.place);
    for (const Measure& gap : {Measure{stock.leftMm, QStringLiteral("left")},
                               Measure{stock.topMm, QStringLiteral("top")},
                               Measure{stock.gapAcrossMm, QStringLiteral("gapAcross")},
                               Measure{stock.gapDownMm, QStringLiteral("gapDown")}})
        if (!within(gap.value, 0, mostPageMm))
            return bad(Words::tr("Margins and gaps of a label sheet cannot be less than nothing."),
                       gap.place);
    return {};
}

QString millimetres(double length) {
    return QLocale().toString(length, 'f', 1);
}

Outcome checkFit(const LabelStock& stock) {
    const double right =
        stock.leftMm + stock.columns * stock.labelWidthMm + (stock.columns - 1) * stock.gapAcrossMm;
    if (const double over = right - stock.pageWidthMm; over > roundingMm)
        return bad(Words::tr("The labels run over the right edge of the sheet by %1 mm; make them "
                             "narrower, the gaps smaller, or take a column away.")
                       .arg(millimetres(over)),
                   QStringLiteral("columns"));
    const double bottom =
        stock.topMm + stock.rows * stock.labelHeightMm + (stock.rows - 1) * stock.gapDownMm;
    if (const double over = bottom - stock.pageHeightMm; over > roundingMm)
        return bad(Words::tr("The labels run over the lower edge of the sheet by %1 mm; make them "
                             "lower, the gaps smaller, or take a row away.")
                       .arg(millimetres(over)),
                   QStringLiteral("rows"));
    return {};
}
} // namespace

QString handoutPartId(HandoutPart part) {
    switch (part) {
    case HandoutPart::Cover:
        return QStringLiteral("cover");
    case HandoutPart::Week:
        return QStringLiteral("week");
    case HandoutPart::Pots:
        return QStringLiteral("pots");
    case HandoutPart::Ladders:
        return QStringLiteral("ladders");
    case HandoutPart::Shopping:
        return QStringLiteral("shopping");
    case HandoutPart::Keeping:
        return QStringLiteral("keeping");
    case HandoutPart::Cautions:
        return QStringLiteral("cautions");
    case HandoutPart::OwnWords:
        return QStringLiteral("own-words");
    case HandoutPart::LogSheet:
        return QStringLiteral("log-sheet");
    case HandoutPart::JarLabels:
        return QStringLiteral("jar-labels");
    }
    return {};
}

std::optional<HandoutPart> handoutPartFromId(QStringView id) {
    const auto found = std::ranges::find_if(
        allParts, [id](HandoutPart part) { return id == handoutPartId(part); });
    if (found == allParts.end())
        return std::nullopt;
    return *found;
}

QList<HandoutSection> usualSections() {
    QList<HandoutSection> sections;
    for (const HandoutPart part :
         {HandoutPart::Cover, HandoutPart::Week, HandoutPart::Pots, HandoutPart::Ladders,
          HandoutPart::Shopping, HandoutPart::Keeping, HandoutPart::Cautions})
        sections.append({part, true, {}, {}});
    sections.append({HandoutPart::LogSheet, false, {}, {}});
    sections.append({HandoutPart::JarLabels, false, {}, {}});
    return sections;
}

Outcome check(const HandoutTemplate& kept) {
    if (const Result<Name> name = Name::from(kept.name, Words::tr("template")); !name)
        return bad(name.error().sentence, QStringLiteral("name"));
    QSet<HandoutPart> seen;
    for (qsizetype index = 0; index < kept.sections.size(); ++index) {
        const HandoutPart part = kept.sections[index].part;
        if (part == HandoutPart::OwnWords)
            continue;
        if (seen.contains(part))
            return bad(Words::tr("The same part stands twice in the pages; take one of the two "
                                 "away."),
                       QStringLiteral("sections[%1]").arg(index));
        seen.insert(part);
    }
    const bool tellsWhatToDrink =
        isShown(kept, HandoutPart::Pots) || isShown(kept, HandoutPart::Ladders);
    if (tellsWhatToDrink && !isShown(kept, HandoutPart::Cautions))
        return bad(Words::tr("Pages that say what to cook or to drink hold the cautions too; show "
                             "them, or leave the pots and the ladders out as well."),
                   QStringLiteral("sections"));
    return {};
}

Outcome check(const LabelStock& stock) {
    if (const Result<Name> name = Name::from(stock.name, Words::tr("label sheet")); !name)
        return bad(name.error().sentence, QStringLiteral("name"));
    for (const auto checkPart : {checkCounts, checkMeasures, checkFit})
        if (const Outcome checked = checkPart(stock); !checked)
            return checked;
    return {};
}

} // namespace ladlework::casebook
