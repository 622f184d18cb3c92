#include "kitchen/lot_moves.h"

#include "kitchen/keeping.h"
#include "kitchen/keeping_figures.h"

#include <QCoreApplication>
#include <algorithm>

namespace ladlework::kitchen {

namespace {
/// The translation context of the sentences below.
struct Say {
    Q_DECLARE_TR_FUNCTIONS(LotMoves)
};
using quantity::Volume;

tl::unexpected<Problem> refused(const QString& sentence, const QString& place) {
    return problem(Problem::Kind::Refused, sentence, place);
}

/// The lot with `amount` of it in a lot of its own, which is still where it was.
Result<LotMove> parted(const Lot& lot, Volume left, Volume amount, QDate today) {
    if (lot.goneOn.isValid() && lot.goneOn <= today)
        return refused(Say::tr("This container is off the stock already; undo that first."),
                       QStringLiteral("goneOn"));
    if (!(left > Volume()))
        return refused(Say::tr("Nothing is left in this container."), QStringLiteral("amount"));
    if (!(amount > Volume()))
        return problem(Problem::Kind::BadInput, Say::tr("Say how much of it: more than nothing."),
                       QStringLiteral("amount"));
    const Volume drop = Volume::fromDrops(1);
    if (!(amount <= left + drop))
        return problem(Problem::Kind::BadInput,
                       Say::tr("There is not so much left in it; give a smaller amount."),
                       QStringLiteral("amount"));
    const bool all = amount >= left - drop;
    LotMove move;
    move.moved = lot;
    if (all && lot.volume - left < drop) // nobody has drunk from it
        return move;
    move.moved.id = {};
    move.moved.volume = all ? left : amount;
    move.stays = lot;
    move.stays->volume = lot.volume - move.moved.volume;
    if (all) // empty, so that nobody drinks from it any more
        move.stays->goneOn = today;
    else if (!lot.container.isEmpty())
        move.moved.container = Say::tr("part of %1").arg(lot.container);
    return move;
}
} // namespace

Result<LotMove> freeze(const Lot& lot, Volume left, Volume amount, QDate today) {
    if (lot.place != Lot::Place::Fridge)
        return refused(Say::tr("This container is in the freezer already."),
                       QStringLiteral("place"));
    if (lot.useBy.isValid() && lot.useBy < today)
        return refused(Say::tr("This stock is past its day; the freezer does not make it good "
                               "again. Throw it away."),
                       QStringLiteral("useBy"));
    Result<LotMove> move = parted(lot, left, amount, today);
    if (!move)
        return move;
    move->moved.place = Lot::Place::Freezer;
    move->moved.stored = today;
    move->moved.useBy = useBy(Lot::Place::Freezer, today, 0);
    return move;
}

Result<LotMove> thaw(const Lot& lot, Volume left, Volume amount, QDate today, int fridgeDays) {
    if (lot.place != Lot::Place::Freezer)
        return refused(Say::tr("This container is in the refrigerator already."),
                       QStringLiteral("place"));
    Result<LotMove> move = parted(lot, left, amount, today);
    if (!move)
        return move;
    move->moved.place = Lot::Place::Fridge;
    move->moved.stored = today;
    move->moved.useBy = thawedUseBy(today, fridgeDays);
    return move;
}

Result<LotMove> throwAway(const Lot& lot, Volume left, Volume amount, QDate today) {
    Result<LotMove> move = parted(lot, left, amount, today);
    if (!move)
        return move;
    if (move->splits() && move->stays->goneOn.isValid()) // all that is left: one record is enough
        *move = {std::nullopt, lot};
    move->moved.goneOn = today;
    return move;
}

Findings freezeFindings(const Lot& lot, QDate cooked, QDate today) {
    if (lot.place != Lot::Place::Fridge || !cooked.isValid())
        return {};
    Finding finding;
    if (lot.stored > cooked)
        finding = makeFinding(
            Finding::Severity::Caution, QStringLiteral("frozen-again"),
            Say::tr("This stock came out of the freezer. Frozen again it loses taste and sets "
                    "less; freeze it only when it has stayed cold since."));
    else if (today > cooked)
        finding = makeFinding(
            Finding::Severity::Caution, QStringLiteral("frozen-late"),
            Say::tr("Stock is best frozen on the day it is cooked. This has stood in the "
                    "refrigerator since; once thawed, drink it soon."));
    else
        return {};
    finding.source = Say::tr("common practice, no source (common practice)");
    return {finding};
}

QDate thawedUseBy(QDate today, int fridgeDays) {
    return today.addDays(
        std::min(fridgeDays, KeepingFigures::shipped().count(QStringLiteral("thawed-stock"))));
}

} // namespace ladlework::kitchen
