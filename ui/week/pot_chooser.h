#pragma once

#include "ui/week/pots_model.h"

#include <QDate>
#include <QWidget>

class QLabel;
class QLineEdit;
class QListView;
class QPushButton;
class QSortFilterProxyModel;

namespace ladlework::ui {

class Section;

/// The list of pots: drag one to a day, or choose one for the day that was asked for. Typing
/// filters, Enter chooses, Escape gives up.
class PotChooser final : public QWidget {
    Q_OBJECT
public:
    explicit PotChooser(QWidget* parent = nullptr);

    void setPots(const QList<PotsModel::Row>& rows);
    /// The day that a pot is put on by Enter.
    void setDay(QDate day);
    [[nodiscard]] QDate day() const { return m_day; }
    /// Takes the keyboard, with an empty filter.
    void choose();
    [[nodiscard]] QLineEdit* filter() const { return m_filter; }
    [[nodiscard]] QListView* list() const { return m_list; }

Q_SIGNALS:
    void chosen(ladlework::PotId pot, QDate day);
    void givenUp();
    /// There is no pot yet: the person wants to build one.
    void potsWanted();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void chooseCurrent();
    void selectFirst();
    void follow();

    Section* m_section;
    PotsModel* m_model;
    QSortFilterProxyModel* m_filtered;
    QLineEdit* m_filter;
    QListView* m_list;
    QLabel* m_empty;
    QPushButton* m_build;
    QDate m_day;
};

} // namespace ladlework::ui
