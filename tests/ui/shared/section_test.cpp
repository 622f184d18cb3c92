#include "ui/shared/section.h"

#include "ui/shared/empty_state.h"

#include <QApplication>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include <gtest/gtest.h>

namespace ladlework::ui {

class SectionTest : public ::testing::Test {};

TEST_F(SectionTest, holdsTitleRemarkActionAndBody) {
    Section section(QStringLiteral("On the stove"));
    section.setRemark(QStringLiteral("two pots"));
    auto* button = new QPushButton(QStringLiteral("Plan"));
    section.addAction(button);
    section.body()->addWidget(new QLabel(QStringLiteral("Chicken legs")));
    section.show();
    QStringList texts;
    for (const QLabel* label : section.findChildren<QLabel*>()) {
        if (label->isVisible())
            texts << label->text();
    }
    EXPECT_EQ(texts, (QStringList{QStringLiteral("On the stove"), QStringLiteral("two pots"),
                                  QStringLiteral("Chicken legs")}));
    EXPECT_TRUE(button->isVisible());
    EXPECT_EQ(section.accessibleName(), QStringLiteral("On the stove"));
    section.setRemark({});
    EXPECT_FALSE(section.findChildren<QLabel*>().at(1)->isVisible());
}

TEST_F(SectionTest, anEmptyStateSaysWhatIsNext) {
    const EmptyState state(QStringLiteral("No families yet"), QStringLiteral("Families live here."),
                           QStringLiteral("Take on your first family"));
    EXPECT_EQ(state.button()->text(), QStringLiteral("Take on your first family"));
    EXPECT_FALSE(state.button()->isHidden());
    const EmptyState calm(QStringLiteral("All well"), QStringLiteral("Nothing to do."), {});
    EXPECT_TRUE(calm.button()->isHidden());
}

} // namespace ladlework::ui
