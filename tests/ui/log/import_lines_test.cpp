#include "ui/log/import_lines.h"

#include "ui/log/import_model.h"
#include "ui/shared/family_workbook.h"

#include <QAbstractItemModelTester>
#include <gtest/gtest.h>

namespace ladlework::ui {

using Fate = ImportLine::Fate;

namespace {

class ImportLinesTest : public ::testing::Test {
protected:
    [[nodiscard]] Result<ImportPreview> preview(const QString& sheet) {
        return previewImport(sheet, m_family.casebook()->records(), FamilyWorkbook::today());
    }
    FamilyWorkbook m_family;
};

const auto sheet = QStringLiteral("day,member,amount,reaction,strength\n"
                                  "2026-11-03,Ana,1 1/2 cups,,\n"
                                  "2026-11-03,Zoe,1,,\n"
                                  "\n"
                                  "2026-11-03,Bo,missed,headache,2\n"
                                  "2026-11-05,Cy,1,,\n");

} // namespace

TEST_F(ImportLinesTest, EachLineSaysWhatBecomesOfIt) {
    const auto result = preview(sheet);
    ASSERT_TRUE(result);
    ASSERT_EQ(result->lines.size(), 4);
    EXPECT_EQ(result->lines.at(0).line, 2);
    EXPECT_EQ(result->lines.at(0).fate, Fate::Added);
    EXPECT_EQ(result->lines.at(0).words, QStringLiteral("Ana Hale, Tue, Nov 3, 2026: 1½ cups"));
    EXPECT_EQ(result->lines.at(1).fate, Fate::Refused);
    EXPECT_TRUE(result->lines.at(1).words.contains(QStringLiteral("Zoe")));
    EXPECT_EQ(result->lines.at(2).line, 5) << "counted as a person counts the lines";
    EXPECT_EQ(result->lines.at(2).words,
              QStringLiteral("Bo Hale, Tue, Nov 3, 2026: missed, Headache 2"));
    EXPECT_EQ(result->lines.at(3).fate, Fate::Refused) << "a day to come";
    EXPECT_EQ(result->count(Fate::Added), 2);
    EXPECT_EQ(result->count(Fate::Refused), 2);
}

TEST_F(ImportLinesTest, LinesOfATableKeepTheirNumbers) {
    QString tabs = sheet;
    tabs.replace(u',', u'\t');
    const auto commas = preview(sheet);
    const auto pasted = preview(tabs);
    ASSERT_TRUE(commas);
    ASSERT_TRUE(pasted);
    EXPECT_EQ(commas->lines, pasted->lines);
    // A cell with a comma or a line break in it stays one cell.
    const auto text = withCommas(QStringLiteral("day\tmember\tamount\tnote\n"
                                                "2026-11-03\tAna\t1\t\"warm, with\nsalt\"\n"
                                                "2026-11-03\tBo\t1\t\n"));
    const auto read = preview(text);
    ASSERT_TRUE(read);
    ASSERT_EQ(read->lines.size(), 2);
    EXPECT_EQ(read->lines.at(1).line, 4);
    EXPECT_EQ(read->report.additions.at(0).entry->note, QStringLiteral("warm, with\nsalt"));
}

TEST_F(ImportLinesTest, SheetThatCannotBeReadIsOneProblem) {
    for (const char* bad : {"2026-11-03,Ana,1\n", "day,member,colour\n", "day,member\n",
                            "day,member,amount\n2026-11-03,\"Ana,1\n"}) {
        SCOPED_TRACE(bad);
        const auto result = preview(QString::fromUtf8(bad));
        ASSERT_FALSE(result);
        EXPECT_FALSE(result.error().sentence.isEmpty());
    }
}

TEST_F(ImportLinesTest, ModelHoldsWithTheModelTester) {
    ImportModel model;
    const QAbstractItemModelTester tester(&model,
                                          QAbstractItemModelTester::FailureReportingMode::Fatal);
    model.setLines(preview(sheet)->lines);
    ASSERT_EQ(model.rowCount(), 4);
    EXPECT_EQ(model.index(0, ImportModel::FateColumn).data().toString(),
              QStringLiteral("will be added"));
    EXPECT_EQ(model.index(1, ImportModel::FateColumn).data().toString(), QStringLiteral("refused"));
    EXPECT_EQ(model.index(2, ImportModel::LineColumn).data().toInt(), 5);
    model.setLines({});
    EXPECT_EQ(model.rowCount(), 0);
}

} // namespace ladlework::ui
