#include "app/command.h"
#include "exchange/invented_practice.h"
#include "exchange/sample_practice.h"
#include "store/workbook.h"

#include <QCoreApplication>
#include <QFileInfo>
#include <limits>
#include <stdexcept>

namespace ladlework::app {

namespace {

QString say(const char* sentence) {
    return QCoreApplication::translate("CommandLine", sentence);
}

/// The size asked for; nothing when the sample itself is meant.
Result<std::optional<exchange::InventedSize>> sizeFrom(const Words& words) {
    const QString families = QStringLiteral("families");
    const QString years = QStringLiteral("years");
    const QString seed = QStringLiteral("seed");
    if (!words.has(families)) {
        if (words.has(years) || words.has(seed))
            return problem(Problem::Kind::BadInput,
                           say("--years and --seed go with --families; add it."));
        return std::optional<exchange::InventedSize>();
    }
    const auto familyCount = words.number(families, 1, 1, 2000);
    const auto yearCount = words.number(years, 1, 1, 30);
    const auto seedNumber = words.number(seed, 1, 0, std::numeric_limits<qint64>::max());
    for (const auto* number : {&familyCount, &yearCount, &seedNumber})
        if (!*number)
            return passOn(*number);
    return std::optional(exchange::InventedSize{static_cast<int>(*familyCount),
                                                static_cast<int>(*yearCount),
                                                static_cast<quint64>(*seedNumber)});
}

} // namespace

Result<Answer> runSample(const Words& words, const Outside& outside) {
    const QString path = words.at(0);
    const auto size = sizeFrom(words);
    if (!size)
        return passOn(size);
    if (const Outcome folder = checkFolder(path); !folder)
        return tl::unexpected<Problem>(folder.error());
    if (QFileInfo::exists(path))
        return problem(Problem::Kind::Refused, say("The file is there already; name a new one."),
                       path);
    const kitchen::Catalogue catalogue = valueOrThrow(kitchen::Catalogue::load());
    const auto workbook =
        *size ? exchange::createInventedPractice(path, **size, catalogue, outside.clock)
              : exchange::createSamplePractice(path, catalogue, outside.clock);
    if (!workbook)
        return inFile(path, workbook.error());
    const QJsonObject json{
        {QStringLiteral("workbook"), path},
        {QStringLiteral("families"), static_cast<int>((*workbook)->families().families().size())}};
    return Answer{json, std::nullopt};
}

} // namespace ladlework::app
