#include "casebook/family_needs.h"

#include "casebook/cookings_to_confirm.h"
#include "casebook/next_review.h"
#include "casebook/standing_maker.h"

#include <QCoreApplication>

namespace ladlework::casebook {

namespace {
struct Words {
    Q_DECLARE_TR_FUNCTIONS(FamilyNeeds)
};
} // namespace

/// Makes a casebook that knows no more than its needs ask for; it is not let out of here.
class ExcerptReader {
public:
    static std::optional<FamilyNeeds> read(FamilyExcerpt excerpt,
                                           const kitchen::Catalogue& catalogue, QDate today) {
        std::vector<Standing> standings;
        standings.reserve(static_cast<std::size_t>(excerpt.records.members.size()));
        for (const people::Member& member : std::as_const(excerpt.records.members)) {
            MemberLog log = memberLog(excerpt.records, member, today);
            const auto soFar = excerpt.climbs.constFind(member.id);
            if (soFar != excerpt.climbs.cend())
                log.soFar = *soFar;
            if (!canGoOn(log, today))
                return std::nullopt;
            standings.push_back(makeStanding(excerpt.records, member, log, today));
        }
        return needsOf(
            Casebook(std::move(excerpt.records), std::move(standings), catalogue, today));
    }
};

FamilyNeeds needsOf(const Casebook& book) {
    FamilyNeeds needs;
    needs.attention = book.attention();
    needs.nextReview = nextReview(book.records());
    for (const week::Placement& placement : cookingsToConfirm(book)) {
        const kitchen::Pot* pot = book.pot(placement.pot);
        needs.openCookings.append(
            {placement.day, pot != nullptr ? pot->name : Words::tr("a pot that is gone")});
    }
    return needs;
}

std::optional<FamilyNeeds> needsOf(FamilyExcerpt excerpt, const kitchen::Catalogue& catalogue,
                                   QDate today) {
    return ExcerptReader::read(std::move(excerpt), catalogue, today);
}

} // namespace ladlework::casebook
