#pragma once

#include "foundation/result.h"
#include "kitchen/brew_figures.h"
#include "quantity/duration.h"
#include "quantity/mass.h"

#include <QHash>
#include <QString>
#include <QStringList>
#include <array>
#include <optional>
#include <vector>

namespace ladlework::kitchen {

/// How a kind of animal is simmered.
enum class CookClass { Poultry, LandAnimal, Fish };

/// Where a figure comes from: kept beside every row of resources/reference.
struct Provenance {
    QString source; ///< publication, table or section, year
    QString basis;  ///< "published", "common practice", "memory"
};

struct Animal {
    QString id;   ///< "chicken", "beef", "cod"
    QString name; ///< for people, translated
    CookClass cookClass = CookClass::Poultry;
    QStringList countsAs; ///< other animals that a note about them also covers: veal as beef
    Provenance provenance;
};

/// What a cook class asks: the simmering window (common practice).
struct CookWindow {
    quantity::Duration least;
    quantity::Duration most;
    Provenance provenance;
};

/// Raw edible portion, per 100 g.
struct Composition {
    double waterG = 0;
    double proteinG = 0;
    double fatG = 0;
    double sodiumMg = 0;
    double potassiumMg = 0;
};

/// What is bought: a cut as the catalogue knows it. Fractions are of the raw mass as bought.
struct Cut {
    QString id;   ///< "chicken-drumstick"
    QString name; ///< "chicken drumsticks", translated
    QString animal;
    CookClass cookClass = CookClass::Poultry; ///< of the animal
    double refuse = 0;                        ///< bone and cartilage, 0-1
    Composition raw;                          ///< of the edible part
    double cookedEdible = 0;                  ///< cooked meat off the bone, g per g as bought
    double cookedWhole = 0;                   ///< the whole piece after cooking, g per g as bought
    int connective = 0;                       ///< grade 0-3
    double collagenShare = 0; ///< g collagen that could be released, per g as bought
    bool joint = false;
    bool lowMeat = false;
    bool marrow = false;     ///< marrow bone: only beside jointed cuts
    bool bareBone = false;   ///< no meat: bone broth, not meat stock
    bool smallBones = false; ///< bones small enough to choke on
    Provenance provenance;
};

/// What goes in besides meat, water and table salt.
struct Extra {
    enum class Kind {
        Vegetable,
        Garlic,
        FreshHerb,
        DryHerb,
        Peppercorns,
        GroundPepper,
        Salt,
        Other
    };
    QString id;   ///< "onion"
    QString name; ///< "onion", translated
    Kind kind = Kind::Vegetable;
    QStringList countsAs; ///< other ingredients that a note about them also covers
    quantity::Mass piece; ///< one piece, stalk, clove or teaspoon, edible part
    QString pieceName;    ///< "medium onion", "stalk", "clove", "tsp"; translated
    Composition raw;
    double sodiumShare = 0; ///< for salts: g sodium per g
    /// Minutes before the end at which it goes in; nothing means at the start; 0 means heat off.
    std::optional<quantity::Duration> beforeEnd;
    Provenance provenance;
};

/// A published or common-practice figure that is no row of food: limits, shares, constants.
struct Figure {
    QString id;
    double value = 0;
    double low = 0;  ///< 10 % bound of an uncertain figure; else the value itself
    double high = 0; ///< 90 % bound of an uncertain figure; else the value itself
    QString unit;
    Provenance provenance;
};

/// "poultry", "land-animal", "fish": the words of the reference tables.
QString cookClassId(CookClass cookClass);
/// "vegetable", "garlic", "fresh-herb", ...: the words of the reference tables.
QString extraKindId(Extra::Kind kind);
std::optional<Extra::Kind> extraKindFromId(QStringView id);
/// "source (basis)": how a finding cites a figure.
QString cited(const Provenance& provenance);

/// Everything in resources/reference that a pot needs. Immutable; loaded once and passed around.
class Catalogue {
public:
    /// Reads the shipped tables. A Damaged problem names file, line and column at fault.
    static Result<Catalogue> load();

    [[nodiscard]] const std::vector<Animal>& animals() const { return m_animals; }
    [[nodiscard]] const std::vector<Cut>& cuts() const { return m_cuts; }
    [[nodiscard]] const std::vector<Extra>& extras() const { return m_extras; }
    /// nullptr when unknown.
    [[nodiscard]] const Animal* animal(const QString& id) const;
    [[nodiscard]] const Cut* cut(const QString& id) const;
    [[nodiscard]] const Extra* extra(const QString& id) const;
    [[nodiscard]] const CookWindow& window(CookClass cookClass) const;
    /// The window of one cut: that of its animal's class, or that of bare bones for bone broth.
    [[nodiscard]] const CookWindow& window(const Cut& cut) const;
    /// A figure by id; an unknown id is a broken invariant (throws).
    [[nodiscard]] const Figure& figure(const QString& id) const;
    /// Those that a pot is reckoned with, without the way through their ids.
    [[nodiscard]] const BrewFigures& brewFigures() const { return m_brewFigures; }

    /// Does a tolerance subject cover a cut or an extra? An animal covers its cuts and those that
    /// count as it (veal as beef, white fish of no stated kind as each white fish); the wider words
    /// "poultry" and "fish" cover all of that class; ids are compared exactly.
    [[nodiscard]] bool covers(const QString& subjectId, const QString& cutOrExtraId) const;

    /// Is the id one that covers() can ever say yes to?
    [[nodiscard]] bool knowsSubject(const QString& subjectId) const;

    /// The name for people of an animal, a cut, an extra or one of the wider words; the id itself
    /// for what is not known here.
    [[nodiscard]] QString nameOf(const QString& id) const;

private:
    Outcome readAnimals();
    Outcome readCuts();
    Outcome readExtras();
    Outcome readWindows();
    Outcome readFigures();

    std::vector<Animal> m_animals;
    std::vector<Cut> m_cuts;
    std::vector<Extra> m_extras;
    std::array<std::optional<CookWindow>, 4> m_windows; ///< by CookClass, then of bare bones
    QHash<QString, Figure> m_figures;
    BrewFigures m_brewFigures;
    QHash<QString, qsizetype> m_animalIndex;
    QHash<QString, qsizetype> m_cutIndex;
    QHash<QString, qsizetype> m_extraIndex;
};

} // namespace ladlework::kitchen
