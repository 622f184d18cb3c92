#include "ui/families/families_model.h"

#include "ui/shared/workbook_fixture.h"

#include <QAbstractItemModelTester>
#include <QSignalSpy>

namespace ladlework::ui {

class FamiliesModelTest : public WorkbookFixture {
protected:
    static QStringList names(const FamiliesModel& model) {
        QStringList all;
        for (int row = 0; row < model.rowCount(); ++row)
            all << model.index(row).data().toString();
        return all;
    }
    void read(const AttentionReader& reader) {
        ASSERT_TRUE(waitFor([&] { return reader.isFinished(); }));
    }
};

TEST_F(FamiliesModelTest, theWorstComesFirstThenTheName) {
    addFamily(QStringLiteral("Ash"));
    addFamily(QStringLiteral("Birch"));
    addLadder(addMember(addFamily(QStringLiteral("Cedar")), QStringLiteral("Ana")));
    addFamily(QStringLiteral("Dogwood"), people::Family::Status::Active, m_today);
    AttentionReader reader(*m_context, nullptr);
    FamiliesModel model(reader, nullptr);
    const QAbstractItemModelTester tester(&model,
                                          QAbstractItemModelTester::FailureReportingMode::Fatal);
    read(reader);
    // Cedar: ten days without an entry, a caution. Dogwood: a review today, a note.
    EXPECT_EQ(names(model), (QStringList{QStringLiteral("Cedar"), QStringLiteral("Dogwood"),
                                         QStringLiteral("Ash"), QStringLiteral("Birch")}));
    EXPECT_EQ(model.index(0).data(FamiliesModel::SeverityRole).toInt(),
              static_cast<int>(Finding::Severity::Caution));
    EXPECT_FALSE(model.index(0).data(FamiliesModel::WordsRole).toString().isEmpty());
    EXPECT_TRUE(
        model.index(0).data(Qt::AccessibleTextRole).toString().contains(QStringLiteral("Caution")));
    EXPECT_FALSE(model.index(2).data(FamiliesModel::SeverityRole).isValid());
}

TEST_F(FamiliesModelTest, restingAndFinishedAreFoldedAtTheEnd) {
    addFamily(QStringLiteral("Ash"), people::Family::Status::Finished);
    addFamily(QStringLiteral("Birch"), people::Family::Status::Resting);
    const FamilyId cedar = addFamily(QStringLiteral("Cedar"));
    AttentionReader reader(*m_context, nullptr);
    FamiliesModel model(reader, nullptr);
    const QAbstractItemModelTester tester(&model,
                                          QAbstractItemModelTester::FailureReportingMode::Fatal);
    read(reader);
    const QString fold = QStringLiteral("Resting and finished (2)");
    EXPECT_EQ(names(model), (QStringList{QStringLiteral("Cedar"), fold}));
    EXPECT_EQ(model.familyAt(model.index(1)), FamilyId());
    model.setOpen(true);
    EXPECT_EQ(names(model), (QStringList{QStringLiteral("Cedar"), fold, QStringLiteral("Ash"),
                                         QStringLiteral("Birch")}));
    EXPECT_EQ(model.index(3).data(FamiliesModel::WordsRole).toString(), QStringLiteral("Resting"));
    model.setOpen(false);
    EXPECT_EQ(model.rowCount(), 2);
    EXPECT_EQ(model.indexOf(cedar).row(), 0);
}

TEST_F(FamiliesModelTest, theSearchLooksThroughAllOfThem) {
    addFamily(QStringLiteral("Ash and Oak"));
    addFamily(QStringLiteral("Oakes"), people::Family::Status::Resting);
    addFamily(QStringLiteral("Birch"));
    AttentionReader reader(*m_context, nullptr);
    FamiliesModel model(reader, nullptr);
    const QAbstractItemModelTester tester(&model,
                                          QAbstractItemModelTester::FailureReportingMode::Fatal);
    model.setSearch(QStringLiteral("oak"));
    EXPECT_EQ(names(model), (QStringList{QStringLiteral("Ash and Oak"), QStringLiteral("Oakes")}));
    model.setSearch(QStringLiteral("oak ash"));
    EXPECT_EQ(names(model), QStringList{QStringLiteral("Ash and Oak")});
    model.setSearch(QStringLiteral("elm"));
    EXPECT_EQ(model.rowCount(), 0);
    model.setSearch({});
    EXPECT_EQ(model.rowCount(), 3);
}

TEST_F(FamiliesModelTest, rowsMoveInsteadOfBeingThrownAway) {
    addFamily(QStringLiteral("Ash"));
    const FamilyId birch = addFamily(QStringLiteral("Birch"));
    AttentionReader reader(*m_context, nullptr);
    FamiliesModel model(reader, nullptr);
    const QAbstractItemModelTester tester(&model,
                                          QAbstractItemModelTester::FailureReportingMode::Fatal);
    read(reader);
    const QPersistentModelIndex kept = model.indexOf(birch);
    const QSignalSpy reset(&model, &QAbstractItemModel::modelReset);
    addLadder(addMember(birch, QStringLiteral("Ana")));
    reader.refresh(birch);
    read(reader);
    EXPECT_EQ(names(model).first(), QStringLiteral("Birch"));
    EXPECT_EQ(kept.row(), 0);
    EXPECT_EQ(reset.count(), 0);
}

} // namespace ladlework::ui
