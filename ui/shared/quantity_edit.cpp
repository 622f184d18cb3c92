#include "ui/shared/quantity_edit.h"

#include "ui/paint/finding_mark.h"
#include "ui/paint/theme.h"

#include <QAction>
#include <QIcon>
#include <QKeyEvent>
#include <QPainter>
#include <QPixmap>
#include <QStyle>
#include <QTimer>
#include <QToolTip>

namespace ladlework::ui {

namespace {

/// The mark of a stop as an icon, so that the colour of the border does not speak alone.
QIcon problemIcon(const QWidget& widget) {
    const int side = 2 * step(widget);
    QPixmap pixmap(side, side);
    pixmap.fill(Qt::transparent);
    QPainter painter(&pixmap);
    drawFindingMark(painter, QRectF(side * 0.15, side * 0.15, side * 0.7, side * 0.7),
                    Finding::Severity::Stop, coloursOf(widget));
    return QIcon(pixmap);
}

} // namespace

QuantityEdit::QuantityEdit(QWidget* parent) : QLineEdit(parent) {
    connect(this, &QLineEdit::textEdited, this, &QuantityEdit::onTextEdited);
}

void QuantityEdit::showValue() {
    if (hasFocus() && isModified())
        return;
    markProblem({});
    const QString text = words();
    m_shown = text;
    if (text == this->text())
        return;
    setText(text);
    if (hasFocus())
        selectAll();
}

void QuantityEdit::showEdited() {
    markProblem({});
    m_shown = words();
    setText(m_shown);
    selectAll();
    Q_EMIT valueEdited();
}

void QuantityEdit::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
    case Qt::Key_Return:
    case Qt::Key_Enter:
        if (!isGood()) {
            QToolTip::showText(mapToGlobal(QPoint(0, height())), m_problem, this);
            return;
        }
        commit();
        QLineEdit::keyPressEvent(event);
        event->accept();
        return;
    case Qt::Key_Escape:
        if (isModified() || differs()) {
            abandon();
            return;
        }
        break;
    default:
        break;
    }
    QLineEdit::keyPressEvent(event);
}

void QuantityEdit::focusOutEvent(QFocusEvent* event) {
    // A menu or another window takes the focus for a moment only: the text stays as it is.
    const bool forAMoment = event->reason() == Qt::PopupFocusReason;
    if (!forAMoment) {
        if (isGood()) {
            commit();
        } else {
            sayNotKept();
            abandon();
        }
    }
    QLineEdit::focusOutEvent(event);
}

void QuantityEdit::sayNotKept() {
    // After the focus has moved: moving it takes every tool tip away.
    const QString words = tr("\"%1\" was not kept. %2").arg(text(), m_problem);
    QTimer::singleShot(0, this, [this, words] {
        if (isVisible())
            QToolTip::showText(mapToGlobal(QPoint(0, height())), words, this);
    });
}

void QuantityEdit::onTextEdited(const QString& text) {
    markProblem(read(text));
    if (isGood())
        Q_EMIT valueEdited();
}

void QuantityEdit::markProblem(const QString& sentence) {
    if (sentence == m_problem)
        return;
    if (m_problem.isEmpty()) {
        m_description = accessibleDescription();
        m_toolTip = toolTip();
    }
    const bool wasGood = isGood();
    m_problem = sentence;
    setAccessibleDescription(isGood() ? m_description : m_problem);
    setToolTip(isGood() ? m_toolTip : m_problem);
    if (wasGood == isGood())
        return;
    if (isGood()) {
        delete m_mark;
        m_mark = nullptr;
    } else {
        m_mark = addAction(problemIcon(*this), QLineEdit::TrailingPosition);
    }
    setProperty("bad", !isGood());
    style()->unpolish(this);
    style()->polish(this);
}

void QuantityEdit::commit() {
    setModified(false);
    const bool changed = differs();
    settle();
    showValue();
    if (changed)
        Q_EMIT valueCommitted();
}

void QuantityEdit::abandon() {
    setModified(false);
    const bool changed = differs();
    takeBack();
    showValue();
    if (hasFocus())
        selectAll();
    if (changed)
        Q_EMIT valueEdited();
}

} // namespace ladlework::ui
