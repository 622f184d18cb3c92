#include "kitchen/catalogue.h"
#include "kitchen/phase_rules.h"
#include "kitchen/reference_rows.h"

#include <QCoreApplication>
#include <algorithm>
#include <array>
#include <stdexcept>

namespace ladlework::kitchen {

namespace {
using Row = ReferenceTable::Row;

QString translated(const QString& text) {
    return QCoreApplication::translate("Catalogue", text.toUtf8().constData());
}

Composition compositionOf(const Row& row) {
    return {row.number(QStringLiteral("water_g")), row.number(QStringLiteral("protein_g")),
            row.number(QStringLiteral("fat_g")), row.number(QStringLiteral("sodium_mg")),
            row.number(QStringLiteral("potassium_mg"))};
}

/// Runs `read` over all rows; text that is no number, or a word that no one knows, is Damaged.
template <class Read>
Outcome forEachRow(const QString& table, const Read& read) {
    const Result<ReferenceTable> loaded = ReferenceTable::load(table);
    if (!loaded)
        return passOn(loaded);
    try {
        for (qsizetype index = 0; index < loaded->size(); ++index)
            read(loaded->row(index));
    } catch (const std::runtime_error& error) {
        return problem(Problem::Kind::Damaged, QString::fromUtf8(error.what()),
                       table + QStringLiteral(".csv"));
    }
    return {};
}

CookClass cookClassNamed(const QString& id) {
    for (CookClass cookClass : {CookClass::Poultry, CookClass::LandAnimal, CookClass::Fish})
        if (id == cookClassId(cookClass))
            return cookClass;
    throw std::runtime_error("unknown cook class " + id.toStdString());
}

/// The rows of the cooking windows: the cook classes in their order, then bare bones.
QStringList windowWords() {
    return {cookClassId(CookClass::Poultry), cookClassId(CookClass::LandAnimal),
            cookClassId(CookClass::Fish), QStringLiteral("bare-bone")};
}

size_t windowPlace(const QString& word) {
    const qsizetype place = windowWords().indexOf(word);
    if (place < 0)
        throw std::runtime_error("unknown cook class " + word.toStdString());
    return static_cast<size_t>(place);
}

Cut cutOf(const Row& row) {
    Cut cut;
    cut.id = row.text(QStringLiteral("id"));
    cut.name = translated(row.text(QStringLiteral("name")));
    cut.animal = row.text(QStringLiteral("animal"));
    cut.refuse = row.number(QStringLiteral("refuse"));
    cut.raw = compositionOf(row);
    cut.cookedEdible = row.number(QStringLiteral("cooked_edible"));
    cut.cookedWhole = row.number(QStringLiteral("cooked_whole"));
    cut.connective = static_cast<int>(row.number(QStringLiteral("connective")));
    cut.collagenShare = row.number(QStringLiteral("collagen_share"));
    cut.joint = row.flag(QStringLiteral("joint"));
    cut.lowMeat = row.flag(QStringLiteral("low_meat"));
    cut.marrow = row.flag(QStringLiteral("marrow"));
    cut.bareBone = row.flag(QStringLiteral("bare_bone"));
    cut.smallBones = row.flag(QStringLiteral("small_bones"));
    cut.provenance = provenanceOf(row);
    return cut;
}

Extra extraOf(const Row& row) {
    Extra extra;
    extra.id = row.text(QStringLiteral("id"));
    extra.name = translated(row.text(QStringLiteral("name")));
    const auto kind = extraKindFromId(row.text(QStringLiteral("kind")));
    if (!kind)
        throw std::runtime_error("unknown kind of " + extra.id.toStdString());
    extra.kind = *kind;
    extra.countsAs =
        row.text(QStringLiteral("counts_as")).split(QLatin1Char(' '), Qt::SkipEmptyParts);
    extra.piece = quantity::Mass::fromGrams(row.number(QStringLiteral("piece_g")));
    extra.pieceName = translated(row.text(QStringLiteral("piece_name")));
    extra.raw = compositionOf(row);
    extra.sodiumShare = row.number(QStringLiteral("sodium_share"));
    if (!row.text(QStringLiteral("before_end_min")).isEmpty())
        extra.beforeEnd =
            quantity::Duration::fromMinutes(row.number(QStringLiteral("before_end_min")));
    extra.provenance = provenanceOf(row);
    return extra;
}
} // namespace

Outcome Catalogue::readAnimals() {
    return forEachRow(QStringLiteral("animals"), [this](const Row& row) {
        const QString id = row.text(QStringLiteral("id"));
        m_animalIndex.insert(id, static_cast<qsizetype>(m_animals.size()));
        m_animals.push_back(
            {id, translated(row.text(QStringLiteral("name"))),
             cookClassNamed(row.text(QStringLiteral("cook_class"))),
             row.text(QStringLiteral("counts_as")).split(QLatin1Char(' '), Qt::SkipEmptyParts),
             provenanceOf(row)});
    });
}

Outcome Catalogue::readCuts() {
    return forEachRow(QStringLiteral("cuts"), [this](const Row& row) {
        Cut cut = cutOf(row);
        const Animal* known = animal(cut.animal);
        if (known == nullptr)
            throw std::runtime_error("unknown animal of " + cut.id.toStdString());
        cut.cookClass = known->cookClass;
        m_cutIndex.insert(cut.id, static_cast<qsizetype>(m_cuts.size()));
        m_cuts.push_back(std::move(cut));
    });
}

Outcome Catalogue::readExtras() {
    return forEachRow(QStringLiteral("extras"), [this](const Row& row) {
        Extra extra = extraOf(row);
        m_extraIndex.insert(extra.id, static_cast<qsizetype>(m_extras.size()));
        m_extras.push_back(std::move(extra));
    });
}

Outcome Catalogue::readWindows() {
    return forEachRow(QStringLiteral("cook-windows"), [this](const Row& row) {
        m_windows.at(windowPlace(row.text(QStringLiteral("cook_class")))) = {
            quantity::Duration::fromMinutes(row.number(QStringLiteral("least_min"))),
            quantity::Duration::fromMinutes(row.number(QStringLiteral("most_min"))),
            provenanceOf(row)};
    });
}

Outcome Catalogue::readFigures() {
    return forEachRow(QStringLiteral("figures"), [this](const Row& row) {
        const Figure figure = figureOf(row);
        m_figures.insert(figure.id, figure);
    });
}

Result<Catalogue> Catalogue::load() {
    Catalogue catalogue;
    for (const auto read : {&Catalogue::readAnimals, &Catalogue::readCuts, &Catalogue::readExtras,
                            &Catalogue::readWindows, &Catalogue::readFigures}) {
        const Outcome outcome = (catalogue.*read)();
        if (!outcome)
            return passOn(outcome);
    }
    for (const QString& needed : windowWords())
        if (!catalogue.m_windows.at(windowPlace(needed)))
            return problem(Problem::Kind::Damaged,
                           QCoreApplication::translate(
                               "Catalogue", "The cooking window of \"%1\" is missing; install the "
                                            "program anew.")
                               .arg(needed),
                           QStringLiteral("cook-windows.csv"));
    catalogue.m_brewFigures = BrewFigures::of(catalogue);
    return catalogue;
}

Result<std::vector<ShippedPhase>> shippedPhases() {
    std::vector<ShippedPhase> phases;
    const Outcome read = forEachRow(QStringLiteral("phases"), [&phases](const Row& row) {
        phases.push_back(
            {row.text(QStringLiteral("id")),
             translated(row.text(QStringLiteral("name"))),
             static_cast<int>(row.number(QStringLiteral("position"))),
             {row.flag(QStringLiteral("strain_herbs")),
              row.flag(QStringLiteral("strain_vegetables")),
              row.flag(QStringLiteral("strain_peppercorns")),
              row.flag(QStringLiteral("ground_pepper")), row.flag(QStringLiteral("bone_broth"))}});
    });
    if (!read)
        return passOn(read);
    std::ranges::sort(phases, {}, &ShippedPhase::position);
    return phases;
}

} // namespace ladlework::kitchen
