#include "app/command.h"
#include "foundation/json_reader.h"
#include "intake/reckon_ladder.h"
#include "intake/reckon_patterns.h"
#include "kitchen/reckon_cooling.h"
#include "kitchen/reckon_pot.h"
#include "week/reckon_week.h"

#include <QCoreApplication>
#include <algorithm>
#include <array>
#include <stdexcept>

namespace ladlework::app {

namespace {

QString say(const char* sentence) {
    return QCoreApplication::translate("CommandLine", sentence);
}

Result<QJsonObject> reckonPot(const QJsonObject& input) {
    const kitchen::Catalogue catalogue = valueOrThrow(kitchen::Catalogue::load());
    return kitchen::reckonPot(input, catalogue);
}

struct Computation {
    QLatin1String name;
    Result<QJsonObject> (*reckon)(const QJsonObject&) = nullptr;
};

const std::array computations{
    Computation{QLatin1String("pot"), reckonPot},
    Computation{QLatin1String("cooling"), kitchen::reckonCooling},
    Computation{QLatin1String("ladder"), intake::reckonLadder},
    Computation{QLatin1String("patterns"), intake::reckonPatterns},
    Computation{QLatin1String("week"), week::reckonWeek},
};

/// "pot, ladder and patterns"
QString namesOfAll() {
    QStringList names;
    for (const Computation& each : computations)
        names.append(each.name);
    const QString last = names.takeLast();
    return say("%1 and %2").arg(names.join(QStringLiteral(", ")), last);
}

} // namespace

Result<Answer> runReckon(const Words& words, const Outside& /*outside*/) {
    const QString what = words.at(0);
    const auto computation = std::ranges::find(computations, what, &Computation::name);
    if (computation == computations.end())
        return problem(
            Problem::Kind::BadInput,
            say("\"%1\" cannot be reckoned; the computations are %2.").arg(what, namesOfAll()));

    const QString path = words.at(1);
    const Result<QByteArray> json = readInput(path);
    if (!json)
        return passOn(json);
    const Result<QJsonObject> input = parseJsonObject(*json);
    if (!input)
        return inFile(path, input.error());
    const Result<QJsonObject> output = computation->reckon(*input);
    if (!output)
        return inFile(path, output.error());
    return Answer{*output, std::nullopt};
}

} // namespace ladlework::app
