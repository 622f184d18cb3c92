#include "ui/shared/section.h"

#include "ui/paint/theme.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QVBoxLayout>

namespace ladlework::ui {

Section::Section(const QString& title, QWidget* parent)
    : QFrame(parent), m_title(new QLabel(title)), m_remark(new QLabel), m_head(new QHBoxLayout),
      m_body(new QVBoxLayout) {
    const int gap = step(*this);
    m_title->setFont(sectionFont(font()));
    if (title.isEmpty())
        m_title->hide();
    m_remark->setForegroundRole(QPalette::PlaceholderText);
    m_remark->setWordWrap(true); // a narrow window must not be held open by it
    m_remark->hide();
    m_head->setSpacing(gap);
    m_head->addWidget(m_title);
    m_head->addWidget(m_remark, 1);
    m_head->addStretch();
    m_body->setSpacing(gap);

    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(3 * gap / 2, gap, 3 * gap / 2, 3 * gap / 2);
    column->setSpacing(gap);
    column->addLayout(m_head);
    column->addLayout(m_body, 1);
    setAccessibleName(title);
}

void Section::setTitle(const QString& title) {
    m_title->setText(title);
    m_title->setVisible(!title.isEmpty());
    setAccessibleName(title);
}

void Section::setRemark(const QString& remark) {
    m_remark->setText(remark);
    m_remark->setVisible(!remark.isEmpty());
}

void Section::addAction(QWidget* widget) {
    m_head->addWidget(widget);
}

void Section::changeEvent(QEvent* event) {
    if (event->type() == QEvent::FontChange)
        m_title->setFont(sectionFont(font()));
    QFrame::changeEvent(event);
}

} // namespace ladlework::ui
