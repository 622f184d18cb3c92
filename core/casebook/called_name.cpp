#include "casebook/called_name.h"

#include <QCoreApplication>
#include <algorithm>

namespace ladlework::casebook {

namespace {
struct Words {
    Q_DECLARE_TR_FUNCTIONS(Handout)
};

/// As many first names as a footer holds.
constexpr qsizetype mostNames = 4;

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
} // namespace

QString calledName(const Casebook& casebook, MemberId member, Names names) {
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

QString calledFamily(const Casebook& casebook, Names names) {
    if (names == Names::None)
        return {};
    if (names == Names::Full)
        return casebook.records().family.name;
    QStringList called;
    for (const people::Member& member : casebook.records().members)
        called.append(calledName(casebook, member.id, names));
    if (called.size() <= mostNames)
        return called.join(QStringLiteral(", "));
    // Never one more alone, so that the text reads right without the file of plural forms.
    const auto more = static_cast<int>(called.size() - mostNames + 1);
    return Words::tr("%1 and %n more", nullptr, more)
        .arg(called.first(mostNames - 1).join(QStringLiteral(", ")));
}

} // namespace ladlework::casebook
