#pragma once

#include "kitchen/brew.h"

#include <QTime>
#include <QWidget>

namespace ladlework::ui {

/// The cooking line: for each cut the time in which it may go in and when it does, then vegetables,
/// salt and what goes in at the end, with the clock for a chosen start.
class CookingLine final : public QWidget {
    Q_OBJECT
public:
    explicit CookingLine(QWidget* parent);

    void show(const kitchen::Pot& pot, const kitchen::Brewed& brewed,
              const kitchen::Catalogue& catalogue);
    using QWidget::show;
    void setStart(QTime start);
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    /// One line of the drawing: a cut with its window, or what goes in together at one time.
    struct Row {
        QString name;
        quantity::Duration at;
        quantity::Duration earliest;
        quantity::Duration latest;
        bool windowed = false;
        bool heatOff = false;
        bool inWindow = true;
    };
    void drawHours(QPainter& painter, const QRectF& bar) const;
    void drawRow(QPainter& painter, const QRectF& bar, const Row& row, double y) const;
    [[nodiscard]] QString clock(quantity::Duration at) const;
    [[nodiscard]] double xOf(const QRectF& bar, quantity::Duration at) const;
    void describe();

    QList<Row> m_rows;
    QStringList m_keeping; ///< how long the raw cuts keep before
    quantity::Duration m_end;
    QTime m_start;
};

} // namespace ladlework::ui
