#include "ui/families/need_model.h"

#include "ui/families/need_table.h"

#include <QAbstractItemModelTester>
#include <QSignalSpy>
#include <QTest>

#include <gtest/gtest.h>

namespace ladlework::ui {
namespace {

Need need(qint64 family, const QString& what,
          std::optional<Finding::Severity> severity = Finding::Severity::Caution) {
    return {FamilyId{family},
            QStringLiteral("Family %1").arg(family),
            severity,
            QStringLiteral("Mon"),
            what,
            QStringLiteral("log")};
}

} // namespace

class NeedModelTest : public ::testing::Test {};

TEST_F(NeedModelTest, showsWordFamilyAndWhat) {
    NeedModel model(nullptr);
    const QAbstractItemModelTester tester(&model,
                                          QAbstractItemModelTester::FailureReportingMode::Fatal);
    model.setNeeds(
        {need(1, QStringLiteral("Ask.")), need(2, QStringLiteral("Review"), std::nullopt)});
    EXPECT_EQ(model.index(0, 0).data().toString(), QStringLiteral("Caution"));
    EXPECT_EQ(model.index(1, 0).data().toString(), QStringLiteral("Mon"));
    EXPECT_EQ(model.index(1, 1).data().toString(), QStringLiteral("Family 2"));
    EXPECT_EQ(model.index(0, 2).data().toString(), QStringLiteral("Ask."));
    EXPECT_FALSE(model.index(1, 0).data(NeedModel::SeverityRole).isValid());
}

TEST_F(NeedModelTest, changesOnlyWhatDiffers) {
    NeedModel model(nullptr);
    const QAbstractItemModelTester tester(&model,
                                          QAbstractItemModelTester::FailureReportingMode::Fatal);
    model.setNeeds({need(1, QStringLiteral("a")), need(2, QStringLiteral("b"))});
    const QSignalSpy changed(&model, &QAbstractItemModel::dataChanged);
    const QSignalSpy inserted(&model, &QAbstractItemModel::rowsInserted);
    const QSignalSpy removed(&model, &QAbstractItemModel::rowsRemoved);
    model.setNeeds(
        {need(1, QStringLiteral("a")), need(2, QStringLiteral("c")), need(3, QStringLiteral("d"))});
    EXPECT_EQ(changed.count(), 1);
    EXPECT_EQ(inserted.count(), 1);
    model.setNeeds({need(1, QStringLiteral("a"))});
    EXPECT_EQ(removed.count(), 1);
    EXPECT_EQ(model.rowCount(), 1);
}

TEST_F(NeedModelTest, theTableLeadsToFamilyAndScreen) {
    NeedTable table(QStringLiteral("Needs"), nullptr);
    table.resize(600, 300);
    table.setNeeds({need(1, QStringLiteral("a")), need(7, QStringLiteral("b"))});
    table.show();
    const QSignalSpy wanted(&table, &NeedTable::wanted);
    table.setCurrentIndex(table.model()->index(1, 0));
    QTest::keyClick(&table, Qt::Key_Return);
    ASSERT_EQ(wanted.count(), 1);
    EXPECT_EQ(wanted.first().at(0).value<FamilyId>(), FamilyId{7});
    EXPECT_EQ(wanted.first().at(1).toString(), QStringLiteral("log"));
}

} // namespace ladlework::ui
