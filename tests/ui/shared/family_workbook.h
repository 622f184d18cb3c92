#pragma once

#include "casebook/casebook.h"
#include "store/workbook.h"
#include "ui/shared/family_screen.h"
#include "ui/shared/scripted_desk.h"

#include <QTemporaryDir>
#include <memory>

namespace ladlework::ui {

/// A real workbook in a temporary folder with one invented family: three members who hold their
/// amounts (Ana 4 cups, Bo 2 cups, Cy no poultry, 1 cup), two pots, and Wednesday 4 November 2026
/// as the day. A screen that is attached gets a new casebook after each action, as the shell does.
class FamilyWorkbook {
public:
    FamilyWorkbook();

    [[nodiscard]] store::Workbook& workbook() { return *m_workbook; }
    [[nodiscard]] const ScreenContext& context() const { return *m_context; }
    [[nodiscard]] ScriptedDesk& desk() { return m_desk; }
    [[nodiscard]] QString file(const QString& name) const { return m_folder.filePath(name); }
    [[nodiscard]] std::shared_ptr<const casebook::Casebook> casebook() const;
    void attach(FamilyScreen& screen);
    /// Stores a plan without going through a screen.
    void plan(QDate monday, const QList<week::Placement>& placements);

    static QDate today() { return {2026, 11, 4}; }
    static QDate monday() { return {2026, 11, 2}; }

    FamilyId family;
    PotId chicken; ///< "Chicken legs"
    PotId beef;    ///< "Beef shank"

private:
    Outcome fill(store::Action& action);
    Outcome addMember(store::Action& action, const QString& name, QDate birth,
                      quantity::Volume amount, bool noPoultry);
    Outcome addPots(store::Action& action);

    QTemporaryDir m_folder;
    FixedClock m_clock{QDateTime(today(), QTime(15, 0), Qt::UTC)};
    ScriptedDesk m_desk;
    std::unique_ptr<kitchen::Catalogue> m_catalogue;
    std::unique_ptr<store::Workbook> m_workbook;
    std::unique_ptr<ScreenContext> m_context;
};

} // namespace ladlework::ui
