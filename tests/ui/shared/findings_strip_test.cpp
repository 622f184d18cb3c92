#include "ui/shared/findings_strip.h"

#include "ui/shared/finding_line.h"

#include <QApplication>
#include <QLabel>
#include <QScrollArea>
#include <QScrollBar>
#include <QSignalSpy>
#include <QToolButton>
#include <QVBoxLayout>

#include <gtest/gtest.h>

namespace ladlework::ui {
namespace {

Finding finding(Finding::Severity severity, const QString& text) {
    Finding one;
    one.severity = severity;
    one.code = QStringLiteral("test");
    one.text = text;
    return one;
}

QStringList textsOf(const QWidget& widget) {
    QStringList texts;
    for (const QLabel* label : widget.findChildren<QLabel*>())
        texts << label->text();
    return texts;
}

} // namespace

class FindingsStripTest : public ::testing::Test {
protected:
    FindingsStripTest() { m_strip.resize(600, 200); }
    FindingsStrip m_strip;
};

TEST_F(FindingsStripTest, foldsAwayWhenThereIsNothingToSay) {
    EXPECT_TRUE(m_strip.isHidden());
    m_strip.setFindings({finding(Finding::Severity::Note, QStringLiteral("A note."))});
    EXPECT_FALSE(m_strip.isHidden());
    m_strip.setFindings({});
    EXPECT_TRUE(m_strip.isHidden());
}

TEST_F(FindingsStripTest, worstFirstEachWithItsWord) {
    m_strip.setFindings({finding(Finding::Severity::Note, QStringLiteral("A note.")),
                         finding(Finding::Severity::Stop, QStringLiteral("A stop.")),
                         finding(Finding::Severity::Caution, QStringLiteral("A caution."))});
    const auto lines = m_strip.findChildren<FindingLine*>();
    ASSERT_EQ(lines.size(), 3);
    EXPECT_TRUE(textsOf(*lines[0]).contains(QStringLiteral("Stop")));
    EXPECT_TRUE(textsOf(*lines[1]).contains(QStringLiteral("Caution")));
    EXPECT_TRUE(textsOf(*lines[2]).contains(QStringLiteral("Note")));
    EXPECT_TRUE(textsOf(m_strip).contains(QStringLiteral("1 stop, 1 caution, 1 note")));
}

TEST_F(FindingsStripTest, numberLimitAndSourceAreThere) {
    Finding one = finding(Finding::Severity::Caution, QStringLiteral("More water than usual."));
    one.value = 2140.4;
    one.limit = 2086;
    one.unit = QStringLiteral("mL/kg");
    one.why = QStringLiteral("It dilutes.");
    one.source = QStringLiteral("common practice");
    using quantity::MeasureSystem;
    EXPECT_EQ(numberAgainstLimit(one, MeasureSystem::Metric),
              QStringLiteral("2,140 mL/kg, limit 2,086 mL/kg"));
    Finding volume = one;
    volume.unit = QStringLiteral("mL");
    volume.value = 946.353; // a US quart, NIST Handbook 44
    volume.limit = 473.176; // half of it
    EXPECT_EQ(numberAgainstLimit(volume, MeasureSystem::UsCustomary),
              QStringLiteral("4 cups, limit 2 cups"));
    volume.limit = 946.0;
    EXPECT_EQ(numberAgainstLimit(volume, MeasureSystem::UsCustomary),
              QStringLiteral("946 mL, limit 946 mL"))
        << "what a kitchen cannot tell apart is not said in its words";
    volume.limit.reset();
    EXPECT_TRUE(numberAgainstLimit(volume, MeasureSystem::Metric).isEmpty());
    m_strip.setFindings({one});
    m_strip.show();
    QToolButton* why = nullptr;
    for (auto* button : m_strip.findChildren<QToolButton*>()) {
        if (button->text() == QStringLiteral("Why"))
            why = button;
    }
    ASSERT_NE(why, nullptr);
    const int before = m_strip.sizeHint().height();
    why->click();
    QApplication::processEvents();
    const QString details = QStringLiteral("It dilutes.\nSource: common practice");
    EXPECT_TRUE(textsOf(m_strip).contains(details));
    EXPECT_GT(m_strip.sizeHint().height(), before);
}

TEST_F(FindingsStripTest, leadsToTheFieldThatCausesIt) {
    Finding one = finding(Finding::Severity::Caution, QStringLiteral("More water than usual."));
    one.field = QStringLiteral("water");
    m_strip.setFindings({one});
    const QSignalSpy wanted(&m_strip, &FindingsStrip::fieldWanted);
    for (auto* button : m_strip.findChildren<QToolButton*>()) {
        if (button->text() == QStringLiteral("Show"))
            button->click();
    }
    ASSERT_EQ(wanted.count(), 1);
    EXPECT_EQ(wanted.at(0).at(0).toString(), QStringLiteral("water"));
}

TEST_F(FindingsStripTest, newFindingsHaveTheirRoomAtOnce) {
    m_strip.show();
    m_strip.setFindings({finding(Finding::Severity::Note, QStringLiteral("A note."))});
    const int one = m_strip.sizeHint().height();
    m_strip.setFindings({finding(Finding::Severity::Note, QStringLiteral("A note.")),
                         finding(Finding::Severity::Stop, QStringLiteral("A stop."))});
    const int two = m_strip.sizeHint().height();
    EXPECT_GE(two - one, m_strip.fontMetrics().height());
    EXPECT_GE(one, 2 * m_strip.fontMetrics().height());
}

TEST_F(FindingsStripTest, muchToSayScrollsInsteadOfGrowing) {
    Findings many;
    for (int index = 0; index < 40; ++index)
        many << finding(Finding::Severity::Note, QStringLiteral("Note number %1.").arg(index));
    m_strip.setFindings(many);
    m_strip.show();
    QApplication::processEvents();
    EXPECT_LT(m_strip.sizeHint().height(), 400);
    EXPECT_GT(m_strip.findChild<QScrollArea*>()->verticalScrollBar()->maximum(), 0);
}

TEST_F(FindingsStripTest, takesOnlyItsPartOfALowWindow) {
    QWidget window;
    auto* layout = new QVBoxLayout(&window);
    auto* strip = new FindingsStrip;
    layout->addStretch(1);
    layout->addWidget(strip);
    QFont large = window.font();
    large.setPointSizeF(large.pointSizeF() * 2);
    strip->setFont(large);
    window.resize(700, 400);
    window.show();
    Findings many;
    for (int index = 0; index < 9; ++index)
        many << finding(Finding::Severity::Note, QStringLiteral("Note number %1.").arg(index));
    strip->setFindings(many);
    QApplication::processEvents();
    EXPECT_LE(strip->height(), 400 / 3) << "head and one line";
    const int low = strip->height();
    window.resize(700, 1000);
    QApplication::processEvents();
    EXPECT_GT(strip->height(), low) << "more room, more lines";
}

} // namespace ladlework::ui
