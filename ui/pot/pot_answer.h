#pragma once

#include "casebook/casebook.h"
#include "ui/pot/size_panel.h"

#include <QWidget>
#include <memory>

class QTabWidget;
class QTimeEdit;

namespace ladlework::ui {

class BalancePanel;
class CalibrationPanel;
class CookingLine;
class CoolingPanel;
class KeepingPanel;
class PotDrawing;
class WhoPanel;

/// A pot that passes its checks, and what was reckoned of it.
struct PotInHand {
    kitchen::Pot pot;
    kitchen::BrewInput input;
    kitchen::Brewed brewed;
    std::shared_ptr<const casebook::Casebook> book;
};

/// What the pot answers: the drawing with the sizes below it, and on pages what comes out, when
/// what goes in, how it cools, how it keeps, and what the vessel has taught.
class PotAnswer final : public QWidget {
    Q_OBJECT
public:
    enum Page { Stock, Timing, Cooling, Keeping, Vessel, PageCount };

    PotAnswer(const SizeActions& sizes, QWidget* parent);
    /// Shows the pot in the drawing and on the page in sight; cheap enough for each move of the
    /// mouse. How it cools waits for settle().
    void take(PotInHand inHand);
    /// Reckons how the pot in hand cools; gives what there is to say about it.
    Findings settle();
    /// While what is typed cannot be reckoned the answer is the one before.
    void setStale(bool stale);
    /// Turns to a page and puts the keyboard there.
    void turnTo(Page page);

    [[nodiscard]] PotDrawing* drawing() const { return m_drawing; }
    [[nodiscard]] SizePanel* sizes() const { return m_sizes; }
    [[nodiscard]] CoolingPanel* cooling() const { return m_cooling; }
    [[nodiscard]] const PotInHand& inHand() const { return m_inHand; }
    [[nodiscard]] QSize minimumSizeHint() const override;
    /// The least height: the drawing takes no more than is there.
    [[nodiscard]] int heightForWidth(int width) const override;

    /// "What comes out": the name of a page as an action asks for it.
    static QString pageName(Page page);

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    QWidget* makeStock();
    QWidget* makeTiming();
    void addPage(QWidget* page, const QString& words, Page which);
    void showPage();
    void fitDrawing();
    [[nodiscard]] int pageHeight() const;

    PotDrawing* m_drawing;
    SizePanel* m_sizes;
    QTabWidget* m_pages;
    BalancePanel* m_balance = nullptr;
    WhoPanel* m_who = nullptr;
    CookingLine* m_line = nullptr;
    QTimeEdit* m_start = nullptr;
    CoolingPanel* m_cooling;
    KeepingPanel* m_keeping;
    CalibrationPanel* m_calibration;
    PotInHand m_inHand;
};

} // namespace ladlework::ui
