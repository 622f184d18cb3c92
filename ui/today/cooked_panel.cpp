#include "ui/today/cooked_panel.h"

#include "casebook/cookings_to_confirm.h"
#include "kitchen/keeping.h"
#include "ui/shared/character_width.h"
#include "ui/shared/day_edit.h"
#include "ui/shared/section.h"

#include <QComboBox>
#include <QGridLayout>
#include <QLabel>
#include <QLocale>
#include <QPushButton>
#include <QSpinBox>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>

namespace ladlework::ui {

using kitchen::Batch;
using kitchen::Lot;

namespace {

constexpr int mostContainers = 40;
constexpr int pairsARow = 2;

/// What an entry of the list of pots stands for.
enum PotRole { PotIdRole = Qt::UserRole, DayRole, NameRole };

QString shortDay(QDate day) {
    return QLocale().toString(day, CookedPanel::tr("ddd d MMM"));
}

} // namespace

CookedPanel::CookedPanel(const ScreenContext& context, QWidget* parent)
    : QWidget(parent), m_context(context), m_pot(new QComboBox(this)), m_day(new DayEdit(this)),
      m_yield(new VolumeEdit(this)), m_fridge(new QSpinBox(this)), m_freezer(new QSpinBox(this)),
      m_differently(new QToolButton(this)), m_asCooked(new QWidget(this)),
      m_vessel(new QComboBox(m_asCooked)), m_lid(new QComboBox(m_asCooked)),
      m_water(new VolumeEdit(m_asCooked)), m_simmer(new DurationEdit(m_asCooked)),
      m_useBy(new QLabel(this)) {
    auto* section = new Section(tr("Record a cooking"), this);
    section->setRemark(tr("The stock that really came out, and where it went."));
    section->body()->addWidget(makeLine());
    section->body()->addWidget(makeDifferently());
    auto* button = new QPushButton(tr("&Record it"), this);
    section->body()->addWidget(button, 0, Qt::AlignRight);
    connect(button, &QPushButton::clicked, this, &CookedPanel::record);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(section);
    connect(m_pot, &QComboBox::currentIndexChanged, this, &CookedPanel::suitPot);
    connect(m_vessel, &QComboBox::activated, this, &CookedPanel::suitVessel);
    connect(m_day, &QuantityEdit::valueEdited, this, &CookedPanel::showUseBy);
    connect(m_fridge, &QSpinBox::valueChanged, this, &CookedPanel::showUseBy);
    connect(m_freezer, &QSpinBox::valueChanged, this, &CookedPanel::showUseBy);
}

QWidget* CookedPanel::makeLine() {
    m_pot->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    m_fridge->setRange(0, mostContainers);
    m_fridge->setValue(2);
    m_freezer->setRange(0, mostContainers);
    m_useBy->setForegroundRole(QPalette::PlaceholderText);
    m_useBy->setWordWrap(true);
    constexpr int dayWidth = 18;
    CharacterWidth::atLeast(*m_day, dayWidth);
    auto* line = new QWidget(this);
    auto* grid = new QGridLayout(line);
    grid->setContentsMargins(0, 0, 0, 0);
    const auto add = [&](const QString& words, QWidget* field, int row, int pair, int span) {
        auto* label = new QLabel(words, this);
        label->setBuddy(field);
        field->setAccessibleName(QString(words).remove(u'&'));
        grid->addWidget(label, row, 2 * pair);
        grid->addWidget(field, row, 2 * pair + 1, 1, span);
    };
    add(tr("&Pot"), m_pot, 0, 0, 2 * pairsARow - 1);
    add(tr("&Day"), m_day, 1, 0, 1);
    add(tr("Stock that came out"), m_yield, 1, 1, 1);
    add(tr("&Jars in the refrigerator"), m_fridge, 2, 0, 1);
    add(tr("Jars in the freezer"), m_freezer, 2, 1, 1);
    grid->addWidget(m_useBy, 3, 0, 1, 2 * pairsARow);
    grid->setColumnStretch(1, 1);
    grid->setColumnStretch(pairsARow + 1, 1);
    connect(m_yield, &QLineEdit::returnPressed, m_fridge, qOverload<>(&QWidget::setFocus));
    return line;
}

QWidget* CookedPanel::makeDifferently() {
    m_differently->setText(tr("Cooked differently?"));
    m_differently->setToolTip(tr("Water, time, lid and vessel as they really were; the forecast "
                                 "learns from it"));
    m_differently->setCheckable(true);
    m_differently->setProperty("fold", true);
    m_differently->setToolButtonStyle(Qt::ToolButtonTextBesideIcon);
    m_differently->setArrowType(Qt::RightArrow);
    connect(m_differently, &QToolButton::toggled, this, [this](bool open) {
        m_differently->setArrowType(open ? Qt::DownArrow : Qt::RightArrow);
        m_asCooked->setVisible(open);
        if (open)
            m_water->setFocus();
    });
    m_lid->addItem(tr("lid off"), kitchen::lidId(kitchen::Vessel::Lid::Open));
    m_lid->addItem(tr("lid ajar"), kitchen::lidId(kitchen::Vessel::Lid::Ajar));
    m_lid->addItem(tr("lid on"), kitchen::lidId(kitchen::Vessel::Lid::On));
    m_vessel->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    auto* grid = new QGridLayout(m_asCooked);
    grid->setContentsMargins(0, 0, 0, 0);
    const auto add = [&](const QString& words, QWidget* field, int row, int pair) {
        auto* label = new QLabel(words, m_asCooked);
        label->setBuddy(field);
        field->setAccessibleName(words);
        grid->addWidget(label, row, 2 * pair);
        grid->addWidget(field, row, 2 * pair + 1);
    };
    add(tr("Water that went in"), m_water, 0, 0);
    add(tr("Simmered"), m_simmer, 0, 1);
    add(tr("Cooked in"), m_vessel, 1, 0);
    add(tr("Lid"), m_lid, 1, 1);
    grid->setColumnStretch(1, 1);
    grid->setColumnStretch(pairsARow + 1, 1);
    m_asCooked->hide();
    setTabOrder(m_water, m_simmer);
    setTabOrder(m_simmer, m_vessel);
    setTabOrder(m_vessel, m_lid);
    auto* part = new QWidget(this);
    auto* column = new QVBoxLayout(part);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(m_differently, 0, Qt::AlignLeft);
    column->addWidget(m_asCooked);
    return part;
}

void CookedPanel::take(const casebook::Casebook& book) {
    m_family = book.records().family.id;
    m_today = book.today();
    m_fridgeDays = book.records().practice.fridgeDays;
    m_measures = book.records().family.measures;
    m_day->setToday(m_today);
    m_day->setRange({}, m_today);
    m_vessels = book.records().vessels;
    m_planned.clear();
    for (const kitchen::Pot& pot : book.records().pots) {
        // A pot that names no vessel is cooked in the one it is reckoned with.
        const kitchen::Vessel vessel = book.brewInput(pot).vessel;
        m_planned.insert(pot.id, kitchen::asPlanned(pot, vessel.id.isStored() ? &vessel : nullptr));
    }
    m_vessel->clear();
    for (const kitchen::Vessel& vessel : m_vessels)
        m_vessel->addItem(vessel.name, qint64{vessel.id.value});
    m_vessel->addItem(tr("another pot"), qint64{0});
    fillPots(book);
    suitPot();
}

void CookedPanel::fillPots(const casebook::Casebook& book) {
    const QSignalBlocker blocker(m_pot);
    m_pot->clear();
    // What was planned and waits for its yield comes first, with its day.
    QList<week::Placement> open = casebook::cookingsToConfirm(book);
    for (const week::Placement& placement : book.plan(week::weekStart(m_today)).placements)
        if (placement.day == m_today)
            open.append(placement);
    const auto add = [this](const QString& words, const kitchen::Pot& pot, QDate day) {
        m_pot->addItem(words);
        const int row = m_pot->count() - 1;
        m_pot->setItemData(row, pot.id.value, PotIdRole);
        m_pot->setItemData(row, day, DayRole);
        m_pot->setItemData(row, pot.name, NameRole);
    };
    for (const week::Placement& placement : open)
        if (const kitchen::Pot* pot = book.pot(placement.pot))
            add(tr("%1, planned for %2").arg(pot->name, shortDay(placement.day)), *pot,
                placement.day);
    for (const kitchen::Pot& pot : book.records().pots)
        add(pot.name, pot, m_today);
    setEnabled(m_pot->count() > 0);
}

void CookedPanel::suitPot() {
    m_day->setDay(m_pot->currentData(DayRole).toDate());
    m_yield->setValue({}, m_measures);
    m_yield->clear();
    m_yield->setPlaceholderText(tr("measured"));
    const kitchen::AsCooked planned =
        m_planned.value(PotId{m_pot->currentData(PotIdRole).toLongLong()});
    m_water->setValue(planned.water, m_measures);
    m_simmer->setValue(planned.simmer, m_measures);
    m_vessel->setCurrentIndex(std::max(0, m_vessel->findData(qint64{planned.vessel.value})));
    m_lid->setCurrentIndex(m_lid->findData(kitchen::lidId(planned.lid)));
    m_differently->setChecked(false);
    showUseBy();
}

void CookedPanel::suitVessel() {
    const VesselId chosen{m_vessel->currentData().toLongLong()};
    for (const kitchen::Vessel& vessel : m_vessels)
        if (vessel.id == chosen)
            m_lid->setCurrentIndex(m_lid->findData(kitchen::lidId(vessel.lid)));
}

kitchen::AsCooked CookedPanel::asCooked() const {
    kitchen::AsCooked cooked;
    cooked.vessel = VesselId{m_vessel->currentData().toLongLong()};
    cooked.lid = kitchen::lidFromId(m_lid->currentData().toString()).value_or(cooked.lid);
    cooked.water = m_water->value();
    cooked.simmer = m_simmer->value();
    return cooked;
}

bool CookedPanel::isReadable() {
    for (QuantityEdit* field : std::initializer_list<QuantityEdit*>{m_day, m_water, m_simmer}) {
        if (field->isGood())
            continue;
        m_context.desk.tell(this, field->problemSentence());
        field->setFocus();
        return false;
    }
    return true;
}

void CookedPanel::showUseBy() {
    const QDate day = m_day->day();
    if (!day.isValid())
        return;
    QStringList words;
    if (m_fridge->value() > 0)
        words.append(tr("Refrigerator: drink by %1.")
                         .arg(shortDay(kitchen::useBy(Lot::Place::Fridge, day, m_fridgeDays))));
    if (m_freezer->value() > 0)
        words.append(tr("Freezer: best by %1.")
                         .arg(shortDay(kitchen::useBy(Lot::Place::Freezer, day, m_fridgeDays))));
    m_useBy->setText(words.join(u' '));
}

void CookedPanel::record() {
    Batch batch;
    batch.family = m_family;
    batch.pot = PotId{m_pot->currentData(PotIdRole).toLongLong()};
    batch.day = m_day->day();
    batch.cooked = asCooked();
    if (!isReadable())
        return;
    if (!m_yield->isGood() || m_yield->value() <= quantity::Volume{}) {
        m_context.desk.tell(
            this, tr("Type how much stock came out of the pot, such as %1.")
                      .arg(quantity::printVolume(quantity::Volume::fromLitres(2), m_measures)));
        m_yield->setFocus();
        return;
    }
    batch.yield = m_yield->value();
    const QString sentence = tr("Recorded %1 of %2 on %3")
                                 .arg(quantity::printVolume(*batch.yield, m_measures),
                                      m_pot->currentData(NameRole).toString(), shortDay(batch.day));
    const bool done = m_context.act(this, sentence, [&](store::Action& action) -> Outcome {
        const auto added = m_context.workbook.pots().addBatch(action, batch);
        if (!added)
            return passOn(added);
        batch.id = *added;
        for (const Lot& lot :
             kitchen::shareOut(batch, m_fridge->value(), m_freezer->value(), m_fridgeDays)) {
            const auto stored = m_context.workbook.pots().addLot(action, lot);
            if (!stored)
                return passOn(stored);
        }
        return {};
    });
    if (done)
        Q_EMIT recorded();
}

QWidget* CookedPanel::firstField() const {
    return m_pot;
}

} // namespace ladlework::ui
