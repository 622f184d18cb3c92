#include "ui/shared/empty_state.h"

#include "ui/paint/theme.h"

#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace ladlework::ui {

namespace {
constexpr int lineLength = 60; ///< characters of running text
}

EmptyState::EmptyState(const QString& title, const QString& text, const QString& action,
                       QWidget* parent)
    : QWidget(parent), m_button(new QPushButton(action)) {
    auto* heading = new QLabel(title);
    heading->setFont(titleFont(font()));
    heading->setAlignment(Qt::AlignHCenter);
    heading->setWordWrap(true);
    auto* explanation = new QLabel(text);
    explanation->setForegroundRole(QPalette::PlaceholderText);
    explanation->setAlignment(Qt::AlignHCenter | Qt::AlignTop);
    explanation->setWordWrap(true);
    const int width = fontMetrics().averageCharWidth() * lineLength;
    explanation->setFixedWidth(width);
    explanation->setMinimumHeight(explanation->heightForWidth(width));
    heading->setFixedWidth(width);
    heading->setMinimumHeight(heading->heightForWidth(width));
    m_button->setProperty("primary", true);
    m_button->setAccessibleDescription(text);
    if (action.isEmpty())
        m_button->hide();

    auto* column = new QVBoxLayout(this);
    column->setSpacing(2 * step(*this));
    column->addStretch(2);
    column->addWidget(heading, 0, Qt::AlignHCenter);
    column->addWidget(explanation, 0, Qt::AlignHCenter);
    column->addWidget(m_button, 0, Qt::AlignHCenter);
    column->addStretch(3);
}

} // namespace ladlework::ui
