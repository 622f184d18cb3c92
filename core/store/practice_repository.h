#pragma once

#include "casebook/handout_template.h"
#include "foundation/clock.h"
#include "foundation/id.h"
#include "foundation/result.h"
#include "intake/ladder.h"
#include "intake/ladder_template.h"
#include "intake/symptom.h"
#include "kitchen/catalogue.h"
#include "people/phase.h"
#include "people/practice.h"
#include "store/action.h"

#include <QHash>
#include <QList>
#include <optional>

namespace ladlework::store {

class Database;

/// What a kilogram of something may cost: more than 0, at most 1,000,000; `item` is a cut or an
/// extra of the catalogue, or "salt". The place of the Problem is the field ("item", "price").
Outcome checkPrice(const QString& item, double perKilogram, const kitchen::Catalogue& catalogue);

/// The practice itself and what it sets for all families: phases, the rules of new ladders, ladder
/// templates, the list of reactions, prices, how pages are put together and label sheets. add...
/// stores a new record (its id is ignored) and gives its id; change... and remove... give NotFound
/// for a record that is not there. Every record must pass its check().
class PracticeRepository {
public:
    /// The catalogue says what can have a price; it must outlive the repository.
    PracticeRepository(Database& database, const Clock& clock, const kitchen::Catalogue& catalogue)
        : m_database(database), m_clock(clock), m_catalogue(catalogue) {}

    [[nodiscard]] people::Practice practice() const;
    /// In order of position.
    [[nodiscard]] QList<people::Phase> phases() const;
    /// What a new ladder starts with.
    [[nodiscard]] intake::LadderRules houseRules() const;
    /// In order of position.
    [[nodiscard]] QList<intake::Symptom> symptoms() const;
    /// By name.
    [[nodiscard]] QList<intake::LadderTemplate> ladderTemplates() const;
    /// Per kilogram, by cut or extra id ("salt" for table salt), in the practice's currency.
    [[nodiscard]] QHash<QString, double> prices() const;

    /// By name.
    [[nodiscard]] QList<casebook::HandoutTemplate> handoutTemplates() const;
    /// By name.
    [[nodiscard]] QList<casebook::LabelStock> labelStocks() const;

    Outcome setPractice(Action&, const people::Practice& practice);
    Result<PhaseId> addPhase(Action&, const people::Phase& phase);
    Outcome changePhase(Action&, const people::Phase& phase);
    /// Refused while a member stands in it.
    Outcome removePhase(Action&, PhaseId phase);

    /// For ladders made from now on: those of members keep their own rules.
    Outcome setHouseRules(Action&, const intake::LadderRules& rules);

    /// Refused when another line of the list has the same name.
    Result<SymptomId> addSymptom(Action&, const intake::Symptom& symptom);
    Outcome changeSymptom(Action&, const intake::Symptom& symptom);
    /// Recorded reactions keep their name.
    Outcome removeSymptom(Action&, SymptomId symptom);

    /// Refused when another template has the same name.
    Result<LadderTemplateId> addLadderTemplate(Action&,
                                               const intake::LadderTemplate& ladderTemplate);
    Outcome changeLadderTemplate(Action&, const intake::LadderTemplate& ladderTemplate);
    Outcome removeLadderTemplate(Action&, LadderTemplateId ladderTemplate);

    /// Sets the price of an item, or takes it away (nothing); see checkPrice(). One that had none
    /// is left so.
    Outcome setPrice(Action&, const QString& item, std::optional<double> perKilogram);

    /// Refused when another template has the same name.
    Result<HandoutTemplateId> addHandoutTemplate(Action&, const casebook::HandoutTemplate& kept);
    Outcome changeHandoutTemplate(Action&, const casebook::HandoutTemplate& kept);
    Outcome removeHandoutTemplate(Action&, HandoutTemplateId kept);

    /// Refused when another label sheet has the same name.
    Result<LabelStockId> addLabelStock(Action&, const casebook::LabelStock& stock);
    Outcome changeLabelStock(Action&, const casebook::LabelStock& stock);
    Outcome removeLabelStock(Action&, LabelStockId stock);

private:
    [[nodiscard]] Outcome checkHandoutTemplate(const casebook::HandoutTemplate& kept) const;
    [[nodiscard]] Outcome checkLabelStock(const casebook::LabelStock& stock) const;
    [[nodiscard]] Outcome checkSymptom(const intake::Symptom& symptom) const;
    [[nodiscard]] Outcome checkTemplate(const intake::LadderTemplate& ladderTemplate) const;

    Database& m_database;
    const Clock& m_clock;
    const kitchen::Catalogue& m_catalogue;
};

} // namespace ladlework::store
