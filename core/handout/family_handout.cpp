#include "handout/family_handout.h"

#include "foundation/day_words.h"
#include "handout/cards.h"
#include "handout/page_language.h"

#include <QCoreApplication>
#include <algorithm>

namespace ladlework::handout {

namespace {
struct Words {
    Q_DECLARE_TR_FUNCTIONS(Handout)
};

QStringList partsOf(const QString& name) {
    return name.simplified().split(QLatin1Char(' '), Qt::SkipEmptyParts);
}

/// "Ana", and with `initial` "Ana L." when there is a last name.
QString firstName(const QString& name, bool initial) {
    const QStringList parts = partsOf(name);
    if (parts.isEmpty())
        return {};
    if (!initial || parts.size() < 2)
        return parts.first();
    return QStringLiteral("%1 %2.").arg(parts.first(), parts.last().first(1).toUpper());
}

/// How often another member would be called the same, and the place among those.
struct Namesakes {
    int count = 0;
    int place = 0; ///< from 1
};

Namesakes namesakes(const QList<people::Member>& members, MemberId member, const QString& called,
                    bool initial) {
    Namesakes found;
    for (const people::Member& other : members) {
        if (firstName(other.name, initial).compare(called, Qt::CaseInsensitive) != 0)
            continue;
        ++found.count;
        if (other.id == member)
            found.place = found.count;
    }
    return found;
}

QString titleOf(const PageContext& context) {
    const QString family = context.familyCalled();
    const QString start = dayInWords(context.options().week);
    return family.isEmpty() ? Words::tr("Week of %1").arg(start)
                            : Words::tr("%1 - week of %2").arg(family, start);
}
} // namespace

QString calledName(const casebook::Casebook& casebook, MemberId member, Names names) {
    const QList<people::Member>& members = casebook.records().members;
    const auto found = std::ranges::find(members, member, &people::Member::id);
    if (found == members.end())
        return {};
    if (names == Names::None)
        return Words::tr("Member %1").arg(found - members.begin() + 1);
    if (names == Names::Full)
        return found->name;
    QString called = firstName(found->name, false);
    if (namesakes(members, member, called, false).count < 2)
        return called;
    called = firstName(found->name, true);
    const Namesakes same = namesakes(members, member, called, true);
    return same.count < 2 ? called : QStringLiteral("%1 %2").arg(called).arg(same.place);
}

namespace {
Document compose(const casebook::Casebook& casebook, const HandoutOptions& options,
                 const QString& language) {
    const PageContext context(casebook, options);
    Document document;
    document.language = language;
    document.title = titleOf(context);
    document.author = context.practice().name;
    document.footer = document.title;
    document.printedOn = dayInWords(casebook.today());
    document.paper = options.paper.value_or(casebook.records().family.paper);
    document.largePrint = options.largePrint;
    document.cards.append(coverCard(context));
    document.cards.append(weekCard(context));
    const QList<const kitchen::Pot*> pots = context.pots();
    for (const kitchen::Pot* pot : pots)
        document.cards.append(potCard(context, *pot));
    for (const casebook::Standing& standing : casebook.standings()) {
        if (standing.ladder && !isTooYoung(standing))
            document.cards.append(ladderCard(context, standing));
    }
    if (!pots.isEmpty())
        document.cards.append(shoppingCard(context));
    document.cards.append(keepingCard(context));
    document.cards.append(cautionsCard(context));
    return document;
}
} // namespace

Document familyHandout(const casebook::Casebook& casebook, const HandoutOptions& options) {
    const people::Family& family = casebook.records().family;
    const QString language = pageLanguage(options.language, family.handoutLanguage);
    const LanguageScope scope(language, pageLocale(language, family.measures));
    if (language == programLanguage())
        return compose(casebook, options, language);
    // The catalogue and the casebook hold words of the program's language: names of cuts, findings,
    // cautions. Made anew within the scope, they speak that of the page.
    const kitchen::Catalogue catalogue = valueOrThrow(kitchen::Catalogue::load());
    return compose(casebook::Casebook(casebook.records(), catalogue, casebook.today()), options,
                   language);
}

} // namespace ladlework::handout
