#include "ui/pot/pot_answer.h"

#include "ui/paint/theme.h"
#include "ui/pot/balance_panel.h"
#include "ui/pot/calibration_panel.h"
#include "ui/pot/cooking_line.h"
#include "ui/pot/cooling_panel.h"
#include "ui/pot/keeping_panel.h"
#include "ui/pot/pot_drawing.h"
#include "ui/pot/who_panel.h"
#include "ui/shared/page_scroll.h"
#include "ui/shared/section.h"
#include "ui/shared/side_by_side.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QTabBar>
#include <QTabWidget>
#include <QTimeEdit>
#include <QVBoxLayout>
#include <algorithm>

namespace ladlework::ui {

namespace {

const QTime usualStart(10, 0);

} // namespace

PotAnswer::PotAnswer(const SizeActions& sizes, QWidget* parent)
    : QWidget(parent), m_drawing(new PotDrawing(this)), m_sizes(new SizePanel(sizes, this)),
      m_pages(new QTabWidget(this)), m_cooling(new CoolingPanel(this)),
      m_keeping(new KeepingPanel(this)), m_calibration(new CalibrationPanel(this)) {
    auto* pot = new Section({}, this);
    pot->setAccessibleName(tr("The pot to scale"));
    pot->body()->addWidget(m_drawing);
    pot->body()->addWidget(m_sizes);
    m_pages->setAccessibleName(tr("What the pot answers"));
    m_pages->tabBar()->setExpanding(false);
    m_pages->setUsesScrollButtons(true);
    addPage(makeStock(), tr("Stock"), Stock);
    addPage(makeTiming(), tr("Timing"), Timing);
    addPage(m_cooling, tr("Cooling"), Cooling);
    addPage(m_keeping, tr("Keeping"), Keeping);
    addPage(m_calibration, tr("Vessel"), Vessel);
    auto* answers = new Section({}, this);
    answers->setAccessibleName(m_pages->accessibleName());
    answers->body()->addWidget(m_pages);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(step(*this));
    layout->addWidget(pot);
    layout->addWidget(answers, 1);
    connect(m_pages, &QTabWidget::currentChanged, this, &PotAnswer::showPage);
}

QString PotAnswer::pageName(Page page) {
    switch (page) {
    case Stock:
        return tr("What comes out");
    case Timing:
        return tr("When what goes in");
    case Cooling:
        return tr("How it cools");
    case Keeping:
        return tr("How it keeps");
    case Vessel:
    case PageCount:
        break;
    }
    return tr("What the vessel has taught");
}

void PotAnswer::addPage(QWidget* page, const QString& words, Page which) {
    auto* area = new PageScroll(page, this);
    page->setAutoFillBackground(false); // the section's own ground shows through
    area->setMinimumSize(1, 1); // the pages scroll; the window is not held open by the longest
    m_pages->addTab(area, words);
    m_pages->setTabToolTip(which, pageName(which));
    area->setAccessibleName(pageName(which));
}

QWidget* PotAnswer::makeStock() {
    auto* page = new SideBySide(this);
    m_balance = new BalancePanel(page);
    m_who = new WhoPanel(page);
    page->setSpacing(2 * step(*this));
    for (QWidget* part : std::initializer_list<QWidget*>{m_balance, m_who})
        part->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Maximum);
    page->add(m_balance, 3);
    page->add(m_who, 2);
    return page;
}

QWidget* PotAnswer::makeTiming() {
    auto* page = new QWidget(this);
    m_line = new CookingLine(page);
    m_start = new QTimeEdit(usualStart, page);
    m_start->setAccessibleName(tr("Start of the cooking"));
    auto* label = new QLabel(tr("Start at"), page);
    label->setBuddy(m_start);
    auto* start = new QHBoxLayout;
    start->addWidget(label);
    start->addWidget(m_start);
    start->addStretch();
    auto* layout = new QVBoxLayout(page);
    layout->addLayout(start);
    layout->addWidget(m_line);
    layout->addStretch();
    m_line->setStart(m_start->time());
    connect(m_start, &QTimeEdit::timeChanged, m_line, &CookingLine::setStart);
    return page;
}

void PotAnswer::take(PotInHand inHand) {
    m_inHand = std::move(inHand);
    const people::Practice& practice = m_inHand.book->records().practice;
    const auto measures = m_inHand.book->records().family.measures;
    m_drawing->show(m_inHand.pot, m_inHand.input.vessel, m_inHand.brewed, measures);
    m_sizes->show(m_inHand.pot, m_inHand.book->catalogue(), measures, practice.fridgeDays);
    showPage();
    fitDrawing();
}

void PotAnswer::showPage() {
    if (m_inHand.book == nullptr)
        return;
    const casebook::FamilyRecords& records = m_inHand.book->records();
    switch (m_pages->currentIndex()) {
    case Stock:
        m_balance->show(m_inHand.pot, m_inHand.brewed, m_inHand.book->catalogue(),
                        {records.prices, records.practice.currency, records.family.measures});
        m_who->show(m_inHand.brewed.who);
        break;
    case Timing:
        m_line->show(m_inHand.pot, m_inHand.brewed, m_inHand.book->catalogue());
        break;
    case Keeping:
        m_keeping->show(m_inHand.pot, *m_inHand.book);
        break;
    case Vessel:
        m_calibration->show(m_inHand.input.vessel, *m_inHand.book);
        break;
    default: // cooling is reckoned in settle()
        break;
    }
}

Findings PotAnswer::settle() {
    if (m_inHand.book == nullptr)
        return {};
    m_cooling->take(m_inHand.pot, m_inHand.brewed, *m_inHand.book);
    return m_cooling->reckon();
}

void PotAnswer::setStale(bool stale) {
    m_drawing->setStale(stale);
}

void PotAnswer::turnTo(Page page) {
    m_pages->setCurrentIndex(page);
    if (page == Timing)
        m_start->setFocus();
    else if (page == Cooling)
        m_cooling->firstField()->setFocus();
    else
        m_pages->tabBar()->setFocus();
}

int PotAnswer::pageHeight() const {
    return m_balance->sizeHint().height() + m_pages->tabBar()->sizeHint().height() + step(*this);
}

QSize PotAnswer::minimumSizeHint() const {
    const QSize laidOut = layout()->minimumSize();
    const int around = laidOut.height() - m_drawing->minimumHeight();
    constexpr int leastPageLines = 8;
    const int page =
        leastPageLines * fontMetrics().lineSpacing() - m_pages->minimumSizeHint().height();
    return {laidOut.width(), around + m_drawing->minimumSizeHint().height() + std::max(0, page)};
}

int PotAnswer::heightForWidth(int /*width*/) const {
    return minimumSizeHint().height();
}

void PotAnswer::resizeEvent(QResizeEvent* event) {
    fitDrawing();
    QWidget::resizeEvent(event);
}

void PotAnswer::fitDrawing() {
    // The pages get what they need to be read whole, the drawing what is left, up to its scale.
    const int around = layout()->minimumSize().height() - m_drawing->minimumHeight() -
                       m_pages->minimumSizeHint().height();
    const int least = m_drawing->minimumSizeHint().height();
    const int most = std::max(least, m_drawing->heightForWidth(m_drawing->width()));
    const int wanted = std::clamp(height() - around - pageHeight(), least, most);
    if (wanted != m_drawing->height() || wanted != m_drawing->minimumHeight())
        m_drawing->setFixedHeight(wanted);
}

} // namespace ladlework::ui
