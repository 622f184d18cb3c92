#include "foundation/reference_table.h"

#include "kitchen_samples.h"

#include <QSet>

namespace ladlework::kitchen {

using samples::catalogue;

TEST(ReferenceTablesTest, EveryRowHasSourceAndBasis) {
    const QStringList words{QStringLiteral("published"), QStringLiteral("common practice"),
                            QStringLiteral("memory")};
    for (const char* name : {"animals", "containers", "cook-windows", "cooling", "cuts", "extras",
                             "figures", "phases"}) {
        const auto table = ReferenceTable::load(QLatin1String(name));
        ASSERT_TRUE(table) << toLine(table.error()).toStdString();
        ASSERT_GT(table->size(), 0) << name;
        for (qsizetype index = 0; index < table->size(); ++index) {
            const auto row = table->row(index);
            EXPECT_FALSE(row.text(QStringLiteral("source")).trimmed().isEmpty())
                << name << " row " << index;
            EXPECT_TRUE(words.contains(row.text(QStringLiteral("basis"))))
                << name << " row " << index;
        }
    }
}

TEST(ReferenceTablesTest, IdsStandOnce) {
    QSet<QString> ids;
    const auto add = [&ids](const QString& id) {
        EXPECT_FALSE(ids.contains(id)) << id.toStdString();
        ids.insert(id);
    };
    for (const Animal& animal : catalogue().animals())
        add(animal.id);
    for (const Cut& cut : catalogue().cuts())
        add(cut.id);
    for (const Extra& extra : catalogue().extras())
        add(extra.id);
}

TEST(ReferenceTablesTest, CutsConserveMass) {
    for (const Cut& cut : catalogue().cuts()) {
        SCOPED_TRACE(cut.id.toStdString());
        EXPECT_GE(cut.refuse, 0);
        EXPECT_LT(cut.refuse, 1);
        EXPECT_GE(cut.cookedEdible, 0);
        EXPECT_LE(cut.cookedEdible, 1 - cut.refuse);
        EXPECT_LE(cut.cookedEdible, cut.cookedWhole);
        EXPECT_LE(cut.cookedWhole, 1);
        const double edible = 1 - cut.refuse;
        const double waterAndFat = (cut.raw.waterG + cut.raw.fatG) / 100 * edible;
        // What leaves is water and fat of the meat, and a little of the bone's.
        EXPECT_LE(1 - cut.cookedWhole, waterAndFat + 0.10 * cut.refuse);
        EXPECT_LE(cut.raw.waterG + cut.raw.proteinG + cut.raw.fatG, 101.5);
        EXPECT_GE(cut.connective, 0);
        EXPECT_LE(cut.connective, 3);
        EXPECT_GT(cut.collagenShare, 0);
        EXPECT_LE(cut.collagenShare, 0.15);
        EXPECT_TRUE(!cut.bareBone || cut.cookedEdible == 0);
    }
}

TEST(ReferenceTablesTest, UncertainFiguresEncloseTheirValue) {
    const auto table = ReferenceTable::load(QStringLiteral("figures"));
    ASSERT_TRUE(table);
    for (qsizetype index = 0; index < table->size(); ++index) {
        const Figure& figure = catalogue().figure(table->row(index).text(QStringLiteral("id")));
        EXPECT_LE(figure.low, figure.value) << figure.id.toStdString();
        EXPECT_GE(figure.high, figure.value) << figure.id.toStdString();
    }
}

TEST(ReferenceTablesTest, AGuessedValueSaysSo) {
    for (const Cut& cut : catalogue().cuts()) {
        const bool guessed = cut.provenance.source.contains(QStringLiteral("proxy"));
        EXPECT_FALSE(guessed && cut.provenance.basis == QStringLiteral("published"))
            << cut.id.toStdString();
    }
}

} // namespace ladlework::kitchen
