#pragma once

#include <QScrollArea>

namespace ladlework::ui {

/// A page that scrolls when it is higher than its place. It asks for the width of its page, and
/// keeps the wheel from turning combo boxes and spin boxes on it.
class PageScroll final : public QScrollArea {
    Q_OBJECT
public:
    PageScroll(QWidget* page, QWidget* parent);
    [[nodiscard]] QSize minimumSizeHint() const override;
};

} // namespace ladlework::ui
