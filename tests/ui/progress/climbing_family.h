#pragma once

#include "ui/shared/family_workbook.h"

namespace ladlework::ui {

/// The family of FamilyWorkbook with Gil, who climbs since 1 October on four rungs: good days on
/// 1 to 6 October, a moderate reaction on the 8th, a red flag on the 20th: stopped since.
class ClimbingFamily {
public:
    ClimbingFamily() {
        const Outcome filled = workbook.workbook().act(
            QStringLiteral("Took on Gil"), [this](store::Action& action) { return fill(action); });
        if (!filled)
            throw std::runtime_error(toLine(filled.error()).toStdString());
    }
    [[nodiscard]] casebook::Standing standing() const {
        return *workbook.casebook()->standing(gil);
    }

    FamilyWorkbook workbook;
    MemberId gil;

private:
    Outcome fill(store::Action& action) {
        using quantity::Volume;
        store::Workbook& book = workbook.workbook();
        people::Member member;
        member.family = workbook.family;
        member.name = QStringLiteral("Gil Hale");
        member.birth = QDate(2000, 1, 1);
        const auto id = book.families().addMember(action, member);
        if (!id)
            return passOn(id);
        gil = *id;
        intake::Ladder ladder;
        ladder.member = gil;
        ladder.from = QDate(2026, 10, 1);
        ladder.rungs = {Volume::fromCups(0.25), Volume::fromCups(0.5), Volume::fromCups(1),
                        Volume::fromCups(4)};
        if (const auto added = book.climbs().addLadder(action, ladder); !added)
            return passOn(added);
        for (int day = 1; day <= 6; ++day) {
            intake::IntakeEntry entry;
            entry.member = gil;
            entry.day = QDate(2026, 10, day);
            entry.drunk = Volume::fromCups(day <= 3 ? 0.25 : 0.5);
            if (const auto added = book.log().addEntry(action, entry); !added)
                return passOn(added);
        }
        return felt(action, QDate(2026, 10, 8), 4, false).and_then([&] {
            return felt(action, QDate(2026, 10, 20), 10, true);
        });
    }
    Outcome felt(store::Action& action, QDate day, int strength, bool redFlag) {
        intake::Reaction reaction;
        reaction.member = gil;
        reaction.day = day;
        reaction.symptom = QStringLiteral("odd");
        reaction.strength = strength;
        reaction.redFlag = redFlag;
        const auto added = workbook.workbook().log().addReaction(action, reaction);
        return added ? Outcome{} : Outcome(passOn(added));
    }
};

} // namespace ladlework::ui
