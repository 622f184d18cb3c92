#pragma once

#include <QHeaderView>

namespace ladlework::ui {

/// The heads of the seven days: the day, and below it in quiet ink the free hours, or a closed lock
/// and its word.
class DayHeader final : public QHeaderView {
    Q_OBJECT
public:
    explicit DayHeader(QWidget* parent = nullptr);
    [[nodiscard]] QSize sizeHint() const override;

protected:
    void paintSection(QPainter* painter, const QRect& rect, int section) const override;
};

} // namespace ladlework::ui
