#pragma once

#include "ui/progress/climb_marks.h"

#include <QList>
#include <QString>
#include <QWidget>

namespace ladlework::ui {

/// What the marks of the climb mean, each drawn as it stands there. Flows into as many lines as the
/// width asks for.
class ClimbLegend final : public QWidget {
    Q_OBJECT
public:
    explicit ClimbLegend(QWidget* parent);
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] bool hasHeightForWidth() const override { return true; }
    [[nodiscard]] int heightForWidth(int width) const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    struct Item {
        ClimbMark mark;
        QString words;
        bool reactionOnly = false;
    };
    [[nodiscard]] int widthOf(const Item& item) const;
    /// Calls `place(item, x, y)` for each item and gives the height of all lines.
    template <class Place>
    int flow(int width, Place place) const;

    QList<Item> m_items;
};

} // namespace ladlework::ui
