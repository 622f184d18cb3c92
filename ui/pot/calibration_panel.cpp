#include "ui/pot/calibration_panel.h"

#include "ui/paint/theme.h"
#include "ui/pot/calibration_drawing.h"

#include <QLabel>
#include <QLocale>
#include <QVBoxLayout>
#include <algorithm>

namespace ladlework::ui {

using kitchen::Calibration;
using kitchen::Vessel;

namespace {

QString vesselWords(const Vessel& vessel, quantity::MeasureSystem measures) {
    return CalibrationPanel::tr("%1: %2 wide and %3 high inside, holds %4")
        .arg(vessel.name, quantity::printLength(vessel.diameter, measures),
             quantity::printLength(vessel.height, measures),
             quantity::printVolume(vessel.capacity(), measures));
}

QString number(double factor) {
    return factor < 1 ? QLocale().toString(factor, 'g', 2) : QLocale().toString(factor, 'f', 1);
}

} // namespace

CalibrationPanel::CalibrationPanel(QWidget* parent)
    : QWidget(parent), m_vessel(new QLabel(this)), m_words(new QLabel(this)),
      m_drawing(new CalibrationDrawing(this)), m_method(new QLabel(this)) {
    auto* layout = new QVBoxLayout(this);
    layout->setSpacing(step(*this) / 2);
    QFont strong = font();
    strong.setBold(true);
    m_vessel->setFont(strong);
    for (QLabel* label : {m_vessel, m_words, m_method}) {
        label->setWordWrap(true);
        label->setTextFormat(Qt::PlainText);
    }
    m_method->setForegroundRole(QPalette::PlaceholderText);
    m_method->setText(tr("Each batch with a measured yield says how much water was really lost "
                         "against what the physics of an open surface and the lid expect. The more "
                         "batches agree, the narrower the next forecast."));
    layout->addWidget(m_vessel);
    layout->addWidget(m_words);
    layout->addWidget(m_drawing);
    layout->addWidget(m_method);
    layout->addStretch();
}

QString CalibrationPanel::learnt(const Calibration& calibration) const {
    const auto odd = std::ranges::count_if(calibration.points, CalibrationDrawing::isOdd);
    const auto count = static_cast<qsizetype>(calibration.points.size());
    const QString batches =
        count == 1 ? tr("1 measured batch") : tr("%1 measured batches").arg(count);
    QString words = tr("%1: this vessel loses about %2 times what physics alone says (%3 to %4).")
                        .arg(batches, number(calibration.posterior.best),
                             number(calibration.posterior.low), number(calibration.posterior.high));
    if (odd == 1)
        words += u' ' + tr("One of them is odd and counts little.");
    else if (odd > 1)
        words += u' ' + tr("%1 of them are odd and count little.").arg(odd);
    if (static_cast<std::size_t>(count) > CalibrationDrawing::mostBatches)
        words += u' ' + tr("The latest %1 are drawn.").arg(CalibrationDrawing::mostBatches);
    return words;
}

void CalibrationPanel::show(const Vessel& vessel, const casebook::Casebook& book) {
    const auto measures = book.records().family.measures;
    m_vessel->setText(vesselWords(vessel, measures));
    const Calibration* calibration = book.calibration(vessel.id);
    const bool isLearnt = calibration != nullptr && !calibration->points.empty();
    m_drawing->setVisible(isLearnt);
    if (isLearnt) {
        m_drawing->show(*calibration);
        m_words->setText(learnt(*calibration));
        return;
    }
    m_words->setText(
        vessel.id.isStored()
            ? tr("Nothing measured yet: the forecast is physics alone, and how tight a lid sits is "
                 "its widest unknown. Measure the stock that comes out of the next pot and record "
                 "it on Today (Ctrl+B); from then on this vessel's forecast is its own.")
            : tr("No vessel of this family is on record, so a usual stockpot is reckoned with. Add "
                 "theirs under Members, Family and kitchen; then measured batches can teach how "
                 "it really loses water."));
}

} // namespace ladlework::ui
