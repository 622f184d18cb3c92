#pragma once

#include "casebook/casebook.h"

#include <QWidget>
#include <memory>

namespace ladlework::ui {

/// How far the log of one day is entered.
struct DayFill {
    QDate day;
    int asked = 0;   ///< members who were asked to drink something
    int entered = 0; ///< those of them with an entry

    [[nodiscard]] bool isComplete() const { return entered >= asked; }
};

/// One DayFill for each of the `days` days that end with today.
QList<DayFill> lastDays(const casebook::Casebook& book, int days);

/// The last two weeks as a row of days, each with a mark of how far its log is entered: a filled
/// dot (everyone), a half-filled one (some), a ring (nobody), nothing where nothing was asked. Left
/// and Right choose the day before and after.
class DayStrip final : public QWidget {
    Q_OBJECT
public:
    explicit DayStrip(QWidget* parent);
    void show(const casebook::Casebook& book, QDate day);
    using QWidget::show;
    /// The latest day before today that lacks an entry; null when none does.
    [[nodiscard]] QDate latestOpen() const;
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

Q_SIGNALS:
    void dayChosen(QDate day);

protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    bool event(QEvent* event) override;

private:
    void drawDay(QPainter& painter, const QRectF& box, const DayFill& fill) const;
    void choose(QDate day);
    [[nodiscard]] double cellWidth() const;
    [[nodiscard]] qsizetype cellAt(double x) const;
    [[nodiscard]] static QString words(const DayFill& fill);

    QList<DayFill> m_days;
    QDate m_day;
};

} // namespace ladlework::ui
