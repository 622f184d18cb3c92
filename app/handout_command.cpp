#include "app/command.h"
#include "casebook/casebook.h"
#include "handout/family_handout.h"
#include "store/workbook.h"
#include "week/week_plan.h"

#include <QCoreApplication>
#include <QJsonArray>
#include <stdexcept>

namespace ladlework::app {

namespace {

QString say(const char* sentence) {
    return QCoreApplication::translate("CommandLine", sentence);
}

tl::unexpected<Problem> badOption(const QString& option, const QString& words) {
    return problem(Problem::Kind::BadInput, say("This must be %1.").arg(words),
                   QStringLiteral("--") + option);
}

Result<handout::HandoutOptions> optionsFrom(const Words& words) {
    handout::HandoutOptions options;
    const auto week = words.needed(QStringLiteral("week"));
    if (!week)
        return passOn(week);
    const QDate day = QDate::fromString(*week, QStringLiteral("yyyy-MM-dd"));
    if (!day.isValid() || week->size() != 10)
        return badOption(QStringLiteral("week"), say("a day written as YYYY-MM-DD"));
    options.week = week::weekStart(day);
    options.largePrint = words.has(QStringLiteral("large-print"));

    const QString names = words.value(QStringLiteral("names"));
    if (names == QStringLiteral("full"))
        options.names = handout::Names::Full;
    else if (names == QStringLiteral("none"))
        options.names = handout::Names::None;
    else if (words.has(QStringLiteral("names")) && names != QStringLiteral("first"))
        return badOption(QStringLiteral("names"), say("full, first or none"));

    const QString paper = words.value(QStringLiteral("paper"));
    if (paper == QStringLiteral("letter"))
        options.paper = people::Paper::Letter;
    else if (paper == QStringLiteral("a4"))
        options.paper = people::Paper::A4;
    else if (words.has(QStringLiteral("paper")))
        return badOption(QStringLiteral("paper"), say("letter or a4"));
    return options;
}

QJsonObject describe(const handout::Document& document, const QString& out, const Words& words,
                     QDate week) {
    QJsonArray cards;
    for (const handout::Card& card : document.cards)
        cards.append(card.title);
    const QString monday = week.toString(Qt::ISODate);
    QJsonObject json{{QStringLiteral("out"), out},
                     {QStringLiteral("title"), document.title},
                     {QStringLiteral("week"), monday},
                     {QStringLiteral("cards"), cards}};
    if (words.value(QStringLiteral("week")) != monday)
        json.insert(QStringLiteral("remark"),
                    say("%1 is no Monday; the week that holds it begins on %2.")
                        .arg(words.value(QStringLiteral("week")), monday));
    return json;
}

} // namespace

Result<Answer> runHandout(const Words& words, const Outside& outside) {
    const auto family = words.needed(QStringLiteral("family"));
    const auto out = words.needed(QStringLiteral("out"));
    for (const auto* needed : {&family, &out})
        if (!*needed)
            return passOn(*needed);
    const auto options = optionsFrom(words);
    if (!options)
        return passOn(options);
    if (const Outcome folder = checkFolder(*out); !folder)
        return tl::unexpected<Problem>(folder.error());

    const Result<kitchen::Catalogue> catalogue = kitchen::Catalogue::load();
    if (!catalogue)
        throw std::runtime_error(toLine(catalogue.error()).toStdString());
    const auto workbook = openWorkbook(words.at(0), outside);
    if (!workbook)
        return passOn(workbook);
    const auto id = familyNamed(**workbook, *family);
    if (!id)
        return passOn(id);
    const auto records = (*workbook)->records(*id);
    if (!records)
        return inFile(words.at(0), records.error());

    const casebook::Casebook casebook(*records, *catalogue,
                                      outside.clock.today(records->family.zone));
    const handout::Document document = handout::familyHandout(casebook, *options);
    if (const Outcome written = outside.writePdf(document, *out); !written)
        return inFile(*out, written.error());
    return Answer{describe(document, *out, words, options->week), std::nullopt};
}

} // namespace ladlework::app
