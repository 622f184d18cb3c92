#include "app/command.h"
#include "casebook/casebook.h"
#include "foundation/language_scope.h"
#include "handout/family_handout.h"
#include "week/week_plan.h"

#include <QCoreApplication>
#include <QFileInfo>
#include <QJsonArray>
#include <stdexcept>

namespace ladlework::app {

namespace {

QStringList languageIds() {
    QStringList ids;
    for (const Language& language : shippedLanguages())
        ids.append(language.id);
    return ids;
}

QString say(const char* sentence) {
    return QCoreApplication::translate("CommandLine", sentence);
}

/// The folder for the pictures must be there.
Outcome checkPictures(const Words& words) {
    const QString option = QStringLiteral("png");
    if (!words.has(option))
        return {};
    const auto folder = words.needed(option);
    if (!folder)
        return passOn(folder);
    if (QFileInfo(*folder).isDir())
        return {};
    return problem(Problem::Kind::BadInput, say("There is no such folder to write to."), *folder);
}

/// Takes the parts and the size of type from a template of the workbook, by its name (case does not
/// matter). --large-print is large print also where the template is not.
Outcome useTemplate(handout::HandoutOptions& options, const Words& words,
                    const casebook::FamilyRecords& records) {
    const QString option = QStringLiteral("template");
    if (!words.has(option))
        return {};
    const auto name = words.needed(option);
    if (!name)
        return passOn(name);
    QStringList known;
    for (const casebook::HandoutTemplate& kept : records.handoutTemplates) {
        if (kept.name.compare(name->trimmed(), Qt::CaseInsensitive) == 0) {
            options.sections = kept.sections;
            options.largePrint = options.largePrint || kept.largePrint;
            return {};
        }
        known << QStringLiteral("\"%1\"").arg(kept.name);
    }
    if (known.isEmpty())
        return problem(Problem::Kind::NotFound,
                       say("The workbook has no templates of handouts; keep one in the window."),
                       QStringLiteral("--") + option);
    return problem(Problem::Kind::NotFound,
                   say("The workbook has no template called \"%1\"; it has %2.")
                       .arg(*name, known.join(QStringLiteral(", "))),
                   QStringLiteral("--") + option);
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

    options.language = words.value(QStringLiteral("language"));
    if (words.has(QStringLiteral("language")) && !isShippedLanguage(options.language))
        return badOption(QStringLiteral("language"), languageIds().join(say(" or ")));
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
                     {QStringLiteral("language"), document.language},
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
    if (const Outcome folder = checkPictures(words); !folder)
        return passOn(folder);

    const kitchen::Catalogue catalogue = valueOrThrow(kitchen::Catalogue::load());
    const auto open = openFamily(words, store::Opening::ToRead, outside);
    if (!open)
        return passOn(open);
    const casebook::Casebook casebook(open->records, catalogue,
                                      outside.clock.today(open->records.family.zone));
    handout::HandoutOptions chosen = *options;
    if (const Outcome used = useTemplate(chosen, words, open->records); !used)
        return passOn(used);
    const handout::Document document = handout::familyHandout(casebook, chosen);
    const auto pictures = outside.writePages(document, *out, words.value(QStringLiteral("png")));
    if (!pictures)
        return inFile(*out, pictures.error());
    QJsonObject json = describe(document, *out, words, chosen.week);
    if (words.has(QStringLiteral("png")))
        json.insert(QStringLiteral("pictures"), QJsonArray::fromStringList(*pictures));
    return Answer{json, std::nullopt};
}

} // namespace ladlework::app
