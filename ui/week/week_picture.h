#pragma once

#include "ui/week/week_shown.h"

#include <QWidget>

class QPainter;

namespace ladlework::ui {

struct Colours;

/// The week as a picture: for each day what stands in refrigerator and freezer at its end, beside
/// what is drunk on it. What is short stands hatched on top of what is drunk, what spoils hangs
/// below the line; both with their mark and in words.
class WeekPicture final : public QWidget {
    Q_OBJECT
public:
    explicit WeekPicture(QWidget* parent = nullptr);

    void setWeek(const WeekShown& week);
    /// The width at the left that holds the key; the days share the rest.
    void setGutter(int width);

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;
    /// What the picture says of a day (from 0), in words.
    [[nodiscard]] QString wordsOf(int day) const;

protected:
    void paintEvent(QPaintEvent* event) override;
    bool event(QEvent* event) override;

private:
    [[nodiscard]] QRectF dayRect(int day) const;
    [[nodiscard]] QString printed(quantity::Volume volume) const;
    void paintKey(QPainter& painter, const Colours& colours) const;
    void paintDay(QPainter& painter, const Colours& colours, int day) const;
    void paintBars(QPainter& painter, const Colours& colours, const ShownDay& day,
                   const QRectF& box) const;
    void paintWords(QPainter& painter, const Colours& colours, const ShownDay& day,
                    const QRectF& box) const;

    WeekShown m_week;
    quantity::Volume m_highest; ///< the top of the scale
    quantity::Volume m_lowest;  ///< the most that spoils on a day
    int m_gutter = 0;
};

} // namespace ladlework::ui
