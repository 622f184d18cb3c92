#pragma once

#include "casebook/handout_template.h"
#include "people/practice.h"

#include <QByteArray>
#include <QList>
#include <QString>
#include <QStringList>
#include <variant>

namespace ladlework::handout {

// The printed pages as a document model, free of any drawing. ui/print lays it out; tests and the
// record of handouts read it as it is.

struct Heading {
    QString text;
    friend bool operator==(const Heading&, const Heading&) = default;
};
struct Paragraph {
    QString text;
    bool quiet = false; ///< small print: sources and dates
    friend bool operator==(const Paragraph&, const Paragraph&) = default;
};
/// Lines with a sign in front: a box to tick, a number, or a dot.
struct Lines {
    enum class Sign { Dot, Number, TickBox };
    Sign sign = Sign::Dot;
    QStringList items;
    friend bool operator==(const Lines&, const Lines&) = default;
};
struct Cell {
    QString text;
    bool strong = false;
    bool tickBox = false; ///< an empty box to tick with a pen, before the text
    friend bool operator==(const Cell&, const Cell&) = default;
};
/// A table with a header row; `weights` share out the width.
struct Table {
    QStringList header;
    QList<QList<Cell>> rows;
    QList<double> weights;
    /// This many rows belong together, such as those of one day: no page break between them, and a
    /// line below the last. 0 or 1: each row stands for itself.
    int rowsTogether = 0;
    friend bool operator==(const Table&, const Table&) = default;
};
/// A framed warning: a word in front ("Caution", "Stop"), then the text.
struct Warning {
    QString word;
    QString text;
    friend bool operator==(const Warning&, const Warning&) = default;
};
/// "What: value" pairs in two columns of a card.
struct Facts {
    QList<std::pair<QString, QString>> pairs;
    friend bool operator==(const Facts&, const Facts&) = default;
};
/// Who hands the pages out: the practice with its picture, the practitioner, how to reach them.
struct Letterhead {
    QString practice;
    QString practitioner;
    QStringList contact; ///< a line each
    QByteArray logo;     ///< a PNG picture; may be empty
    friend bool operator==(const Letterhead&, const Letterhead&) = default;
};
/// What stands on one label, the most important line first: on a small label the last ones are
/// left out.
struct JarLabel {
    QString title;
    QList<Cell> lines;
    friend bool operator==(const JarLabel&, const JarLabel&) = default;
};
/// Sheets of self-adhesive labels: pages of their own, laid out by the measures of the stock.
struct LabelSheet {
    casebook::LabelStock stock;
    int placesUsed = 0; ///< labels that are gone from the first sheet already, row by row
    QList<JarLabel> labels;
    friend bool operator==(const LabelSheet&, const LabelSheet&) = default;
};
using Block =
    std::variant<Heading, Paragraph, Lines, Table, Warning, Facts, Letterhead, LabelSheet>;

/// Blocks that stay together on a page as long as one page can hold them.
struct Card {
    enum class Kind {
        Cover,
        Week,
        Pot,
        Ladder,
        Shopping,
        Keeping,
        Cautions,
        Text,
        LogSheet,
        JarLabels ///< holds one LabelSheet and nothing else
    };
    Kind kind = Kind::Text;
    QString title;
    QList<Block> blocks;
    bool startsPage = false;
    friend bool operator==(const Card&, const Card&) = default;
};

struct Document {
    QString title;     ///< "Hartley - week of 2 November 2026"
    QString author;    ///< the practice
    QString footer;    ///< family as she chose to name it, and the week
    QString printedOn; ///< a date in words
    people::Paper paper = people::Paper::Letter;
    bool largePrint = false;
    QString language = QStringLiteral("en"); ///< what it is written in: "en", "es"
    QList<Card> cards;
    friend bool operator==(const Document&, const Document&) = default;
};

} // namespace ladlework::handout
