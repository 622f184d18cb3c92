// What the pot screen does to the workbook; how it is laid out and reckoned is in pot_screen.cpp.
#include "casebook/first_pot.h"
#include "kitchen/pot_sizing.h"
#include "ui/pot/comparison_page.h"
#include "ui/pot/pot_answer.h"
#include "ui/pot/pot_change.h"
#include "ui/pot/pot_editor.h"
#include "ui/pot/pot_library.h"
#include "ui/pot/pot_screen.h"
#include "ui/pot/price_text.h"

namespace ladlework::ui {

using kitchen::Pot;

namespace {

/// Are these the same amounts of the same things?
bool isSameSize(const Pot& a, const Pot& b) {
    return a.water == b.water && a.salt == b.salt && a.cuts == b.cuts && a.extras == b.extras;
}

} // namespace

void PotScreen::save() {
    const Pot* stored = chosen();
    if (stored == nullptr)
        return;
    const Pot draft = m_editor->draft();
    change(draft, potChange(*stored, draft, context().catalogue, measures()));
}

void PotScreen::change(const Pot& pot, const QString& sentence) {
    const bool done = context().act(this, sentence, [&](store::Action& action) {
        return context().workbook.pots().changePot(action, pot);
    });
    if (!done)
        showChosen();
}

void PotScreen::addPot(Pot pot, const QString& sentence, bool toBeNamed) {
    pot.id = {};
    const bool done = context().act(this, sentence, [&](store::Action& action) -> Outcome {
        const auto added = context().workbook.pots().addPot(action, pot);
        if (!added)
            return passOn(added);
        m_added = *added;
        return {};
    });
    if (done && toBeNamed)
        m_editor->editName();
}

void PotScreen::startNew() {
    leaveComparison();
    Pot pot = casebook::firstPot();
    pot.family = book().records().family.id;
    pot.name = tr("New pot");
    addPot(pot, tr("Started a new pot"), true);
}

void PotScreen::copyForFamily() {
    const Pot* stored = chosen();
    if (stored == nullptr)
        return;
    Pot pot = *stored;
    pot.family = book().records().family.id;
    pot.name = tr("%1, %2").arg(stored->name, book().records().family.name);
    addPot(
        pot,
        tr("Copied the pot %1 for the family %2").arg(stored->name, book().records().family.name),
        true);
}

void PotScreen::removeChosen() {
    const Pot* pot = chosen();
    if (pot == nullptr)
        return;
    const PotId id = pot->id;
    context().act(this, tr("Removed the pot %1").arg(pot->name), [&](store::Action& action) {
        return context().workbook.pots().removePot(action, id);
    });
}

kitchen::BrewInput PotScreen::draftInput() const {
    Pot draft = m_editor->draft();
    if (draft.name.isEmpty() && chosen() != nullptr)
        draft.name = chosen()->name;
    return book().brewInput(draft);
}

void PotScreen::fitToVessel() {
    if (chosen() == nullptr)
        return;
    const kitchen::BrewInput input = draftInput();
    keepSized(kitchen::sizedToVessel(input, measures(), context().catalogue),
              tr("to %1").arg(input.vessel.name));
}

void PotScreen::coverDays() {
    if (chosen() == nullptr)
        return;
    const int days = m_answer->sizes()->days();
    keepSized(kitchen::sizedToCover(draftInput(), days, measures(), context().catalogue),
              days == 1 ? tr("to cover 1 day") : tr("to cover %1 days").arg(days));
}

void PotScreen::useBones() {
    if (chosen() == nullptr)
        return;
    const QString cut = m_answer->sizes()->cut();
    const quantity::Mass inHand = m_answer->sizes()->bones();
    keepSized(kitchen::sizedToBones(draftInput(), cut, inHand, measures(), context().catalogue),
              tr("to %1 of %2")
                  .arg(quantity::printMass(inHand, measures()), context().catalogue.nameOf(cut)));
}

void PotScreen::keepSized(const Result<Pot>& sized, const QString& how) {
    SizePanel* panel = m_answer->sizes();
    if (!sized) {
        panel->refuse(sized.error().sentence, sized.error().place);
        return;
    }
    const Pot stored = *chosen();
    if (isSameSize(*sized, stored)) {
        panel->say(tr("It has that size already."));
        return;
    }
    QString sentence = tr("Sized %1 %2").arg(stored.name, how);
    if (stored.family.isStored()) {
        change(*sized, sentence);
    } else {
        // A kitchen's own size is no matter of the other families.
        Pot own = *sized;
        own.family = book().records().family.id;
        own.name = tr("%1, %2").arg(stored.name, book().records().family.name);
        own.vessel = book().brewInput(stored).vessel.id; // the one it was sized for
        sentence = tr("%1, as this family's own").arg(sentence);
        addPot(own, sentence, false);
    }
    panel->say(tr("%1. Undo takes it back.").arg(sentence));
}

void PotScreen::makeLowMeat() {
    const Pot* stored = chosen();
    if (stored == nullptr)
        return;
    const Result<Pot> lean =
        kitchen::lowMeatOfSameYield(draftInput(), measures(), context().catalogue);
    if (!lean) {
        m_answer->sizes()->refuse(lean.error().sentence, lean.error().place);
        return;
    }
    Pot pot = *lean;
    pot.family = book().records().family.id;
    pot.name = tr("%1, low-meat").arg(stored->name);
    const QString sentence = tr("Made a low-meat pot of %1 with the same yield").arg(stored->name);
    addPot(pot, sentence, false);
    m_answer->sizes()->say(tr("%1. Undo takes it back.").arg(sentence));
}

void PotScreen::coolIn(const kitchen::Container& container) {
    const Pot* stored = chosen();
    if (stored == nullptr)
        return;
    Pot pot = m_editor->draft();
    const QString sentence = tr("Chose to cool %1 in %2").arg(stored->name, container.name);
    const bool done = context().act(this, sentence, [&](store::Action& action) -> Outcome {
        pot.coolIn = container.id;
        if (!container.id.isStored()) {
            // One that kitchens usually have becomes one of this kitchen's.
            kitchen::Container own = container;
            own.family = book().records().family.id;
            const auto added = context().workbook.families().addContainer(action, own);
            if (!added)
                return passOn(added);
            pot.coolIn = *added;
        }
        return context().workbook.pots().changePot(action, pot);
    });
    if (!done)
        showChosen();
}

void PotScreen::coolBy(kitchen::CoolingWay way) {
    const Pot* stored = chosen();
    if (stored == nullptr)
        return;
    Pot pot = m_editor->draft();
    pot.coolingWay = way;
    change(pot, potChange(*stored, pot, context().catalogue, measures()));
}

void PotScreen::setPrice(const QString& item, std::optional<double> perKilogram) {
    const casebook::FamilyRecords& records = book().records();
    const Prices prices{records.prices, records.practice.currency, measures()};
    const QString name = context().catalogue.nameOf(item);
    const QString sentence =
        perKilogram ? tr("Set the price of %1 to %2").arg(name, printPrice(*perKilogram, prices))
                    : tr("Took the price of %1 away").arg(name);
    const bool done = context().act(this, sentence, [&](store::Action& action) {
        return context().workbook.practice().setPrice(action, item, perKilogram);
    });
    if (!done)
        showChosen();
}

void PotScreen::compare() {
    if (chosen() == nullptr)
        return;
    m_isComparing = true;
    showChosen();
    m_comparison->firstField()->setFocus();
}

void PotScreen::leaveComparison() {
    if (!m_isComparing)
        return;
    m_isComparing = false;
    showChosen();
    m_library->list()->setFocus();
}

} // namespace ladlework::ui
