#include "ui/week/board_delegate.h"

#include "ui/paint/theme.h"
#include "ui/week/board_model.h"

#include <QLineEdit>
#include <QPainter>
#include <QTextLayout>

namespace ladlework::ui {

namespace {

constexpr int nameLines = 2;

/// The name on at most two lines; the second is cut with an ellipsis.
void drawName(QPainter& painter, const QRect& box, const QString& name, const QFont& font) {
    QTextLayout layout(name, font);
    QTextOption option(Qt::AlignLeft);
    option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
    layout.setTextOption(option);
    layout.beginLayout();
    const QFontMetrics metrics(font);
    for (int i = 0; i < nameLines; ++i) {
        QTextLine line = layout.createLine();
        if (!line.isValid())
            break;
        line.setLineWidth(box.width());
        const bool last = i + 1 == nameLines;
        const QString text =
            last ? metrics.elidedText(name.mid(line.textStart()), Qt::ElideRight, box.width())
                 : name.mid(line.textStart(), line.textLength());
        painter.drawText(QRect(box.left(), box.top() + i * metrics.lineSpacing(), box.width(),
                               metrics.lineSpacing()),
                         Qt::AlignLeft | Qt::AlignVCenter, text);
    }
    layout.endLayout();
}

QFont strongFont(const QFont& base) {
    QFont font = base;
    font.setWeight(QFont::DemiBold);
    return font;
}

} // namespace

int BoardDelegate::heightFor(const QWidget& widget) {
    return widget.fontMetrics().lineSpacing() * (nameLines + 2) + 2 * step(widget);
}

int BoardDelegate::emptyHeightFor(const QWidget& widget) {
    return widget.fontMetrics().lineSpacing() + 3 * step(widget);
}

void BoardDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                          const QModelIndex& index) const {
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    if (index.data(BoardModel::PlacementRole).toLongLong() >= 0)
        paintCard(*painter, option, index);
    else
        paintEmpty(*painter, option);
    painter->restore();
}

void BoardDelegate::paintCard(QPainter& painter, const QStyleOptionViewItem& option,
                              const QModelIndex& index) {
    const Colours& colours = coloursOf(*option.widget);
    const int gap = step(*option.widget) / 2;
    const QRect card = option.rect.adjusted(gap / 2, gap / 2, -gap / 2, -gap / 2);
    const bool current = option.state.testFlag(QStyle::State_Selected);
    const bool focused =
        current && option.state.testFlag(QStyle::State_Active) && option.widget->hasFocus();
    const bool proposed = index.data(BoardModel::ProposedRole).toBool();
    painter.setPen(QPen(current || proposed ? colours.bay : colours.quietInk, focused ? 3 : 1,
                        proposed ? Qt::DashLine : Qt::SolidLine));
    painter.setBrush(colours.page);
    painter.drawRoundedRect(QRectF(card).adjusted(1, 1, -1, -1), gap / 2.0, gap / 2.0);
    const QRect inside = card.adjusted(gap, gap / 2, -gap / 2, -gap / 2);
    const int line = option.fontMetrics.lineSpacing();
    const QString start = index.data(BoardModel::StartRole).toString();
    painter.setFont(figuresFont(option.font));
    painter.setPen(colours.quietInk);
    painter.drawText(QRect(inside.left(), inside.top(), inside.width(), line),
                     Qt::AlignLeft | Qt::AlignVCenter,
                     start.isEmpty() ? BoardDelegate::tr("no start time") : start);
    painter.setPen(colours.ink);
    painter.setFont(strongFont(option.font));
    drawName(painter, QRect(inside.left(), inside.top() + line, inside.width(), 2 * line),
             index.data(BoardModel::PotNameRole).toString(), painter.font());
    painter.setFont(option.font);
    painter.setPen(colours.quietInk);
    const QString yield = index.data(BoardModel::YieldRole).toString();
    painter.drawText(QRect(inside.left(), inside.top() + 3 * line, inside.width(), line),
                     Qt::AlignLeft | Qt::AlignVCenter,
                     option.fontMetrics.elidedText(yield, Qt::ElideRight, inside.width()));
}

void BoardDelegate::paintEmpty(QPainter& painter, const QStyleOptionViewItem& option) {
    if (!option.state.testFlag(QStyle::State_Selected))
        return;
    const Colours& colours = coloursOf(*option.widget);
    const int gap = step(*option.widget) / 2;
    const QRect place = option.rect.adjusted(gap / 2, gap / 2, -gap / 2, -gap / 2);
    const bool focused = option.widget->hasFocus();
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(colours.bay, focused ? 3 : 1, focused ? Qt::SolidLine : Qt::DashLine));
    painter.drawRoundedRect(QRectF(place).adjusted(1, 1, -1, -1), gap / 2.0, gap / 2.0);
    painter.setPen(colours.quietInk);
    painter.drawText(place.adjusted(gap, gap, -gap, -gap), Qt::AlignCenter | Qt::TextWordWrap,
                     BoardDelegate::tr("Enter: put a pot"));
}

QWidget* BoardDelegate::createEditor(QWidget* parent, const QStyleOptionViewItem& /*option*/,
                                     const QModelIndex& index) const {
    if (index.data(BoardModel::PlacementRole).toLongLong() < 0)
        return nullptr;
    auto* edit = new QLineEdit(parent);
    edit->setAccessibleName(tr("Start time"));
    edit->setPlaceholderText(tr("9:30"));
    return edit;
}

void BoardDelegate::updateEditorGeometry(QWidget* editor, const QStyleOptionViewItem& option,
                                         const QModelIndex& /*index*/) const {
    QRect line = option.rect;
    line.setHeight(editor->sizeHint().height());
    editor->setGeometry(line);
}

} // namespace ladlework::ui
