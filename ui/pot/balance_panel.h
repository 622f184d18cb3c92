#pragma once

#include "kitchen/brew.h"
#include "ui/pot/price_text.h"

#include <QWidget>

class QLabel;
class QGridLayout;

namespace ladlework::ui {

/// What comes out of the pot, in kitchen words: the best figure large, its range beside it.
class BalancePanel final : public QWidget {
    Q_OBJECT
public:
    explicit BalancePanel(QWidget* parent);
    void show(const kitchen::Pot& pot, const kitchen::Brewed& brewed,
              const kitchen::Catalogue& catalogue, const Prices& prices);
    using QWidget::show;

private:
    struct Line {
        QLabel* value = nullptr;
        QLabel* range = nullptr;
    };
    Line addLine(const QString& words, const QString& tip);
    static void fill(const Line& line, const QString& value, const QString& range);
    void fillVolume(const Line& line, const kitchen::Range& range,
                    quantity::MeasureSystem measures);
    void fillMass(const Line& line, const kitchen::Range& range, quantity::MeasureSystem measures);
    void fillPerCup(const Line& line, const kitchen::Range& per100Ml, const QString& unit,
                    int decimals);
    void showDays(const kitchen::Brewed& brewed);
    void showCost(const kitchen::Pot& pot, const kitchen::Brewed& brewed,
                  const kitchen::Catalogue& catalogue, const Prices& prices);
    /// What is dissolved in the stock, a cup; of a pot that boils dry nothing is said.
    void showStrength(const kitchen::Brewed& brewed);

    QGridLayout* m_grid = nullptr;
    Line m_stock;
    Line m_days;
    Line m_meat;
    Line m_set;
    Line m_protein;
    Line m_sodium;
    Line m_potassium;
    Line m_fat;
    Line m_evaporated;
    Line m_held;
    Line m_cookOut;
    Line m_boils;
    Line m_cost;
};

} // namespace ladlework::ui
