#include "ui/print/card_layout.h"

#include "ui/print/block_layout.h"

#include <QCoreApplication>

namespace ladlework::ui {

namespace {

QList<Strip> titleStrips(const QString& title, const QFont& font, const PrintStyle& style,
                         double width) {
    if (title.isEmpty())
        return {};
    QList<Strip> strips = lineStrips(breakText(title, font, width, 1.22), 0);
    for (Strip& strip : strips)
        strip.keepWithNext = true;
    Strip& last = strips.last();
    last.height += 0.45 * style.bodySize;
    last.drawing.rules << RuleItem{QPointF(0, last.height), QPointF(width, last.height),
                                   style.rule};
    return strips;
}

/// A letterhead stands above the title of its card.
void putAboveTitle(CardLayout& layout, QList<Strip> strips, const PrintStyle& style) {
    for (Strip& strip : strips)
        strip.keepWithNext = true;
    if (!layout.title.isEmpty())
        layout.title.first().gapBefore = 2.2 * style.blockGap;
    layout.title = strips + layout.title;
}

} // namespace

CardLayout layOutCard(const handout::Card& card, const PrintStyle& style, double width,
                      double mostHeight) {
    const bool cover = card.kind == handout::Card::Kind::Cover;
    const QFont& titleFont = cover ? style.coverTitle : style.cardTitle;
    CardLayout layout;
    layout.framed = !cover;
    layout.title = titleStrips(card.title, titleFont, style, width);
    const QString continued =
        QCoreApplication::translate("Print", "%1 (continued)").arg(card.title);
    layout.continuedTitle =
        card.title.isEmpty() ? QList<Strip>() : titleStrips(continued, style.heading, style, width);
    const double most = mostHeight - heightOf(layout.title) - style.blockGap;
    for (const handout::Block& block : card.blocks) {
        QList<Strip> strips = layOutBlock(block, style, width, most);
        if (strips.isEmpty())
            continue;
        if (std::holds_alternative<handout::Letterhead>(block) && layout.body.isEmpty()) {
            putAboveTitle(layout, strips, style);
            continue;
        }
        const bool heading = std::holds_alternative<handout::Heading>(block);
        strips.first().gapBefore = (heading ? 1.5 : 1.0) * style.blockGap;
        layout.body << strips;
    }
    return layout;
}

double heightOf(const QList<Strip>& strips) {
    double height = 0;
    for (qsizetype i = 0; i < strips.size(); ++i)
        height += strips.at(i).height + (i > 0 ? strips.at(i).gapBefore : 0);
    return height;
}

} // namespace ladlework::ui
