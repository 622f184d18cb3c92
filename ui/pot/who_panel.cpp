#include "ui/pot/who_panel.h"

#include "ui/paint/theme.h"

#include <QLabel>
#include <QVBoxLayout>

namespace ladlework::ui {

WhoPanel::WhoPanel(QWidget* parent)
    : QWidget(parent), m_mayTitle(new QLabel(tr("May drink it"), this)), m_may(new QLabel(this)),
      m_mayNotTitle(new QLabel(tr("May not"), this)), m_mayNot(new QLabel(this)) {
    auto* lines = new QVBoxLayout(this);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->setSpacing(step(*this) / 4);
    for (QLabel* label : {m_mayTitle, m_may, m_mayNotTitle, m_mayNot}) {
        label->setWordWrap(true);
        label->setTextFormat(Qt::PlainText);
        lines->addWidget(label);
    }
    lines->insertSpacing(2, step(*this) / 2);
    QFont strong = font();
    strong.setBold(true);
    for (QLabel* title : {m_mayTitle, m_mayNotTitle})
        title->setFont(strong);
}

void WhoPanel::show(const QList<kitchen::WhoMay>& who) {
    QStringList may;
    QStringList mayNot;
    for (const kitchen::WhoMay& one : who) {
        const QString line = one.why.isEmpty() ? one.name : tr("%1: %2").arg(one.name, one.why);
        (one.may ? may : mayNot).append(line);
    }
    m_mayTitle->setVisible(!may.isEmpty());
    m_may->setVisible(!may.isEmpty());
    m_mayNotTitle->setVisible(!mayNot.isEmpty());
    m_mayNot->setVisible(!mayNot.isEmpty());
    m_may->setText(may.join(u'\n'));
    m_mayNot->setText(mayNot.join(u'\n'));
}

} // namespace ladlework::ui
