#include "ui/week/free_hours_row.h"

#include "ui/paint/theme.h"
#include "ui/shared/time_edit.h"
#include "ui/shared/wheel_guard.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QToolButton>

namespace ladlework::ui {

namespace {
constexpr int fieldCharacters = 10;
}

FreeHoursRow::FreeHoursRow(QWidget* parent)
    : QWidget(parent), m_from(new TimeEdit), m_length(new DurationEdit), m_pots(new QComboBox),
      m_remove(new QToolButton) {
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(step(*this) / 2);
    const int width = fontMetrics().averageCharWidth() * fieldCharacters;
    m_from->setFixedWidth(width + step(*this));
    m_from->setPlaceholderText(tr("any time"));
    m_from->setAccessibleName(tr("Free from"));
    m_length->setFixedWidth(width + step(*this));
    m_length->setAccessibleName(tr("Free for"));
    for (int pots = 1; pots <= week::mostPotsAtOnce; ++pots)
        m_pots->addItem(pots == 1 ? tr("1 pot at once") : tr("%1 pots at once").arg(pots), pots);
    m_pots->setAccessibleName(tr("Pots at once"));
    m_remove->setText(QStringLiteral("\u00d7"));
    m_remove->setToolTip(tr("Takes these hours away"));
    m_remove->setAccessibleName(tr("Take these hours away"));
    m_remove->setFocusPolicy(Qt::TabFocus);
    row->addWidget(new QLabel(tr("free from")));
    row->addWidget(m_from);
    row->addWidget(new QLabel(tr("for")));
    row->addWidget(m_length);
    row->addWidget(m_pots);
    row->addWidget(m_remove);
    connect(m_from, &QuantityEdit::valueCommitted, this, [this] {
        m_hours.from = m_from->time();
        Q_EMIT changed(m_hours);
    });
    connect(m_length, &QuantityEdit::valueCommitted, this, [this] {
        m_hours.length = m_length->value();
        Q_EMIT changed(m_hours);
    });
    connect(m_pots, &QComboBox::activated, this, [this] {
        m_hours.pots = m_pots->currentData().toInt();
        Q_EMIT changed(m_hours);
    });
    connect(m_remove, &QToolButton::clicked, this, &FreeHoursRow::removeWanted);
    setSizePolicy(QSizePolicy::Maximum, QSizePolicy::Preferred);
    WheelGuard::protect(*this);
}

void FreeHoursRow::setHours(const week::FreeHours& hours) {
    m_hours = hours;
    m_from->setTime(hours.from);
    m_length->setValue(hours.length, quantity::MeasureSystem::UsCustomary);
    m_pots->setCurrentIndex(m_pots->findData(hours.pots));
}

} // namespace ladlework::ui
