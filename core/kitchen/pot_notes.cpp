#include "kitchen/pot_notes.h"

#include "kitchen/keeping.h"
#include "kitchen/keeping_figures.h"

#include <QCoreApplication>
#include <QLocale>
#include <algorithm>

namespace ladlework::kitchen {

namespace {
/// The translation context of the sentences below.
struct Say {
    Q_DECLARE_TR_FUNCTIONS(PotNotes)
};

Finding note(const QString& code, const QString& text, const QString& field) {
    return makeFinding(Finding::Severity::Note, code, text, field);
}

QString rawName(CookClass cookClass) {
    switch (cookClass) {
    case CookClass::Poultry:
        return Say::tr("Raw poultry");
    case CookClass::LandAnimal:
        return Say::tr("Raw meat");
    case CookClass::Fish:
        break;
    }
    return Say::tr("Raw fish");
}

Finding rawNote(CookClass cookClass, qsizetype index) {
    const RawKeeping keeping = rawKeeping(cookClass);
    Finding finding = note(
        QStringLiteral("raw-") + cookClassId(cookClass),
        Say::tr("%1 keeps %2 to %3 days in the refrigerator before it is cooked. Keep it apart "
                "from food that is ready to eat, and wash hands, board and knife after "
                "touching it.")
            .arg(rawName(cookClass), QLocale().toString(keeping.leastDays),
                 QLocale().toString(keeping.mostDays)),
        QStringLiteral("cuts[%1]").arg(index));
    finding.limit = keeping.leastDays;
    finding.unit = QStringLiteral("days");
    finding.source = cited(keeping.provenance);
    return finding;
}
} // namespace

Findings standingNotes(const Pot& pot, const Catalogue& catalogue) {
    Findings findings;
    for (CookClass cookClass : {CookClass::Poultry, CookClass::LandAnimal, CookClass::Fish}) {
        const auto raw = std::ranges::find_if(pot.cuts, [&](const CutInPot& inPot) {
            return inPot.raw && catalogue.cut(inPot.cut)->cookClass == cookClass;
        });
        if (raw != pot.cuts.end())
            findings.append(rawNote(cookClass, raw - pot.cuts.begin()));
    }
    Finding bones = note(QStringLiteral("bones-strained-out"),
                         Say::tr("Bones are a choking hazard: strain the stock, through a fine "
                                 "sieve for a child, and pick the meat over."),
                         QStringLiteral("cuts"));
    bones.source = cited(catalogue.figure(QStringLiteral("choking")).provenance);
    findings.append(bones);
    Finding canning =
        note(QStringLiteral("no-home-canning"),
             Say::tr("This is not home canning: do not put up jars for the shelf with these steps. "
                     "Ask your local extension service how that is done."),
             QStringLiteral("pot"));
    canning.source = cited(KeepingFigures::shipped().provenance(QStringLiteral("home-canning")));
    findings.append(canning);
    Finding local = note(QStringLiteral("local-rules-first"),
                         Say::tr("Your local food safety rules go first where they are stricter."),
                         QStringLiteral("pot"));
    local.source = Say::tr("published limits differ from place to place (common practice)");
    findings.append(local);
    return findings;
}

} // namespace ladlework::kitchen
