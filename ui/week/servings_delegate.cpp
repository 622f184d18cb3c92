#include "ui/week/servings_delegate.h"

#include "ui/paint/finding_mark.h"
#include "ui/paint/theme.h"
#include "ui/week/servings_model.h"

#include <QApplication>
#include <QPainter>

namespace ladlework::ui {

void ServingsDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                             const QModelIndex& index) const {
    QStyleOptionViewItem cell = option;
    initStyleOption(&cell, index);
    const QStringList lines = index.data(Qt::DisplayRole).toString().split(QLatin1Char('\n'));
    cell.text.clear();
    option.widget->style()->drawControl(QStyle::CE_ItemViewItem, &cell, painter, option.widget);

    const Colours& colours = coloursOf(*option.widget);
    const bool selected = option.state.testFlag(QStyle::State_Selected);
    const int gap = step(*option.widget) / 2;
    const int height = option.fontMetrics.lineSpacing();
    QRect line = option.rect.adjusted(gap, gap / 2, -gap / 2, 0);
    line.setHeight(height);
    painter->save();
    painter->setFont(figuresFont(option.font));
    const QColor chosen = option.palette.color(QPalette::HighlightedText);
    const bool quiet = index.data(ServingsModel::QuietRole).toBool();
    painter->setPen(selected ? chosen : quiet ? colours.quietInk : colours.ink);
    painter->drawText(line, Qt::AlignLeft | Qt::AlignVCenter, lines.first());
    if (lines.size() > 1 && quiet) {
        painter->drawText(line.translated(0, height), Qt::AlignLeft | Qt::AlignVCenter,
                          lines.at(1));
    } else if (lines.size() > 1) {
        line.translate(0, height);
        const QRectF mark(line.left(), line.top() + height * 0.15, height * 0.7, height * 0.7);
        if (!selected)
            drawFindingMark(*painter, mark, Finding::Severity::Caution, colours);
        painter->setPen(selected ? chosen : colours.copper);
        painter->drawText(line.adjusted(height, 0, 0, 0), Qt::AlignLeft | Qt::AlignVCenter,
                          lines.at(1));
    }
    painter->restore();
}

QSize ServingsDelegate::sizeHint(const QStyleOptionViewItem& option,
                                 const QModelIndex& index) const {
    const int lines = index.data(ServingsModel::LinesRole).toInt();
    return {option.fontMetrics.averageCharWidth() * 10,
            lines * option.fontMetrics.lineSpacing() + step(*option.widget) / 2};
}

} // namespace ladlework::ui
