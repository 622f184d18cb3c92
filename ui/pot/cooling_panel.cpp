#include "ui/pot/cooling_panel.h"

#include "kitchen/cooling_run.h"
#include "ui/paint/theme.h"
#include "ui/pot/cooling_curve.h"
#include "ui/shared/character_width.h"
#include "ui/shared/choices.h"
#include "ui/shared/finding_line.h"

#include <QComboBox>
#include <QGridLayout>
#include <QLabel>
#include <QSignalBlocker>
#include <QSpinBox>
#include <algorithm>
#include <cmath>

namespace ladlework::ui {

using kitchen::Container;
using kitchen::Cooling;
using kitchen::CoolingWay;
using quantity::Duration;
using quantity::Temperature;

namespace {

constexpr int mostContainers = 99;
constexpr int asFewAsPass = 0;

QString limitWords(Duration within) {
    return CoolingPanel::tr("%1 allowed").arg(quantity::printDuration(within));
}

} // namespace

CoolingPanel::CoolingPanel(QWidget* parent)
    : QWidget(parent), m_container(new QComboBox(this)), m_way(new QComboBox(this)),
      m_count(new QSpinBox(this)), m_room(new TemperatureEdit(this)),
      m_curve(new CoolingCurve(this)), m_mark(new FindingMark(Finding::Severity::Caution, this)),
      m_verdict(new QLabel(this)), m_note(new QLabel(this)) {
    for (const CoolingWay way :
         {CoolingWay::Refrigerator, CoolingWay::IceBath, CoolingWay::Counter})
        m_way->addItem(kitchen::coolingWayName(way), kitchen::coolingWayId(way));
    for (QComboBox* box : {m_container, m_way}) {
        constexpr int leastCharacters = 12;
        box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
        box->setMinimumContentsLength(leastCharacters);
    }
    m_count->setRange(asFewAsPass, mostContainers);
    m_count->setSpecialValueText(tr("fewest"));
    m_room->setValue(kitchen::BrewInput().room, m_measures);
    layOut();
    connectEdits();
}

void CoolingPanel::layOut() {
    auto* grid = new QGridLayout(this);
    grid->setHorizontalSpacing(step(*this));
    grid->setVerticalSpacing(step(*this) / 2);
    const auto place = [&](const QString& words, QWidget* field, int row, int column) {
        auto* label = new QLabel(words, this);
        label->setBuddy(field);
        field->setAccessibleName(words);
        grid->addWidget(label, row, column);
        grid->addWidget(field, row, column + 1);
    };
    place(tr("Cool it in"), m_container, 0, 0);
    place(tr("how many"), m_count, 0, 2);
    place(tr("Way"), m_way, 1, 0);
    place(tr("kitchen at"), m_room, 1, 2);
    m_container->setToolTip(tr("Of this family's kitchen, or as kitchens usually have them"));
    m_count->setToolTip(tr("\"fewest\" takes as few as cool in time"));
    m_room->setToolTip(tr("How warm the kitchen is while the stock stands on the counter"));
    constexpr int smallField = 14;
    CharacterWidth::hold(*m_count, smallField);
    CharacterWidth::hold(*m_room, smallField);
    grid->setColumnStretch(1, 1);
    auto* verdict = new QHBoxLayout;
    verdict->setSpacing(step(*this) / 2);
    verdict->addWidget(m_mark, 0, Qt::AlignTop);
    verdict->addWidget(m_verdict, 1);
    grid->addLayout(verdict, 2, 0, 1, 4);
    grid->addWidget(m_curve, 3, 0, 1, 4);
    grid->setRowStretch(3, 1);
    grid->addWidget(m_note, 4, 0, 1, 4);
    m_note->setText(tr("An estimate: check with a thermometer; your local rules go first."));
    for (QLabel* label : {m_verdict, m_note})
        label->setWordWrap(true);
    m_note->setForegroundRole(QPalette::PlaceholderText);
}

void CoolingPanel::connectEdits() {
    connect(m_container, &QComboBox::activated, this, [this](int row) {
        const Container chosen = m_containers.at(row);
        m_chosen = chosen;
        m_isTried = m_isShared;
        if (m_isShared)
            Q_EMIT tried();
        else
            Q_EMIT containerChosen(chosen);
    });
    connect(m_way, &QComboBox::activated, this, [this] {
        if (const auto way = kitchen::coolingWayFromId(m_way->currentData().toString()))
            Q_EMIT wayChosen(*way);
    });
    connect(m_count, &QSpinBox::valueChanged, this, &CoolingPanel::tried);
    connect(m_room, &QuantityEdit::valueEdited, this, &CoolingPanel::tried);
}

void CoolingPanel::take(const kitchen::Pot& pot, const kitchen::Brewed& brewed,
                        const casebook::Casebook& book) {
    const auto measures = book.records().family.measures;
    if (pot.id != m_pot) {
        const QSignalBlocker blocker(m_count);
        m_count->setValue(asFewAsPass);
    }
    if (measures != m_measures) {
        m_measures = measures;
        m_room->setValue(m_room->value(), m_measures);
    }
    m_isShared = !pot.family.isStored();
    m_isTried = m_isTried && pot.id == m_pot;
    if (!m_isTried)
        m_chosen = book.containerFor(pot);
    m_pot = pot.id;
    m_stock = quantity::Volume::fromMillilitres(std::max(0.0, brewed.stockMl.best));
    m_start = brewed.simmering;
    fillContainers(book);
    m_way->setCurrentIndex(m_way->findData(kitchen::coolingWayId(pot.coolingWay)));
    m_way->setToolTip(m_way->currentText()); // a narrow window shows its beginning only
}

void CoolingPanel::fillContainers(const casebook::Casebook& book) {
    QList<Container> containers = book.records().containers;
    for (const Container& usual : kitchen::usualContainers())
        if (std::ranges::find(containers, usual.name, &Container::name) == containers.end())
            containers.append(usual);
    m_containers = containers;
    QList<Choice> choices;
    for (const Container& container : m_containers)
        choices.append(
            {tr("%1, holds %2")
                 .arg(container.name, quantity::printVolume(container.capacity(), m_measures)),
             container.name});
    setChoices(*m_container, choices, m_chosen.name);
}

kitchen::CoolingInput CoolingPanel::input() const {
    kitchen::CoolingInput input;
    input.volume = m_stock;
    input.container = m_chosen;
    input.start = m_start;
    input.stages = kitchen::stagesOf(
        kitchen::coolingWayFromId(m_way->currentData().toString()).value_or(CoolingWay{}),
        m_room->value());
    return input;
}

Findings CoolingPanel::reckon() {
    const bool any = m_stock > quantity::Volume{};
    for (QWidget* part : std::initializer_list<QWidget*>{m_curve, m_mark, m_note})
        part->setVisible(any);
    if (!any) {
        m_verdict->setText(tr("There is no stock to cool."));
        return {};
    }
    kitchen::CoolingInput one = input();
    const auto fewest = kitchen::fewestContainers(m_stock, one);
    const int least = std::max(1, static_cast<int>(std::ceil(m_stock / m_chosen.capacity())));
    const int asked = m_count->value();
    const int count = asked != asFewAsPass ? asked : fewest ? fewest->count : least;
    one.volume = m_stock / count;
    Cooling cooling = kitchen::cool(one);
    m_curve->show(cooling, m_measures);
    sayVerdict(cooling, count, fewest);
    // That it is an estimate is said here once and for all, below the curve.
    cooling.findings.removeIf(
        [](const Finding& finding) { return finding.code == u"cooling-estimate"; });
    return cooling.findings;
}

QString CoolingPanel::stageWords(const std::optional<Duration>& reached, double celsius,
                                 Duration within) const {
    const QString degrees =
        quantity::printTemperature(Temperature::fromCelsius(celsius), m_measures);
    if (!reached)
        return tr("%1 not at all").arg(degrees);
    return *reached <= within
               ? tr("%1 after %2 (%3)")
                     .arg(degrees, quantity::printDuration(*reached), limitWords(within))
               : tr("%1 only after %2 (%3)")
                     .arg(degrees, quantity::printDuration(*reached), limitWords(within));
}

QString CoolingPanel::shareWords(int count) const {
    const QString depth = printDepth(kitchen::depthOf(m_stock / count, m_chosen));
    return count == 1 ? tr("In one of these, %1 deep,").arg(depth)
                      : tr("In %1 of these, each %2 deep,").arg(count).arg(depth);
}

QString CoolingPanel::printDepth(quantity::Length depth) const {
    return quantity::printLength(depth, m_measures);
}

void CoolingPanel::sayVerdict(const Cooling& cooling, int count,
                              const std::optional<kitchen::SharedOut>& fewest) {
    const auto rule = kitchen::TwoStageRule::shipped();
    const QString stages =
        QStringLiteral("%1, %2").arg(stageWords(cooling.toMiddle, rule.middleC, rule.middleWithin),
                                     stageWords(cooling.toEnd, rule.endC, rule.endWithin));
    QStringList words{shareWords(count), cooling.passes ? tr("it cools in time: %1.").arg(stages)
                                                        : tr("it is too slow: %1.").arg(stages)};
    if (!fewest)
        words.append(tr("No number of these passes this way: take a shallower one, or an ice "
                        "bath."));
    else if (fewest->count != count)
        words.append(tr("The fewest that pass: %1, each %2 deep.")
                         .arg(fewest->count)
                         .arg(printDepth(fewest->depth)));
    if (m_isTried)
        words.append(tr("Tried out here only: make the pot their own to keep the container."));
    m_mark->setVisible(!cooling.passes);
    m_verdict->setText(words.join(u' '));
    m_verdict->setToolTip(
        tr("Times from the moment the warmest place passes %1")
            .arg(quantity::printTemperature(Temperature::fromCelsius(rule.fromC), m_measures)));
    m_count->setSpecialValueText(fewest ? tr("fewest: %1").arg(fewest->count) : tr("fewest"));
}

QWidget* CoolingPanel::field(const QString& name) const {
    if (name == u"container" || name == u"volume")
        return m_container;
    return name == u"stages" ? static_cast<QWidget*>(m_way) : nullptr;
}

QWidget* CoolingPanel::firstField() const {
    return m_container;
}

} // namespace ladlework::ui
