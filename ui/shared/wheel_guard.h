#pragma once

#include <QObject>

class QWidget;

namespace ladlework::ui {

/// Keeps the mouse wheel for scrolling a page: combo boxes and spin boxes on it turn with the wheel
/// only while they have the focus, so that scrolling past one never changes a record.
class WheelGuard final : public QObject {
    Q_OBJECT
public:
    /// Guards all such boxes that `page` holds now; lives as long as the page.
    static void protect(QWidget& page);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    explicit WheelGuard(QWidget& page);
};

} // namespace ladlework::ui
