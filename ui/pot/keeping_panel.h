#pragma once

#include "casebook/casebook.h"

#include <QWidget>

class QGridLayout;
class QLabel;

namespace ladlework::ui {

/// How the stock of a pot keeps when it is cooked today, and how long before that its raw cuts may
/// be bought. Each line carries its source.
class KeepingPanel final : public QWidget {
    Q_OBJECT
public:
    explicit KeepingPanel(QWidget* parent);
    void show(const kitchen::Pot& pot, const casebook::Casebook& book);
    using QWidget::show;

private:
    QLabel* addLine(const QString& title);
    void fillNotes(const kitchen::Pot& pot, const kitchen::Catalogue& catalogue);

    QGridLayout* m_grid;
    QLabel* m_raw;
    QLabel* m_fridge;
    QLabel* m_freezer;
    QLabel* m_thawed;
    QLabel* m_warm;
    QLabel* m_meat;
    QLabel* m_notes;
};

/// How long raw cuts of a class keep before they are cooked, with the source: for the tool tip of a
/// cut and for the cooking line.
QString rawKeepingWords(kitchen::CookClass cookClass);

} // namespace ladlework::ui
