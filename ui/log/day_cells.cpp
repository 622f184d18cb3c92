#include "ui/log/day_cells.h"

#include "intake/felt_items.h"
#include "intake/red_flags.h"

#include <QCoreApplication>
#include <QRegularExpression>
#include <QTime>

namespace ladlework::ui {

namespace {

constexpr int strongest = 10;
constexpr int secondsAMinute = 60;
constexpr int millisecondsASecond = 1000;

struct DayCells {
    Q_DECLARE_TR_FUNCTIONS(DayCells)
};

/// Takes a leading "+" off.
bool takePlus(QString& text) {
    text = text.trimmed();
    if (!text.startsWith(u'+'))
        return false;
    text = text.mid(1).trimmed();
    return true;
}

const SymptomWord* match(const QString& typed, const QList<SymptomWord>& symptoms) {
    for (const SymptomWord& symptom : symptoms)
        if (symptom.name.compare(typed, Qt::CaseInsensitive) == 0)
            return &symptom;
    const SymptomWord* only = nullptr;
    for (const SymptomWord& symptom : symptoms) {
        if (!symptom.name.startsWith(typed, Qt::CaseInsensitive))
            continue;
        if (only)
            return nullptr; // more than one begins so
        only = &symptom;
    }
    return only;
}

/// Takes " from jar 1" off the end.
QString takeSource(QString& text) {
    static const QRegularExpression pattern(QStringLiteral("^(.*?)\\s+from\\s+(.+)$"),
                                            QRegularExpression::CaseInsensitiveOption);
    const QRegularExpressionMatch found = pattern.match(text);
    if (!found.hasMatch())
        return {};
    text = found.captured(1).trimmed();
    return found.captured(2).trimmed();
}

/// Takes "at 14:30" and "for 2 h" off the end, in either order.
Outcome takeTimes(QString& text, ReactionCell& cell) {
    static const QRegularExpression pattern(QStringLiteral("^(.*\\S)\\s+(at|for)\\s+(\\d.*)$"),
                                            QRegularExpression::CaseInsensitiveOption);
    for (QRegularExpressionMatch found = pattern.match(text); found.hasMatch();
         found = pattern.match(text)) {
        const QString words = found.captured(3).trimmed();
        if (found.captured(2).toLower() == u"at") {
            const QTime time = QTime::fromString(words, QStringLiteral("H:mm"));
            if (!time.isValid())
                return problem(
                    Problem::Kind::BadInput,
                    DayCells::tr("\"%1\" is no time of day; type it as 14:30.").arg(words));
            cell.startMinute = time.msecsSinceStartOfDay() / (secondsAMinute * millisecondsASecond);
        } else {
            const Result<quantity::Duration> lasted = quantity::parseDuration(words);
            if (!lasted)
                return passOn(lasted);
            cell.minutes = qRound(lasted->toMinutes());
        }
        text = found.captured(1).trimmed();
    }
    return {};
}

} // namespace

Result<DrinkCell> readDrink(const QString& text, quantity::MeasureSystem measures) {
    DrinkCell cell;
    QString rest = text;
    cell.another = takePlus(rest);
    cell.from = takeSource(rest);
    const QString word = rest.toLower();
    if (word == u"=" || word == u"same" || word == DayCells::tr("same")) {
        cell.asAsked = true;
        return cell;
    }
    if (word == u"missed" || word == DayCells::tr("missed"))
        return cell;
    const Result<quantity::Volume> volume = quantity::parseVolume(rest, measures);
    if (!volume)
        return passOn(volume);
    cell.volume = *volume;
    return cell;
}

Result<ReactionCell> readReaction(const QString& text, const QList<SymptomWord>& symptoms) {
    ReactionCell cell;
    QString rest = text;
    cell.another = takePlus(rest);
    const QString word = rest.toLower();
    if (word.isEmpty() || word == u"fine" || word == u"none" || word == DayCells::tr("fine")) {
        cell.none = true;
        return cell;
    }
    if (const Outcome times = takeTimes(rest, cell); !times)
        return passOn(times);
    const auto [typed, strength] = intake::feltWords(rest);
    if (typed.isEmpty())
        return problem(Problem::Kind::BadInput,
                       DayCells::tr("Say what was felt and how strong, such as: bloating 3."));
    const SymptomWord* symptom = match(typed, symptoms);
    cell.symptom = symptom ? symptom->name : typed;
    cell.redFlag = (symptom && symptom->redFlag) || intake::redFlagIn(typed);
    if (strength.isEmpty()) {
        if (!cell.redFlag)
            return problem(Problem::Kind::BadInput,
                           DayCells::tr("Say how strong it was, from 0 to 10: %1 3.").arg(typed));
        cell.strength = strongest;
        return cell;
    }
    bool number = false;
    cell.strength = strength.toInt(&number);
    if (!number || cell.strength > strongest)
        return problem(Problem::Kind::BadInput,
                       DayCells::tr("The strength goes from 0 to 10; %1 is more.").arg(strength));
    return cell;
}

Result<QList<ReactionCell>> readReactions(const QString& text, const QList<SymptomWord>& symptoms) {
    QStringList names;
    for (const SymptomWord& symptom : symptoms)
        names.append(symptom.name);
    QString rest = text;
    const bool another = takePlus(rest);
    const QStringList items = intake::feltItems(rest, names);
    QList<ReactionCell> cells;
    for (const QString& item : items.isEmpty() ? QStringList{QString()} : items) {
        Result<ReactionCell> cell = readReaction(item, symptoms);
        if (!cell)
            return passOn(cell);
        cell->another = another || !cells.isEmpty();
        if (cell->none && !cells.isEmpty())
            return problem(
                Problem::Kind::BadInput,
                DayCells::tr("\"%1\" does not go with a reaction; take one away.").arg(item));
        cells.append(*cell);
    }
    return cells;
}

} // namespace ladlework::ui
