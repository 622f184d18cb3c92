#include "ui/shell/command_list.h"

#include "ui/paint/theme.h"

#include <QAction>
#include <QApplication>
#include <QKeyEvent>
#include <QLineEdit>
#include <QListView>
#include <QPainter>
#include <QStyledItemDelegate>
#include <QVBoxLayout>

#include <algorithm>

namespace ladlework::ui {

namespace {

constexpr int visibleRows = 12;
constexpr int panelWidth = 76; ///< characters

/// The words at the left, the menu in quiet ink after them, the keys at the right.
class CommandDelegate final : public QStyledItemDelegate {
public:
    using QStyledItemDelegate::QStyledItemDelegate;

    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override {
        QStyleOptionViewItem panel = option;
        initStyleOption(&panel, index);
        panel.text.clear();
        option.widget->style()->drawControl(QStyle::CE_ItemViewItem, &panel, painter,
                                            option.widget);
        const bool selected = option.state.testFlag(QStyle::State_Selected);
        const auto ink = [&](QPalette::ColorRole role) {
            return option.palette.color(QPalette::Active,
                                        selected ? QPalette::HighlightedText : role);
        };
        const int gap = option.fontMetrics.height() / 2;
        const QRect inner = option.rect.adjusted(gap, 0, -gap, 0);
        const QString keys = index.data(CommandModel::ShortcutRole).toString();
        painter->save();
        painter->setPen(ink(QPalette::PlaceholderText));
        painter->drawText(inner, Qt::AlignRight | Qt::AlignVCenter, keys);
        const QString place = index.data(CommandModel::PlaceRole).toString();
        const int keysWidth = keys.isEmpty() ? 0 : option.fontMetrics.horizontalAdvance(keys) + gap;
        const int placeWidth = option.fontMetrics.horizontalAdvance(place) + 2 * gap;
        const QString words = option.fontMetrics.elidedText(index.data().toString(), Qt::ElideRight,
                                                            inner.width() - keysWidth - placeWidth);
        painter->setPen(ink(QPalette::Text));
        painter->drawText(inner, Qt::AlignLeft | Qt::AlignVCenter, words);
        painter->setPen(ink(QPalette::PlaceholderText));
        painter->drawText(
            inner.adjusted(option.fontMetrics.horizontalAdvance(words) + gap, 0, -keysWidth, 0),
            Qt::AlignLeft | Qt::AlignVCenter, place);
        painter->restore();
    }

    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex&) const override {
        return {option.fontMetrics.height(), option.fontMetrics.height() * 3 / 2};
    }
};

} // namespace

CommandList::CommandList(QWidget* window)
    : QFrame(window), m_model(new CommandModel(this)), m_search(new QLineEdit),
      m_view(new QListView) {
    build();
    hide();
    connect(m_search, &QLineEdit::textChanged, this, [this](const QString& text) {
        m_model->setSearch(text);
        m_view->setCurrentIndex(m_model->index(0));
    });
    connect(m_view, &QListView::clicked, this, &CommandList::trigger);
    m_search->installEventFilter(this);
    window->installEventFilter(this);
}

void CommandList::build() {
    const int gap = step(*this);
    setFrameShape(QFrame::Box);
    setFrameShadow(QFrame::Plain);
    setAutoFillBackground(true);
    setAccessibleName(tr("Command list"));
    m_search->setPlaceholderText(tr("Type a part of what it is called"));
    m_search->setAccessibleName(tr("Search the commands"));
    m_view->setModel(m_model);
    m_view->setItemDelegate(new CommandDelegate(m_view));
    m_view->setUniformItemSizes(true);
    m_view->setFocusPolicy(Qt::NoFocus);
    m_view->setAccessibleName(tr("Commands"));
    m_view->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(gap, gap, gap, gap);
    column->setSpacing(gap);
    column->addWidget(m_search);
    column->addWidget(m_view, 1);
}

void CommandList::open(const QList<CommandModel::Command>& commands) {
    m_before = QApplication::focusWidget();
    m_model->setCommands(commands);
    m_search->clear();
    m_view->setCurrentIndex(m_model->index(0));
    place();
    show();
    raise();
    m_search->setFocus(Qt::ShortcutFocusReason);
}

void CommandList::place() {
    const int line = fontMetrics().height();
    const QWidget& window = *parentWidget();
    const int wide =
        std::min(fontMetrics().averageCharWidth() * panelWidth, window.width() - 2 * line);
    const int high = std::min(line * 3 / 2 * visibleRows + 5 * line, window.height() - 4 * line);
    setGeometry((window.width() - wide) / 2, 2 * line, wide, high);
}

void CommandList::moveBy(int rows) {
    const int count = m_model->rowCount();
    if (count == 0)
        return;
    const int row = std::clamp(m_view->currentIndex().row() + rows, 0, count - 1);
    m_view->setCurrentIndex(m_model->index(row));
}

void CommandList::trigger(const QModelIndex& index) {
    if (!index.isValid())
        return;
    const QPointer<QAction> action = m_model->action(index.row());
    close();
    if (action != nullptr)
        action->trigger();
}

void CommandList::close() {
    const QPointer<QWidget> before = m_before;
    hide();
    m_model->setCommands({});
    if (before != nullptr)
        before->setFocus(Qt::OtherFocusReason);
}

bool CommandList::eventFilter(QObject* watched, QEvent* event) {
    if (watched == parentWidget()) {
        if (event->type() == QEvent::Resize && isVisible())
            place();
        return false;
    }
    if (event->type() == QEvent::FocusOut && isVisible() && !isActiveWindow())
        return false;
    if (event->type() == QEvent::FocusOut && isVisible()) {
        m_before = nullptr; // the person went elsewhere
        close();
        return false;
    }
    if (event->type() != QEvent::KeyPress)
        return false;
    switch (static_cast<QKeyEvent*>(event)->key()) {
    case Qt::Key_Escape:
        close();
        return true;
    case Qt::Key_Return:
    case Qt::Key_Enter:
        trigger(m_view->currentIndex());
        return true;
    case Qt::Key_Down:
        moveBy(1);
        return true;
    case Qt::Key_Up:
        moveBy(-1);
        return true;
    case Qt::Key_PageDown:
        moveBy(visibleRows);
        return true;
    case Qt::Key_PageUp:
        moveBy(-visibleRows);
        return true;
    default:
        return false;
    }
}

} // namespace ladlework::ui
