#pragma once

#include "ui/families/families_list.h"
#include "ui/shared/workbook_fixture.h"
#include "ui/shell/main_window.h"
#include "ui/shell/undo_actions.h"
#include "ui/shell/window_actions.h"

#include <QAction>
#include <QLabel>
#include <QMenuBar>
#include <QPushButton>
#include <QTest>

namespace ladlework::ui {

/// The whole window over a workbook with two families, closed by the fixture first: a second
/// opener would find it read-only.
class WindowFixture : public WorkbookFixture {
protected:
    void SetUp() override {
        WorkbookFixture::SetUp();
        m_ash = addFamily(QStringLiteral("Ashgrove"));
        addLadder(addMember(m_ash, QStringLiteral("Ana Ashgrove")));
        m_birch = addFamily(QStringLiteral("Birchwood"));
        addMember(m_birch, QStringLiteral("Ben Birchwood"));
        m_context.reset();
        m_workbook.reset();
        m_window = std::make_unique<MainWindow>(*m_catalogue, m_clock, m_desk);
        m_window->resize(1366, 768);
        m_window->show();
        QApplication::setActiveWindow(m_window.get());
    }
    void TearDown() override { m_window.reset(); }

    void open() {
        const Outcome opened = m_window->openWorkbook(path());
        ASSERT_TRUE(opened) << toLine(opened.error()).toStdString();
        QApplication::processEvents();
    }
    void key(Qt::Key key, Qt::KeyboardModifiers modifiers = Qt::NoModifier) {
        QWidget* at = QApplication::focusWidget();
        QTest::keyClick(at != nullptr ? at : m_window.get(), key, modifiers);
        QApplication::processEvents();
    }
    /// Every text that a person could read in the window now.
    [[nodiscard]] QStringList visibleTexts() const;

    FamilyId m_ash;
    FamilyId m_birch;
    std::unique_ptr<MainWindow> m_window;
};

} // namespace ladlework::ui
