#include "ui/pot/balance_panel.h"

#include "ui/paint/theme.h"
#include "ui/pot/balance_words.h"

#include <QGridLayout>
#include <QLabel>
#include <QLocale>

namespace ladlework::ui {

using kitchen::Range;
using quantity::Mass;
using quantity::Volume;

namespace {

QString figure(double value, int decimals) {
    return QLocale().toString(value, 'f', decimals);
}

/// "1 to 2" of "1¾ quarts (1 to 2)", and what stands before.
struct Parted {
    QString best;
    QString range;
};
Parted parted(const QString& words) {
    const qsizetype open = words.indexOf(QStringLiteral(" ("));
    if (open < 0 || !words.endsWith(u')'))
        return {words, {}};
    return {words.first(open), words.sliced(open + 2).chopped(1)};
}

double above(double value) {
    return std::max(0.0, value);
}

} // namespace

BalancePanel::BalancePanel(QWidget* parent) : QWidget(parent), m_grid(new QGridLayout(this)) {
    m_grid->setContentsMargins(0, 0, 0, 0);
    m_grid->setVerticalSpacing(step(*this) / 4);
    m_stock = addLine(tr("Stock out"), tr("Water in, less what evaporates and what the solids "
                                          "hold, plus what cooks out of them"));
    m_days = addLine(tr("Covers"), tr("Days that it lasts for those who may drink it, at the "
                                      "amounts asked today"));
    m_meat = addLine(tr("Meat left"), tr("Cooked meat off the bone, and the days the table takes "
                                         "to eat it"));
    m_cost = addLine(tr("Cost"), tr("Of what has a price; prices are written beside the cuts and "
                                    "vegetables"));
    m_set = addLine(tr("When cold"), tr("An estimate from the gelatin that comes out"));
    m_protein = addLine(tr("Protein a cup"), tr("From skin, bone and connective tissue; an "
                                                "estimate"));
    m_sodium = addLine(tr("Sodium a cup"), tr("From salt, meat and vegetables"));
    m_potassium = addLine(tr("Potassium a cup"), tr("From meat and vegetables"));
    m_fat = addLine(tr("Fat to skim"), tr("What cooks out of the whole pot"));
    m_evaporated = addLine(tr("Evaporates"), tr("From the open surface in the time set"));
    m_held = addLine(tr("Held by solids"), tr("Stays behind with what is strained out"));
    m_cookOut = addLine(tr("Cooks out"), tr("Water that meat and vegetables give off"));
    m_boils = addLine(tr("Boils at"), tr("At the family's altitude"));
}

BalancePanel::Line BalancePanel::addLine(const QString& words, const QString& tip) {
    const int row = m_grid->rowCount();
    auto* label = new QLabel(words, this);
    Line line{new QLabel(this), new QLabel(this)};
    line.value->setFont(figuresFont(font()));
    QFont strong = line.value->font();
    strong.setBold(true);
    line.value->setFont(strong);
    line.range->setForegroundRole(QPalette::PlaceholderText);
    for (QLabel* each : {label, line.value, line.range})
        each->setToolTip(tip);
    m_grid->addWidget(label, row, 0);
    m_grid->addWidget(line.value, row, 1);
    m_grid->addWidget(line.range, row, 2);
    m_grid->setColumnStretch(2, 1);
    return line;
}

void BalancePanel::fill(const Line& line, const QString& value, const QString& range) {
    line.value->setText(value);
    line.range->setText(range);
}

void BalancePanel::fillVolume(const Line& line, const Range& range,
                              quantity::MeasureSystem measures) {
    const auto volume = [](double ml) {
        return Volume::fromMillilitres(above(ml));
    };
    const Parted words = parted(quantity::printVolumeRange(volume(range.low), volume(range.best),
                                                           volume(range.high), measures));
    fill(line, words.best, words.range);
}

void BalancePanel::fillMass(const Line& line, const Range& range,
                            quantity::MeasureSystem measures) {
    const auto mass = [](double grams) {
        return Mass::fromGrams(above(grams));
    };
    const Parted words = parted(
        quantity::printMassRange(mass(range.low), mass(range.best), mass(range.high), measures));
    fill(line, words.best, words.range);
}

void BalancePanel::fillPerCup(const Line& line, const Range& range, const QString& unit,
                              int decimals) {
    const Range aCup = kitchen::perCup(range);
    fill(line, figure(aCup.best, decimals) + u' ' + unit,
         tr("%1 to %2").arg(figure(aCup.low, decimals), figure(aCup.high, decimals)));
}

void BalancePanel::showStrength(const kitchen::Brewed& brewed) {
    if (brewed.boilsDry) {
        for (const Line& line : {m_set, m_protein, m_sodium, m_potassium})
            fill(line, tr("none"), tr("the pot boils dry"));
        return;
    }
    fill(m_set, setWords(brewed),
         tr("gelatin %1 g a cup").arg(figure(kitchen::perCup(brewed.gelatinGPer100Ml).best, 1)));
    fillPerCup(m_protein, brewed.proteinGPer100Ml, tr("g"), 1);
    fillPerCup(m_sodium, brewed.sodiumMgPer100Ml, tr("mg"), 0);
    fillPerCup(m_potassium, brewed.potassiumMgPer100Ml, tr("mg"), 0);
}

void BalancePanel::showDays(const kitchen::Brewed& brewed) {
    if (brewed.coverDays)
        fill(m_days, tr("%1 days").arg(figure(brewed.coverDays->best, 1)),
             tr("%1 to %2")
                 .arg(figure(brewed.coverDays->low, 1), figure(brewed.coverDays->high, 1)));
    else
        fill(m_days, tr("not known"), tr("nobody has an amount for today"));
    if (brewed.meatDays)
        m_meat.range->setText(tr("%1 days at this table").arg(figure(brewed.meatDays->best, 1)));
}

void BalancePanel::showCost(const kitchen::Pot& pot, const kitchen::Brewed& brewed,
                            const kitchen::Catalogue& catalogue, const Prices& prices) {
    if (!brewed.cost) {
        fill(m_cost, tr("not known"), tr("no prices yet"));
        return;
    }
    const QStringList missing = withoutPrice(pot, catalogue, prices);
    const std::optional<double> cup = costACup(brewed);
    const QString aCup =
        cup ? tr("%1 a cup").arg(printMoney(*cup, prices)) : tr("no stock to share it");
    fill(m_cost, printMoney(*brewed.cost, prices),
         missing.isEmpty()     ? aCup
         : missing.size() == 1 ? tr("%1, without %2").arg(aCup, missing.first())
                               : tr("%1, without %2 things").arg(aCup).arg(missing.size()));
    m_cost.range->setToolTip(missing.isEmpty()
                                 ? m_cost.value->toolTip()
                                 : tr("No price yet: %1").arg(missing.join(QStringLiteral(", "))));
}

void BalancePanel::show(const kitchen::Pot& pot, const kitchen::Brewed& brewed,
                        const kitchen::Catalogue& catalogue, const Prices& prices) {
    const quantity::MeasureSystem measures = prices.measures;
    fillVolume(m_stock, brewed.stockMl, measures);
    fillMass(m_meat, brewed.meatLeftG, measures);
    showDays(brewed);
    showStrength(brewed);
    fillMass(m_fat, brewed.fatG, measures);
    fillVolume(m_evaporated, brewed.evaporatedMl, measures);
    fillVolume(m_held, brewed.heldBySolidsMl, measures);
    fillVolume(m_cookOut, brewed.cookOutMl, measures);
    fill(m_boils, quantity::printTemperature(brewed.boiling, measures),
         tr("simmers at %1").arg(quantity::printTemperature(brewed.simmering, measures)));
    showCost(pot, brewed, catalogue, prices);
}

} // namespace ladlework::ui
