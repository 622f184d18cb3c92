#pragma once

#include "ui/log/log_writer.h"
#include "ui/shared/family_screen.h"

#include <QAbstractItemDelegate>

class QLabel;
class QPushButton;
class QTableView;

namespace ladlework::ui {

class DayEdit;
class DrinksModel;
class LogDayModel;
class ReactionsModel;
class Section;
class SourceDelegate;

/// A day's drinking and reactions of the whole family, by keyboard: type an amount, Enter, the
/// next member. Below, the single drinks and reactions of the member in hand.
class LogScreen final : public FamilyScreen {
    Q_OBJECT
public:
    LogScreen(const ScreenContext& context, QWidget* parent);
    [[nodiscard]] QWidget* firstField() override;
    [[nodiscard]] QDate day() const { return m_day; }
    void setDay(QDate day);

protected:
    void refresh(bool sameFamily) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    QWidget* makeHead();
    QWidget* makeDayTable();
    QWidget* makeDetails();
    void makeActions();
    void connectModels();
    void showDay();
    void showDetails();
    void moveDown();
    void afterEditor(QAbstractItemDelegate::EndEditHint hint);
    void clearCell();
    void removeDrink();
    void removeReaction();
    void fitTables();
    void enterAllAsAsked();
    [[nodiscard]] const casebook::Standing* current() const;
    [[nodiscard]] int firstOpenRow() const;
    [[nodiscard]] QString nameOf(MemberId member) const;
    [[nodiscard]] Findings findingsOfDay() const;

    LogWriter m_writer;
    QDate m_day;
    DayEdit* m_dayEdit = nullptr;
    QLabel* m_weekday = nullptr;
    QPushButton* m_after = nullptr;
    LogDayModel* m_model = nullptr;
    QTableView* m_table = nullptr;
    Section* m_details = nullptr;
    QLabel* m_noDrinks = nullptr;
    QLabel* m_noReactions = nullptr;
    DrinksModel* m_drinks = nullptr;
    QTableView* m_drinksTable = nullptr;
    SourceDelegate* m_sources = nullptr;
    ReactionsModel* m_reactions = nullptr;
    QTableView* m_reactionsTable = nullptr;
};

} // namespace ladlework::ui
