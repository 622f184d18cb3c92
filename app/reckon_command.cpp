#include "app/command.h"
#include "foundation/json_reader.h"
#include "intake/reckon_ladder.h"
#include "kitchen/reckon_pot.h"

#include <QCoreApplication>
#include <stdexcept>

namespace ladlework::app {

namespace {

QString say(const char* sentence) {
    return QCoreApplication::translate("CommandLine", sentence);
}

Result<QJsonObject> reckonPot(const QJsonObject& input) {
    const Result<kitchen::Catalogue> catalogue = kitchen::Catalogue::load();
    if (!catalogue)
        throw std::runtime_error(toLine(catalogue.error()).toStdString());
    return kitchen::reckonPot(input, *catalogue);
}

} // namespace

Result<Answer> runReckon(const Words& words, const Outside& /*outside*/) {
    const QString what = words.at(0);
    if (what != QStringLiteral("pot") && what != QStringLiteral("ladder"))
        return problem(
            Problem::Kind::BadInput,
            say("\"%1\" cannot be reckoned; the computations are pot and ladder.").arg(what));

    const QString path = words.at(1);
    const Result<QByteArray> json = readInput(path);
    if (!json)
        return passOn(json);
    const Result<QJsonObject> input = parseJsonObject(*json);
    if (!input)
        return inFile(path, input.error());
    const Result<QJsonObject> output =
        what == QStringLiteral("pot") ? reckonPot(*input) : intake::reckonLadder(*input);
    if (!output)
        return inFile(path, output.error());
    return Answer{*output, std::nullopt};
}

} // namespace ladlework::app
