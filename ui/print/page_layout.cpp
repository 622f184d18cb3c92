#include "ui/print/page_layout.h"

#include "foundation/language_scope.h"
#include "ui/print/card_layout.h"
#include "ui/print/label_layout.h"
#include "ui/print/text_layout.h"

#include <QCoreApplication>
#include <QFontMetricsF>
#include <QPageSize>

namespace ladlework::ui {

namespace {

constexpr double sideMargin = 54 * unitsPerPoint;
constexpr double topMargin = 50 * unitsPerPoint;
constexpr double bottomMargin = 40 * unitsPerPoint;

/// A card longer than a page starts where it stands when this share of the page is still free.
constexpr double enoughToStart = 0.4;

QSizeF sheetSize(people::Paper paper) {
    const QPageSize size(paper == people::Paper::A4 ? QPageSize::A4 : QPageSize::Letter);
    return size.size(QPageSize::Point) * unitsPerPoint;
}

constexpr double footerSpacing = 1.25;

QString footerRight(const handout::Document& document, qsizetype page, qsizetype pages) {
    const QString where =
        QCoreApplication::translate("Print", "page %1 of %2").arg(page).arg(pages);
    if (document.printedOn.isEmpty())
        return where;
    return QCoreApplication::translate("Print", "printed %1 \u00b7 %2")
        .arg(document.printedOn, where);
}

/// One line when the family and the page have room beside each other, else two.
int footerLines(const handout::Document& document, const PrintStyle& style, double width) {
    constexpr qsizetype threeDigits = 888;
    const QFontMetricsF metrics(style.footer);
    const double both = metrics.horizontalAdvance(document.footer) +
                        metrics.horizontalAdvance(footerRight(document, threeDigits, threeDigits));
    return both + 2.0 * style.footer.pixelSize() <= width ? 1 : 2;
}

/// The height of a line of the footer: names in some scripts need more than Latin letters.
double footerLine(const handout::Document& document, const PrintStyle& style) {
    constexpr double noLimit = 1e6;
    return std::max(breakText(document.footer, style.footer, noLimit, footerSpacing).heightOf(0, 1),
                    breakText(footerRight(document, 1, 1), style.footer, noLimit, footerSpacing)
                        .heightOf(0, 1));
}

PageLayout emptyLayout(const handout::Document& document, const PrintStyle& style) {
    const people::Paper paper = document.paper;
    PageLayout layout;
    layout.paper = paper;
    layout.size = sheetSize(paper);
    const double width = layout.size.width() - 2 * sideMargin;
    const double footerHeight = 0.9 * style.footer.pixelSize() +
                                footerLines(document, style, width) * footerLine(document, style);
    const double footerTop = layout.size.height() - bottomMargin - footerHeight;
    layout.footer = QRectF(sideMargin, footerTop, width, footerHeight);
    layout.content = QRectF(sideMargin, topMargin, width,
                            footerTop - topMargin - 1.2 * style.footer.pixelSize());
    return layout;
}

/// Puts cards on pages, one after the other.
class Paginator {
public:
    Paginator(PageLayout& layout, bool largePrint) : m_layout(layout), m_largePrint(largePrint) {
        newPage();
    }

    /// Sets the card as usual, or closer when that saves a page: a few lines alone on the next page
    /// are soon lost.
    void place(const handout::Card& card) {
        const QList<Page> pages = m_layout.pages;
        const QList<OutlineEntry> outline = m_layout.outline;
        const bool afterSheets = m_afterSheets;
        const double down = m_down;
        qsizetype fewest = 0;
        Spacing best = Spacing::Usual;
        for (const Spacing spacing : {Spacing::Usual, Spacing::Tight, Spacing::Tightest}) {
            const qsizetype used = placeSet(card, spacing);
            if (spacing == Spacing::Usual || used < fewest) {
                fewest = used;
                best = spacing;
            }
            if (used == 1)
                return;
            m_layout.pages = pages;
            m_layout.outline = outline;
            m_afterSheets = afterSheets;
            m_down = down;
        }
        placeSet(card, best);
    }

    /// Puts whole sheets after the pages so far; what comes next begins a new page.
    void placeSheets(const QString& title, const QList<Page>& sheets) {
        if (sheets.isEmpty())
            return;
        // The first page waits for a card; sheets of labels alone need none.
        if (m_layout.pages.size() == 1 && pageIsEmpty())
            m_layout.pages.clear();
        m_layout.outline << OutlineEntry{title, m_layout.pages.size(), 0};
        m_layout.pages << sheets;
        m_afterSheets = true;
    }

private:
    /// Gives the number of pages that the card stands on.
    qsizetype placeSet(const handout::Card& card, Spacing spacing) {
        m_style = printStyle(m_largePrint, spacing);
        const bool framed = card.kind != handout::Card::Kind::Cover;
        const double beside = framed ? 2 * m_style.paddingX : 0;
        const CardLayout laid = layOutCard(card, m_style, m_layout.content.width() - beside,
                                           m_layout.content.height() - 2 * m_style.paddingY);
        m_card = &laid;
        const double whole = heightOf(laid.title + laid.body) + 2 * padding();
        const double free = room() - gapAbove();
        const bool longerThanAPage = whole > m_layout.content.height();
        const bool enough =
            longerThanAPage ? free >= enoughToStart * m_layout.content.height() : whole <= free;
        if (m_afterSheets || (!pageIsEmpty() && (card.startsPage || !enough)))
            newPage();
        m_afterSheets = false;
        const qsizetype first = m_layout.pages.size();
        if (!card.title.isEmpty())
            m_layout.outline << OutlineEntry{card.title, first - 1,
                                             m_layout.content.top() + m_down + gapAbove()};
        begin(laid.title);
        for (qsizetype i = 0; i < laid.body.size();)
            i = placeGroup(laid.body, i);
        end();
        m_card = nullptr;
        return m_layout.pages.size() - first + 1;
    }

    [[nodiscard]] double padding() const { return m_card->framed ? m_style.paddingY : 0; }
    [[nodiscard]] bool pageIsEmpty() const { return m_down <= 0; }
    [[nodiscard]] double gapAbove() const { return pageIsEmpty() ? 0 : m_style.cardGap; }
    [[nodiscard]] double room() const { return m_layout.content.height() - m_down; }
    [[nodiscard]] double left() const {
        return m_layout.content.left() + (m_card->framed ? m_style.paddingX : 0);
    }

    void newPage() {
        m_layout.pages << Page{{}, m_layout.size, {}};
        m_down = 0;
    }

    void begin(const QList<Strip>& title) {
        m_down += gapAbove();
        m_frameTop = m_down;
        m_down += padding();
        m_freshFrame = true;
        for (const Strip& strip : title)
            put(strip);
        m_belowTitle = true;
    }

    void end() {
        m_down += padding();
        if (!m_card->framed)
            return;
        const QRectF& content = m_layout.content;
        m_layout.pages.last().boxes << BoxItem{QRectF(content.left(), content.top() + m_frameTop,
                                                      content.width(), m_down - m_frameTop),
                                               m_style.hairline};
    }

    void put(const Strip& strip) {
        if (!m_freshFrame)
            m_down += strip.gapBefore;
        m_layout.pages.last().add(strip.drawing, QPointF(left(), m_layout.content.top() + m_down));
        m_down += strip.height;
        m_freshFrame = false;
    }

    /// Puts the strip at `first` and all that must stay with it; gives the one after them.
    qsizetype placeGroup(const QList<Strip>& strips, qsizetype first) {
        qsizetype last = first;
        while (last + 1 < strips.size() && strips.at(last).keepWithNext)
            ++last;
        double height = 0;
        for (qsizetype i = first; i <= last; ++i)
            height += strips.at(i).gapBefore + strips.at(i).height;
        if (height + padding() > room() && !m_belowTitle)
            continueOnNewPage(strips.at(first));
        m_belowTitle = false;
        for (qsizetype i = first; i <= last; ++i) {
            const Strip& strip = strips.at(i);
            // A group that no page holds is broken after all.
            if (i > first && strip.gapBefore + strip.height + padding() > room())
                continueOnNewPage(strip);
            put(strip);
        }
        return last + 1;
    }

    void continueOnNewPage(const Strip& next) {
        end();
        newPage();
        begin(m_card->continuedTitle);
        if (next.repeated) {
            Strip header = *next.repeated;
            header.gapBefore = m_style.blockGap;
            put(header);
        } else if (!m_card->continuedTitle.isEmpty()) {
            m_down += m_style.blockGap;
            m_freshFrame = true;
        }
        m_belowTitle = false;
    }

    PageLayout& m_layout;
    bool m_largePrint;
    PrintStyle m_style; ///< of the card being placed
    const CardLayout* m_card = nullptr;
    double m_down = 0; ///< from the top of the content
    double m_frameTop = 0;
    bool m_afterSheets = false;
    bool m_freshFrame = false; ///< nothing in this frame yet
    bool m_belowTitle = false; ///< only the title in this frame: a break here would help nobody
};

void addFooters(PageLayout& layout, const handout::Document& document, const PrintStyle& style) {
    const QFontMetricsF metrics(style.footer);
    const QRectF& box = layout.footer;
    // Label sheets are counted out: they are fed from another tray and lie in another place.
    const qsizetype count = std::count_if(layout.pages.cbegin(), layout.pages.cend(),
                                          [](const Page& page) { return !page.isLabelSheet(); });
    qsizetype number = 0;
    for (Page& page : layout.pages) {
        if (page.isLabelSheet())
            continue;
        const QString right = footerRight(document, ++number, count);
        const BrokenText at = breakText(right, style.footer, box.width(), footerSpacing);
        const bool oneLine = footerLines(document, style, box.width()) == 1;
        const double room =
            oneLine ? box.width() - at.width - metrics.averageCharWidth() : box.width();
        const BrokenText whose =
            breakText(metrics.elidedText(document.footer, Qt::ElideRight, room), style.footer,
                      room + style.footer.pixelSize(), footerSpacing);
        const double line = footerLine(document, style);
        const double down = box.bottom() - line;
        page.rules << RuleItem{box.topLeft(), box.topRight(), style.hairline};
        page.texts << whose.item(0, 1, QPointF(box.left(), down - (oneLine ? 0 : line)))
                   << at.item(0, 1, QPointF(box.right() - at.width, down + line - at.height));
    }
}

} // namespace

void Drawing::add(const Drawing& other, QPointF offset) {
    for (const BoxItem& box : other.boxes)
        boxes << BoxItem{box.rect.translated(offset), box.lineWidth, box.filled, box.round};
    for (const RuleItem& rule : other.rules)
        rules << RuleItem{rule.from + offset, rule.to + offset, rule.width};
    for (TextItem text : other.texts) {
        text.at += offset;
        texts << text;
    }
    for (const PictureItem& picture : other.pictures)
        pictures << PictureItem{picture.rect.translated(offset), picture.image};
}

PageLayout layOut(const handout::Document& document) {
    // What the layout itself adds ("page 1 of 6") is in the language of the pages.
    const LanguageScope scope(document.language);
    const PrintStyle style = printStyle(document.largePrint);
    PageLayout layout = emptyLayout(document, style);
    Paginator paginator(layout, document.largePrint);
    for (const handout::Card& card : document.cards) {
        if (const handout::LabelSheet* labels = labelSheetIn(card))
            paginator.placeSheets(card.title, layOutLabels(*labels));
        else
            paginator.place(card);
    }
    addFooters(layout, document, style);
    return layout;
}

namespace {
PageLayout onlyPages(const PageLayout& layout, bool labelSheets) {
    PageLayout part = layout;
    part.pages.clear();
    part.outline.clear();
    for (const Page& page : layout.pages)
        if (page.isLabelSheet() == labelSheets)
            part.pages << page;
    return part;
}
} // namespace

PageLayout labelSheetsOf(const PageLayout& layout) {
    return onlyPages(layout, true);
}

PageLayout withoutLabelSheets(const PageLayout& layout) {
    return onlyPages(layout, false);
}

QString lettersWithoutShape(const PageLayout& layout) {
    QString letters;
    for (const Page& page : layout.pages)
        for (const TextItem& text : page.texts)
            for (const QChar letter : shapelessIn(text))
                if (!letters.contains(letter))
                    letters += letter;
    return letters;
}

} // namespace ladlework::ui
