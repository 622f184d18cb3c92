#include "ui/shell/command_model.h"

#include <QAbstractItemModelTester>
#include <QAction>

#include <gtest/gtest.h>

namespace ladlework::ui {

class CommandModelTest : public ::testing::Test {
protected:
    CommandModelTest()
        : m_model(nullptr),
          m_tester(&m_model, QAbstractItemModelTester::FailureReportingMode::Fatal) {
        const QStringList texts{QStringLiteral("&Open a workbook…"), QStringLiteral("&Notes"),
                                QStringLiteral("Write a &note"), QStringLiteral("Salt && pepper"),
                                QStringLiteral("Off")};
        QList<CommandModel::Command> commands;
        for (const QString& text : texts) {
            auto* action = new QAction(text, &m_owner);
            commands.append({action, QStringLiteral("Menu")});
        }
        commands[0].action->setShortcut(QKeySequence(QStringLiteral("Ctrl+O")));
        commands[0].action->setStatusTip(QStringLiteral("Go on with a file"));
        commands[4].action->setEnabled(false);
        auto* separator = new QAction(&m_owner);
        separator->setSeparator(true);
        commands.append({separator, QStringLiteral("Menu")});
        m_model.setCommands(commands);
    }
    [[nodiscard]] QStringList shown() const {
        QStringList texts;
        for (int row = 0; row < m_model.rowCount(); ++row)
            texts << m_model.index(row).data().toString();
        return texts;
    }
    QObject m_owner;
    CommandModel m_model;
    QAbstractItemModelTester m_tester;
};

TEST_F(CommandModelTest, holdsWhatCanBeDoneInPlainWords) {
    EXPECT_EQ(shown(),
              (QStringList{QStringLiteral("Open a workbook"), QStringLiteral("Notes"),
                           QStringLiteral("Write a note"), QStringLiteral("Salt & pepper")}));
    EXPECT_EQ(m_model.index(0).data(CommandModel::ShortcutRole).toString(),
              QStringLiteral("Ctrl+O"));
}

TEST_F(CommandModelTest, theBestFitComesFirst) {
    m_model.setSearch(QStringLiteral("note"));
    EXPECT_EQ(shown(), (QStringList{QStringLiteral("Notes"), QStringLiteral("Write a note")}));
    m_model.setSearch(QStringLiteral("workbook open"));
    EXPECT_EQ(shown(), QStringList{QStringLiteral("Open a workbook")});
    m_model.setSearch(QStringLiteral("file"));
    EXPECT_EQ(shown(), QStringList{QStringLiteral("Open a workbook")}) << "found by its tip";
    m_model.setSearch(QStringLiteral("nowhere"));
    EXPECT_EQ(m_model.rowCount(), 0);
    m_model.setSearch({});
    EXPECT_EQ(m_model.rowCount(), 4);
}

} // namespace ladlework::ui
