#include "ui/week/plan_panel.h"

#include "ui/paint/theme.h"

#include <QAccessible>
#include <QHBoxLayout>
#include <QLabel>
#include <QProgressBar>
#include <QPushButton>
#include <QToolButton>
#include <algorithm>

namespace ladlework::ui {

namespace {

/// More than these are shown on request.
constexpr qsizetype hintsAtOnce = 1;
constexpr int barCharacters = 14;

QString linkWords(const QString& screen) {
    if (screen == QStringLiteral("members"))
        return PlanPanel::tr("Members");
    if (screen == QStringLiteral("pots"))
        return PlanPanel::tr("Pots");
    return PlanPanel::tr("Free hours");
}

} // namespace

PlanPanel::PlanPanel(QWidget* parent)
    : QFrame(parent), m_words(new QLabel), m_bar(new QProgressBar),
      m_cancel(new QPushButton(tr("Stop"))), m_close(new QToolButton), m_list(new QWidget),
      m_lines(new QVBoxLayout(m_list)) {
    setAccessibleName(tr("Planning the week"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(step(*this) / 2);
    auto* row = new QHBoxLayout;
    row->setSpacing(step(*this));
    m_words->setWordWrap(true);
    m_words->setTextFormat(Qt::PlainText);
    m_words->setTextInteractionFlags(Qt::TextSelectableByMouse);
    m_bar->setTextVisible(false);
    m_bar->setFixedWidth(fontMetrics().averageCharWidth() * barCharacters);
    m_bar->setFixedHeight(step(*this));
    m_bar->setAccessibleName(tr("How far the planner is"));
    m_cancel->setToolTip(tr("Leaves the week as it is (Esc)"));
    m_close->setText(QStringLiteral("\u00d7"));
    m_close->setToolTip(tr("Puts this line away"));
    m_close->setAccessibleName(tr("Put the result away"));
    m_close->setFocusPolicy(Qt::TabFocus);
    row->addWidget(m_words, 1);
    row->addWidget(m_bar);
    row->addWidget(m_cancel);
    row->addWidget(m_close, 0, Qt::AlignTop);
    column->addLayout(row);
    m_lines->setContentsMargins(0, 0, 0, 0);
    m_lines->setSpacing(step(*this) / 4);
    column->addWidget(m_list);
    connect(m_cancel, &QPushButton::clicked, this, &PlanPanel::cancelWanted);
    connect(m_close, &QToolButton::clicked, this, &PlanPanel::clear);
    clear();
}

void PlanPanel::fitHeight() {
    const int height = layout()->hasHeightForWidth() ? layout()->totalHeightForWidth(width())
                                                     : layout()->totalSizeHint().height();
    if (height != this->height())
        setFixedHeight(height);
}

void PlanPanel::resizeEvent(QResizeEvent* event) {
    QFrame::resizeEvent(event);
    fitHeight();
}

bool PlanPanel::event(QEvent* event) {
    const bool handled = QFrame::event(event);
    if (event->type() == QEvent::LayoutRequest)
        fitHeight();
    return handled;
}

QString PlanPanel::words() const {
    return m_words->text();
}

bool PlanPanel::isWorking() const {
    return m_bar->isVisibleTo(this);
}

void PlanPanel::tell(const QString& words) {
    m_words->setText(words);
    setAccessibleDescription(words);
}

void PlanPanel::showWorking(const QString& words, int level, int levels) {
    tell(words);
    m_bar->setRange(0, levels);
    m_bar->setValue(level);
    m_bar->show();
    m_cancel->show();
    m_close->hide();
    m_hints.clear();
    fillHints();
    show();
}

void PlanPanel::showResult(const QString& words, const QList<PlanHint>& hints, bool searching) {
    tell(searching ? tr("%1 Looking for what would help\u2026").arg(words) : words);
    m_bar->setRange(0, 0);
    m_bar->setVisible(searching);
    m_cancel->setVisible(searching);
    m_close->setVisible(!searching);
    m_hints = hints;
    m_all = hints.size() <= hintsAtOnce;
    fillHints();
    show();
    QAccessibleEvent told(this, QAccessible::Alert);
    QAccessible::updateAccessibility(&told);
}

void PlanPanel::clear() {
    m_words->clear();
    m_bar->hide();
    m_hints.clear();
    fillHints();
    hide();
}

QWidget* PlanPanel::makeHint(const PlanHint& hint) {
    auto* line = new QWidget;
    auto* row = new QHBoxLayout(line);
    row->setContentsMargins(step(*this), 0, 0, 0);
    row->setSpacing(step(*this));
    auto* words = new QLabel(tr("%1 %2").arg(hint.what, hint.wouldHelp));
    words->setWordWrap(true);
    words->setTextFormat(Qt::PlainText);
    words->setTextInteractionFlags(Qt::TextSelectableByMouse);
    row->addWidget(words, 1);
    if (!hint.screen.isEmpty()) {
        auto* link = new QPushButton(linkWords(hint.screen));
        link->setFlat(true);
        link->setAccessibleDescription(hint.wouldHelp);
        connect(link, &QPushButton::clicked, this,
                [this, screen = hint.screen] { Q_EMIT screenWanted(screen); });
        row->addWidget(link, 0, Qt::AlignTop);
    }
    return line;
}

QWidget* PlanPanel::makeMore() {
    auto* more = new QPushButton(tr("%1 more").arg(m_hints.size() - hintsAtOnce));
    more->setFlat(true);
    more->setToolTip(tr("Shows what else is in the way and would help"));
    connect(more, &QPushButton::clicked, this, [this] {
        m_all = true;
        fillHints();
        m_close->setFocus();
    });
    return more;
}

void PlanPanel::fillHints() {
    while (QLayoutItem* item = m_lines->takeAt(0)) {
        item->widget()->deleteLater();
        item->widget()->hide();
        delete item;
    }
    const qsizetype shown = m_all ? m_hints.size() : std::min(m_hints.size(), hintsAtOnce);
    for (qsizetype index = 0; index < shown; ++index)
        m_lines->addWidget(makeHint(m_hints.at(index)));
    if (shown < m_hints.size())
        m_lines->itemAt(m_lines->count() - 1)->widget()->layout()->addWidget(makeMore());
    m_list->setVisible(!m_hints.isEmpty());
}

} // namespace ladlework::ui
