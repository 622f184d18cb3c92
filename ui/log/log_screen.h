#pragma once

#include "ui/log/log_writer.h"
#include "ui/shared/family_screen.h"

#include <QAbstractItemDelegate>

class QComboBox;
class QLabel;
class QPushButton;
class QStackedWidget;
class QTableView;

namespace ladlework::ui {

class DayEdit;
class DayStrip;
class ImportPanel;
class LogDayModel;
class MemberDayPanel;
class ProblemLine;
class SymptomDelegate;
class WhatNowPanel;

/// A day's drinking and reactions of the whole family, by keyboard: type an amount, Enter, the
/// next member. Below, the single drinks and reactions of the member in hand. A filled sheet is
/// taken in on a page of its own.
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
    QWidget* makeDayPage();
    QWidget* makeHead();
    QWidget* makeDayTable();
    void makeActions();
    void connectModels();
    void connectImport();
    void showDay();
    void showHead();
    void showSources();
    void showDetails();
    void showImport(bool shown);
    void takeSource();
    void moveDown();
    void afterEditor(QAbstractItemDelegate::EndEditHint hint);
    void clearCell();
    void fitTables();
    void enterAllAsAsked();
    void goToOpenDay();
    [[nodiscard]] const casebook::Standing* current() const;
    [[nodiscard]] int firstOpenRow() const;

    LogWriter m_writer;
    QDate m_day;
    QStackedWidget* m_pages = nullptr;
    ImportPanel* m_import = nullptr;
    DayEdit* m_dayEdit = nullptr;
    QLabel* m_weekday = nullptr;
    QPushButton* m_after = nullptr;
    DayStrip* m_strip = nullptr;
    QLabel* m_said = nullptr;
    WhatNowPanel* m_whatNow = nullptr;
    QComboBox* m_source = nullptr;
    LogDayModel* m_model = nullptr;
    QTableView* m_table = nullptr;
    SymptomDelegate* m_symptoms = nullptr;
    ProblemLine* m_problem = nullptr;
    MemberDayPanel* m_details = nullptr;
};

} // namespace ladlework::ui
