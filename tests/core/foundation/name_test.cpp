#include "foundation/name.h"

#include <gtest/gtest.h>

namespace ladlework {
namespace {

TEST(NameTest, TrimsAndKeepsOneLine) {
    const std::pair<QString, QString> cases[] = {
        {QStringLiteral("Marigold"), QStringLiteral("Marigold")},
        {QStringLiteral("  Ann  Lee\t"), QStringLiteral("Ann Lee")},
        {QStringLiteral("two\r\nlines"), QStringLiteral("two lines")},
        {QStringLiteral("\u00a0Zo\u00eb\u00a0"), QStringLiteral("Zo\u00eb")},
        {QString(Name::longest, QLatin1Char('x')), QString(Name::longest, QLatin1Char('x'))},
    };
    for (const auto& [typed, kept] : cases) {
        const Result<Name> name = Name::from(typed, QStringLiteral("family"));
        ASSERT_TRUE(name.has_value()) << typed.toStdString();
        EXPECT_EQ(name->text(), kept);
    }
}

TEST(NameTest, RefusesBlankAndOverlongNames) {
    for (const QString& typed : {QString(), QStringLiteral("  \n\t"), QStringLiteral("\u2003"),
                                 QString(Name::longest + 1, QLatin1Char('x'))}) {
        const Result<Name> name = Name::from(typed, QStringLiteral("family"));
        ASSERT_FALSE(name.has_value());
        EXPECT_EQ(name.error().kind, Problem::Kind::BadInput);
        EXPECT_TRUE(name.error().sentence.contains(QStringLiteral("family")));
    }
}

TEST(NameTest, ComparesByText) {
    const QString what = QStringLiteral("family");
    EXPECT_EQ(*Name::from(QStringLiteral(" Ann"), what), *Name::from(QStringLiteral("Ann "), what));
    EXPECT_NE(*Name::from(QStringLiteral("Ann"), what), *Name::from(QStringLiteral("ann"), what));
}

} // namespace
} // namespace ladlework
