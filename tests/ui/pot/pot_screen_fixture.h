#pragma once

#include "ui/pot/balance_panel.h"
#include "ui/pot/pot_screen.h"
#include "ui/pot/size_panel.h"
#include "ui/shared/by_name.h"
#include "ui/shared/family_workbook.h"

#include <QAction>
#include <QLabel>
#include <QListView>
#include <QTableView>
#include <QTest>
#include <gtest/gtest.h>

namespace ladlework::ui {

/// The pot screen at the size that a window of 1366 by 768 leaves it, with the invented family of
/// FamilyWorkbook and its chicken pot chosen.
class PotScreenFixture : public ::testing::Test {
protected:
    PotScreenFixture() : m_screen(m_family.context(), nullptr) {
        m_family.attach(m_screen);
        m_screen.resize(1136, 600);
        m_screen.show();
        choose(m_family.chicken);
        QCoreApplication::processEvents();
    }
    [[nodiscard]] QList<kitchen::Pot> pots() { return m_family.casebook()->records().pots; }
    [[nodiscard]] kitchen::Pot pot(PotId id) { return *m_family.casebook()->pot(id); }
    [[nodiscard]] kitchen::Pot chicken() { return pot(m_family.chicken); }
    [[nodiscard]] QString lastSentence() {
        return m_family.workbook().history().nextUndo()->sentence;
    }
    [[nodiscard]] qint64 lastAction() { return m_family.workbook().history().nextUndo()->id; }
    [[nodiscard]] QListView* list() const {
        return byName<QListView>(m_screen, QStringLiteral("Pots at hand"));
    }
    void choose(PotId id) {
        const QString name = pot(id).name;
        for (int row = 0; row < list()->model()->rowCount(); ++row)
            if (list()->model()->index(row, 0).data().toString().startsWith(name))
                list()->setCurrentIndex(list()->model()->index(row, 0));
    }
    [[nodiscard]] QLineEdit* edit(const QString& name) const {
        return byName<QLineEdit>(m_screen, name);
    }
    void start(const QString& name, const QString& text) {
        edit(name)->setFocus();
        edit(name)->selectAll();
        QTest::keyClicks(edit(name), text);
    }
    /// The large figure of the first line: the stock that comes out.
    [[nodiscard]] QString stockOut() const {
        const auto labels = m_screen.findChild<BalancePanel*>()->findChildren<QLabel*>();
        return labels.at(1)->text();
    }
    void trigger(const QString& text) {
        for (QAction* action : m_screen.actions())
            if (action->text() == text)
                action->trigger();
    }
    [[nodiscard]] QTableView* cuts() const {
        return byName<QTableView>(m_screen, QStringLiteral("Bones and cuts"));
    }
    [[nodiscard]] QTableView* extras() const {
        return byName<QTableView>(m_screen, QStringLiteral("Vegetables and seasoning"));
    }
    PotId addPracticePot() {
        kitchen::Pot shared = chicken();
        shared.family = {};
        shared.name = QStringLiteral("Shared legs");
        PotId id;
        const Outcome added = m_family.workbook().act(
            QStringLiteral("Added a pot of the practice"), [&](store::Action& action) -> Outcome {
                const auto stored = m_family.workbook().pots().addPot(action, shared);
                if (!stored)
                    return passOn(stored);
                id = *stored;
                return {};
            });
        EXPECT_TRUE(added);
        return id;
    }

    /// The words that a size action leaves below its buttons.
    [[nodiscard]] QString said() const {
        QString words;
        for (const QLabel* label : m_screen.findChild<SizePanel*>()->findChildren<QLabel*>())
            if (label->isVisible() && label->wordWrap())
                words += label->text();
        return words;
    }

    FamilyWorkbook m_family;
    PotScreen m_screen;
};

} // namespace ladlework::ui
