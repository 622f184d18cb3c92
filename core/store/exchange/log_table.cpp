#include "exchange/log_table.h"

#include "exchange/log_csv.h"
#include "foundation/csv.h"

#include <QHash>
#include <algorithm>
#include <tuple>

namespace ladlework::exchange {

namespace {
struct Line {
    QDate day;
    qsizetype member = 0; ///< its place in the family
    bool isReaction = false;
    QStringList cells;
};

QHash<PotId, QString> potNames(const QList<kitchen::Pot>& pots) {
    QHash<PotId, QString> names;
    for (const kitchen::Pot& pot : pots)
        names.insert(pot.id, pot.name);
    return names;
}

/// A container by its own name, or with its day where several have that name.
QHash<LotId, QString> lotNames(const QList<kitchen::Lot>& lots) {
    QHash<QString, int> count;
    for (const kitchen::Lot& lot : lots)
        ++count[lot.container.toCaseFolded()];
    QHash<LotId, QString> names;
    for (const kitchen::Lot& lot : lots)
        names.insert(lot.id,
                     count[lot.container.toCaseFolded()] > 1 ? datedName(lot) : lot.container);
    return names;
}

/// What the lines refer to.
class Named {
public:
    explicit Named(const casebook::FamilyRecords& records)
        : m_records(records), m_pots(potNames(records.pots)), m_lots(lotNames(records.lots)) {}

    [[nodiscard]] qsizetype place(MemberId member) const {
        return std::ranges::find(m_records.members, member, &people::Member::id) -
               m_records.members.begin();
    }
    [[nodiscard]] QString member(MemberId member) const {
        const qsizetype at = place(member);
        return at < m_records.members.size() ? m_records.members[at].name : QString();
    }
    [[nodiscard]] QString pot(PotId pot) const { return m_pots.value(pot); }
    [[nodiscard]] QString lot(LotId lot) const { return m_lots.value(lot); }

private:
    const casebook::FamilyRecords& m_records;
    QHash<PotId, QString> m_pots;
    QHash<LotId, QString> m_lots;
};

QString amountOf(quantity::Volume volume) {
    if (volume <= quantity::Volume())
        return QStringLiteral("0");
    return QString::number(volume.toMillilitres(), 'f', 2) + QStringLiteral(" ml");
}

Line lineOf(const intake::IntakeEntry& entry, const Named& named) {
    return {entry.day, named.place(entry.member), false,
            QStringList{entry.day.toString(Qt::ISODate), named.member(entry.member),
                        amountOf(entry.drunk), named.pot(entry.pot), named.lot(entry.lot),
                        QString(), QString(), QString(), QString(), QString(), entry.note}};
}

QString clockOf(int minute) {
    return QTime(0, 0).addSecs(minute * 60).toString(QStringLiteral("HH:mm"));
}

Line lineOf(const intake::Reaction& reaction, const Named& named) {
    const QString flag = reaction.redFlag ? QStringLiteral("yes") : QStringLiteral("no");
    return {
        reaction.day, named.place(reaction.member), true,
        QStringList{reaction.day.toString(Qt::ISODate), named.member(reaction.member), QString(),
                    QString(), QString(), reaction.symptom, QString::number(reaction.strength),
                    flag, reaction.startMinute ? clockOf(*reaction.startMinute) : QString(),
                    reaction.minutes ? QStringLiteral("%1 min").arg(*reaction.minutes) : QString(),
                    reaction.note}};
}
} // namespace

QString logTable(const casebook::FamilyRecords& records) {
    const Named named(records);
    QList<Line> lines;
    for (const intake::IntakeEntry& entry : records.entries)
        lines.append(lineOf(entry, named));
    for (const intake::Reaction& reaction : records.reactions)
        lines.append(lineOf(reaction, named));
    std::ranges::stable_sort(lines, {}, [](const Line& line) {
        return std::tuple(line.day, line.member, line.isReaction);
    });
    QString table =
        writeCsvRecord({QStringLiteral("day"), QStringLiteral("member"), QStringLiteral("amount"),
                        QStringLiteral("pot"), QStringLiteral("lot"), QStringLiteral("reaction"),
                        QStringLiteral("strength"), QStringLiteral("red_flag"),
                        QStringLiteral("start"), QStringLiteral("length"), QStringLiteral("note")});
    for (const Line& line : lines)
        table += writeCsvRecord(line.cells);
    return table;
}

} // namespace ladlework::exchange
