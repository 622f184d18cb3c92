#pragma once

#include "kitchen/brew.h"

#include <QWidget>

class QLabel;

namespace ladlework::ui {

/// Who in the house may drink the pot, and why not.
class WhoPanel final : public QWidget {
    Q_OBJECT
public:
    explicit WhoPanel(QWidget* parent);
    void show(const QList<kitchen::WhoMay>& who);
    using QWidget::show;

private:
    QLabel* m_mayTitle;
    QLabel* m_may;
    QLabel* m_mayNotTitle;
    QLabel* m_mayNot;
};

} // namespace ladlework::ui
