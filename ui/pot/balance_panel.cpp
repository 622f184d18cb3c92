#include "ui/pot/balance_panel.h"

#include "ui/paint/theme.h"

#include <QGridLayout>
#include <QLabel>
#include <QLocale>

namespace ladlework::ui {

using kitchen::Range;
using quantity::Mass;
using quantity::Volume;

namespace {

QString setWords(kitchen::Set set) {
    switch (set) {
    case kitchen::Set::Pours:
        return BalancePanel::tr("pours");
    case kitchen::Set::Soft:
        return BalancePanel::tr("soft set");
    case kitchen::Set::Firm:
        return BalancePanel::tr("firm set");
    }
    return {};
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
    const auto words = [measures](double ml) {
        return quantity::printVolume(Volume::fromMillilitres(std::max(0.0, ml)), measures);
    };
    fill(line, words(range.best), tr("%1 to %2").arg(words(range.low), words(range.high)));
}

void BalancePanel::fillMass(const Line& line, const Range& range,
                            quantity::MeasureSystem measures) {
    const auto words = [measures](double grams) {
        return quantity::printMass(Mass::fromGrams(std::max(0.0, grams)), measures);
    };
    fill(line, words(range.best), tr("%1 to %2").arg(words(range.low), words(range.high)));
}

void BalancePanel::fillPerCup(const Line& line, const Range& range, const QString& unit,
                              int decimals) {
    const auto words = [&](double value) {
        return QLocale().toString(value, 'f', decimals);
    };
    const Range aCup = kitchen::perCup(range);
    fill(line, words(aCup.best) + u' ' + unit,
         tr("%1 to %2").arg(words(aCup.low), words(aCup.high)));
}

void BalancePanel::showStrength(const kitchen::Brewed& brewed) {
    if (brewed.boilsDry) {
        for (const Line& line : {m_set, m_protein, m_sodium, m_potassium})
            fill(line, tr("none"), tr("the pot boils dry"));
        return;
    }
    fill(m_set, setWords(brewed.set),
         tr("gelatin %1 g a cup")
             .arg(QLocale().toString(kitchen::perCup(brewed.gelatinGPer100Ml).best, 'f', 1)));
    fillPerCup(m_protein, brewed.proteinGPer100Ml, tr("g"), 1);
    fillPerCup(m_sodium, brewed.sodiumMgPer100Ml, tr("mg"), 0);
    fillPerCup(m_potassium, brewed.potassiumMgPer100Ml, tr("mg"), 0);
}

void BalancePanel::show(const kitchen::Brewed& brewed, quantity::MeasureSystem measures) {
    const QLocale locale;
    fillVolume(m_stock, brewed.stockMl, measures);
    if (brewed.coverDays)
        fill(m_days, tr("%1 days").arg(locale.toString(brewed.coverDays->best, 'f', 1)),
             tr("%1 to %2")
                 .arg(locale.toString(brewed.coverDays->low, 'f', 1),
                      locale.toString(brewed.coverDays->high, 'f', 1)));
    else
        fill(m_days, tr("not known"), tr("nobody has an amount for today"));
    fillMass(m_meat, brewed.meatLeftG, measures);
    if (brewed.meatDays)
        m_meat.range->setText(
            tr("%1 days at this table").arg(locale.toString(brewed.meatDays->best, 'f', 1)));
    showStrength(brewed);
    fillMass(m_fat, brewed.fatG, measures);
    fillVolume(m_evaporated, brewed.evaporatedMl, measures);
    fillVolume(m_held, brewed.heldBySolidsMl, measures);
    fillVolume(m_cookOut, brewed.cookOutMl, measures);
    fill(m_boils, quantity::printTemperature(brewed.boiling, measures),
         tr("simmers at %1").arg(quantity::printTemperature(brewed.simmering, measures)));
}

} // namespace ladlework::ui
