#include "app/command.h"
#include "casebook/casebook.h"
#include "handout/family_handout.h"
#include "week/week_plan.h"

#include <QCoreApplication>
#include <QJsonArray>
#include <stdexcept>

namespace ladlework::app {

namespace {

QString say(const char* sentence) {
    return QCoreApplication::translate("CommandLine", sentence);
}

Result<handout::HandoutOptions> optionsFrom(const Words& words, QDate today) {
    handout::HandoutOptions options;
    const auto day = words.neededDay(QStringLiteral("week"), today);
    if (!day)
        return passOn(day);
    options.week = week::weekStart(*day);
    options.largePrint = words.has(QStringLiteral("large-print"));

    const auto names = namesFrom(words);
    if (!names)
        return passOn(names);
    options.names = *names;

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
    const auto options = optionsFrom(words, outside.clock.nowUtc().date());
    if (!options)
        return passOn(options);
    const auto out = words.needed(QStringLiteral("out"));
    if (!out)
        return passOn(out);
    if (const Outcome target = checkTarget(*out, words.at(0)); !target)
        return passOn(target);

    const kitchen::Catalogue catalogue = valueOrThrow(kitchen::Catalogue::load());
    const auto open = openFamily(words, store::Opening::ToRead, outside);
    if (!open)
        return passOn(open);
    const casebook::Casebook casebook(open->records, catalogue,
                                      outside.clock.today(open->records.family.zone));
    const handout::Document document = handout::familyHandout(casebook, *options);
    if (const Outcome written = outside.writePdf(document, *out); !written)
        return inFile(*out, written.error());
    return Answer{describe(document, *out, words, options->week), std::nullopt};
}

} // namespace ladlework::app
