#include "ui/families/family_delegate.h"

#include "ui/families/families_model.h"
#include "ui/paint/finding_mark.h"
#include "ui/paint/theme.h"

#include <QApplication>
#include <QPainter>
#include <QStyle>
#include <QWidget>

namespace ladlework::ui {

namespace {

QColor textColour(const QStyleOptionViewItem& option, QPalette::ColorRole role) {
    const bool selected = option.state.testFlag(QStyle::State_Selected);
    return option.palette.color(QPalette::Active, selected ? QPalette::HighlightedText : role);
}

/// A small triangle that points right while folded and down while open.
void drawFold(QPainter& painter, const QRectF& box, bool open, const QColor& colour) {
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(Qt::NoPen);
    painter.setBrush(colour);
    painter.translate(box.center());
    if (open)
        painter.rotate(90);
    const double reach = box.width() * 0.25;
    painter.drawPolygon(
        QPolygonF{QPointF(-reach * 0.7, -reach), QPointF(-reach * 0.7, reach), QPointF(reach, 0)});
    painter.restore();
}

} // namespace

void FamilyDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                           const QModelIndex& index) const {
    QStyleOptionViewItem panel = option;
    initStyleOption(&panel, index);
    panel.text.clear();
    const QStyle* style = option.widget != nullptr ? option.widget->style() : QApplication::style();
    style->drawControl(QStyle::CE_ItemViewItem, &panel, painter, option.widget);

    const int line = option.fontMetrics.height();
    const int gap = line / 2;
    const bool selected = option.state.testFlag(QStyle::State_Selected);
    const QRect inner = option.rect.adjusted(gap / 2, gap / 2, -gap, -gap / 2);
    const QRectF markBox(inner.left(), inner.top(), line, line);
    const QRect textBox = inner.adjusted(line + gap / 2, 0, 0, 0);
    painter->save();
    if (index.data(FamiliesModel::IsFoldRole).toBool()) {
        const QColor quiet = textColour(option, QPalette::PlaceholderText);
        drawFold(*painter, markBox, index.data(FamiliesModel::IsOpenRole).toBool(), quiet);
        painter->setPen(quiet);
        painter->drawText(textBox, Qt::AlignLeft | Qt::AlignTop,
                          option.fontMetrics.elidedText(index.data().toString(), Qt::ElideRight,
                                                        textBox.width()));
        painter->restore();
        return;
    }
    const QVariant severity = index.data(FamiliesModel::SeverityRole);
    if (severity.isValid() && option.widget != nullptr) {
        // On the selection the marks would lose their contrast: they stand on a patch of paper.
        const Colours& colours = coloursOf(*option.widget);
        if (selected) {
            painter->setRenderHint(QPainter::Antialiasing);
            painter->setPen(Qt::NoPen);
            painter->setBrush(colours.raised);
            painter->drawEllipse(markBox.adjusted(-1, -1, 1, 1));
        }
        const double inset = line * (selected ? 0.2 : 0.12);
        drawFindingMark(*painter, markBox.adjusted(inset, inset, -inset, -inset),
                        static_cast<Finding::Severity>(severity.toInt()), colours);
    }
    const bool active = index.data(FamiliesModel::IsActiveRole).toBool();
    QFont name = option.font;
    name.setWeight(active ? QFont::DemiBold : QFont::Normal);
    painter->setFont(name);
    painter->setPen(textColour(option, QPalette::Text));
    painter->drawText(
        textBox, Qt::AlignLeft | Qt::AlignTop,
        QFontMetrics(name).elidedText(index.data().toString(), Qt::ElideRight, textBox.width()));
    painter->setFont(option.font);
    painter->setPen(textColour(option, QPalette::PlaceholderText));
    painter->drawText(textBox.adjusted(0, line, 0, 0), Qt::AlignLeft | Qt::AlignTop,
                      option.fontMetrics.elidedText(index.data(FamiliesModel::WordsRole).toString(),
                                                    Qt::ElideRight, textBox.width()));
    painter->restore();
}

QSize FamilyDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
    const int line = option.fontMetrics.height();
    const bool oneLine = index.data(FamiliesModel::IsFoldRole).toBool() ||
                         index.data(FamiliesModel::WordsRole).toString().isEmpty();
    return {line * 8, (oneLine ? line : 2 * line) + line / 2};
}

} // namespace ladlework::ui
