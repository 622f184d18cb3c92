#include "ui/handout/handout_screen.h"

#include "ui/handout/given_panel.h"
#include "ui/handout/pages_preview.h"
#include "ui/print/page_painter.h"
#include "ui/shared/family_workbook.h"

#include <QAbstractButton>
#include <QAction>
#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QFile>
#include <QListView>
#include <QPlainTextEdit>
#include <QTest>
#include <gtest/gtest.h>

namespace ladlework::ui {

namespace {

class HandoutScreenTest : public ::testing::Test {
protected:
    HandoutScreenTest() : m_screen(m_family.context(), nullptr) {
        m_family.plan(FamilyWorkbook::monday(),
                      {week::Placement{FamilyWorkbook::today(), m_family.beef, QTime(9, 0)}});
        m_family.attach(m_screen);
        m_screen.setPrinting([this](QWidget*, const PageLayout& layout, const QString&) {
            m_printed << layout.pages.size();
            return m_printerAnswer;
        });
        m_screen.resize(1136, 640);
        m_screen.show();
        QCoreApplication::processEvents();
    }
    [[nodiscard]] const PageLayout& pages() const {
        return m_screen.findChild<PagesPreview*>()->pages();
    }
    [[nodiscard]] QString words() const {
        QString all;
        for (qsizetype page = 0; page < pages().pages.size(); ++page)
            all += wordsOf(pages(), page) + QLatin1Char('\n');
        return all;
    }
    [[nodiscard]] QList<casebook::HandoutRecord> given() {
        return m_family.casebook()->records().handouts;
    }
    [[nodiscard]] QByteArray contentOf(const QString& path) {
        QFile file(path);
        return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
    }
    void choose(const QString& comboName, const QString& text) {
        for (QComboBox* combo : m_screen.findChildren<QComboBox*>())
            if (combo->accessibleName() == comboName)
                combo->setCurrentIndex(combo->findText(text));
    }
    void chooseGiven(int row) {
        QListView* list = m_screen.findChild<GivenPanel*>()->list();
        list->setCurrentIndex(list->model()->index(row, 0));
    }

    FamilyWorkbook m_family;
    HandoutScreen m_screen;
    QList<qsizetype> m_printed;
    Result<Printed> m_printerAnswer = Printed{true, {}};
};

} // namespace

TEST_F(HandoutScreenTest, ShowsThePagesOfTheWeek) {
    EXPECT_TRUE(words().contains(QStringLiteral("Beef shank")));
    EXPECT_TRUE(words().contains(QStringLiteral("Ana")));
    EXPECT_FALSE(words().contains(QStringLiteral("Ana Hale"))) << "first names unless asked";
}

TEST_F(HandoutScreenTest, OptionsChangeThePagesAtOnce) {
    choose(QStringLiteral("Names"), QStringLiteral("Full names"));
    EXPECT_TRUE(words().contains(QStringLiteral("Ana Hale")));
    choose(QStringLiteral("Names"), QStringLiteral("No names"));
    EXPECT_FALSE(words().contains(QStringLiteral("Ana")));
    const qsizetype before = pages().pages.size();
    for (QCheckBox* box : m_screen.findChildren<QCheckBox*>())
        if (box->text().contains(QStringLiteral("arge print")))
            box->setChecked(true);
    EXPECT_GT(pages().pages.size(), before);
    choose(QStringLiteral("Paper"), QStringLiteral("A4"));
    EXPECT_EQ(pages().paper, people::Paper::A4);
    m_screen.findChild<QPlainTextEdit*>()->setPlainText(QStringLiteral("Take it slowly."));
    QTest::qWait(400);
    EXPECT_TRUE(words().contains(QStringLiteral("Take it slowly.")));
}

TEST_F(HandoutScreenTest, TheLanguageChangesThePagesAndNothingElse) {
    const auto labels = [this] {
        QStringList texts;
        for (const QAbstractButton* button : m_screen.findChildren<QAbstractButton*>())
            texts << button->text();
        for (const QAction* action : m_screen.actions())
            texts << action->text() << action->statusTip();
        return texts;
    };
    class : public QObject {
    public:
        bool eventFilter(QObject* /*watched*/, QEvent* event) override {
            changes +=
                event->type() == QEvent::LanguageChange || event->type() == QEvent::LocaleChange;
            return false;
        }
        int changes = 0;
    } watcher;
    const QStringList before = labels();
    const QLocale locale;
    qApp->installEventFilter(&watcher);
    choose(QStringLiteral("Language"), QStringLiteral("Español"));
    QCoreApplication::processEvents();
    qApp->removeEventFilter(&watcher);
    EXPECT_TRUE(words().contains(QStringLiteral("La semana de un vistazo")));
    EXPECT_TRUE(words().contains(QStringLiteral("página 1 de")));
    EXPECT_FALSE(words().contains(QStringLiteral("Whom to call")));
    EXPECT_EQ(labels(), before) << "the program itself goes on in English";
    EXPECT_EQ(watcher.changes, 0);
    EXPECT_EQ(QLocale(), locale);

    m_screen.recordAsGiven();
    choose(QStringLiteral("Language"), QStringLiteral("English"));
    EXPECT_TRUE(words().contains(QStringLiteral("Whom to call")));
    chooseGiven(0);
    m_screen.openGiven();
    EXPECT_TRUE(words().contains(QStringLiteral("página 1 de"))) << "as it was given";
}

TEST_F(HandoutScreenTest, SavesThePdfUnderAPlainName) {
    m_family.desk().fileAnswer = m_family.file(QStringLiteral("out.pdf"));
    m_screen.savePdf();
    EXPECT_TRUE(contentOf(*m_family.desk().fileAnswer).startsWith("%PDF-"));
    EXPECT_TRUE(m_family.desk().lastSuggested.endsWith(QStringLiteral(".pdf")));
    EXPECT_FALSE(m_family.desk().lastSuggested.contains(QLatin1Char('/')));
    EXPECT_TRUE(given().isEmpty()) << "saving alone is no giving";
}

TEST_F(HandoutScreenTest, UnwritableFileIsTold) {
    m_family.desk().fileAnswer = m_family.file(QStringLiteral("no/such/folder/out.pdf"));
    m_screen.give();
    ASSERT_EQ(m_family.desk().told.size(), 1);
    EXPECT_TRUE(m_family.desk().told.first().contains(QStringLiteral("out.pdf")));
    EXPECT_TRUE(given().isEmpty()) << "not recorded when the file was not written";
}

TEST_F(HandoutScreenTest, GivenHandoutReopensExactlyAsItWas) {
    m_family.desk().fileAnswer = m_family.file(QStringLiteral("given.pdf"));
    m_screen.give();
    ASSERT_EQ(given().size(), 1);
    const QString sentence = m_family.workbook().history().nextUndo()->sentence;
    EXPECT_TRUE(sentence.contains(QStringLiteral("Hale"))) << sentence.toStdString();
    EXPECT_EQ(m_family.workbook().handouts().pdf(given().first().id),
              contentOf(*m_family.desk().fileAnswer));
    const QString before = words();

    // The week changes afterwards; what was given does not.
    m_family.plan(FamilyWorkbook::monday(), {});
    EXPECT_FALSE(words().contains(QStringLiteral("Beef shank")));
    chooseGiven(0);
    m_screen.openGiven();
    EXPECT_EQ(words(), before);
    m_family.desk().fileAnswer = m_family.file(QStringLiteral("again.pdf"));
    m_screen.saveGiven();
    EXPECT_EQ(contentOf(m_family.file(QStringLiteral("again.pdf"))),
              contentOf(m_family.file(QStringLiteral("given.pdf"))));
    m_screen.backToThisWeek();
    EXPECT_FALSE(words().contains(QStringLiteral("Beef shank")));
}

TEST_F(HandoutScreenTest, GivenHandoutIsNotGivenTwice) {
    m_screen.recordAsGiven();
    chooseGiven(0);
    m_screen.openGiven();
    int checked = 0;
    for (const QAction* action : m_screen.actions()) {
        if (!action->text().contains(QStringLiteral("Give it...")) &&
            !action->text().contains(QStringLiteral("as given")))
            continue;
        EXPECT_FALSE(action->isEnabled()) << action->text().toStdString();
        ++checked;
    }
    EXPECT_EQ(checked, 2);
}

TEST_F(HandoutScreenTest, RemovedHandoutLeavesTheScreenAndUndoBringsItBack) {
    m_screen.recordAsGiven();
    chooseGiven(0);
    m_screen.openGiven();
    m_screen.removeGiven();
    EXPECT_TRUE(given().isEmpty());
    ASSERT_TRUE(m_family.workbook().undo());
    EXPECT_EQ(given().size(), 1);
}

TEST_F(HandoutScreenTest, PrintsThePagesShown) {
    m_screen.print();
    ASSERT_EQ(m_printed.size(), 1);
    EXPECT_EQ(m_printed.first(), pages().pages.size());
    m_printerAnswer = problem(Problem::Kind::Unavailable, QStringLiteral("No paper."));
    m_screen.print();
    EXPECT_EQ(m_family.desk().told, QStringList{QStringLiteral("No paper.")});
    EXPECT_TRUE(given().isEmpty());
}

TEST_F(HandoutScreenTest, NothingIsWrittenWhenThePersonThinksBetterOfIt) {
    m_family.desk().fileAnswer.reset();
    m_screen.give();
    m_screen.savePdf();
    EXPECT_EQ(m_family.desk().asked.size(), 2);
    EXPECT_TRUE(m_family.desk().told.isEmpty());
    EXPECT_TRUE(given().isEmpty());
}

} // namespace ladlework::ui
