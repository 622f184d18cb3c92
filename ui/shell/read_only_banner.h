#pragma once

#include <QFrame>

namespace ladlework::ui {

/// Says above everything else that nothing can be written, and why.
class ReadOnlyBanner final : public QFrame {
    Q_OBJECT
public:
    ReadOnlyBanner(const QString& reason, QWidget* parent);
};

} // namespace ladlework::ui
