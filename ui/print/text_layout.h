#pragma once

#include "ui/print/page_layout.h"

#include <QFont>

namespace ladlework::ui {

/// A text broken into lines of at most `width`; words longer than a line are broken anywhere.
/// The lines of right-to-left text are ordered as its script asks and stand at the left like all
/// others.
struct BrokenText {
    std::shared_ptr<const QTextLayout> layout;
    int lines = 0;
    double height = 0;  ///< of all lines
    double width = 0;   ///< of the longest line
    QList<double> tops; ///< of each line, and the bottom of the last

    /// The height of the lines from `first` up to but without `last`.
    [[nodiscard]] double heightOf(int first, int last) const;
    /// These lines, with the first one's top at `at`.
    [[nodiscard]] TextItem item(int first, int last, QPointF at) const;
    [[nodiscard]] TextItem whole(QPointF at) const { return item(0, lines, at); }
};

/// `spacing` is the least distance of two lines as a multiple of the font's size.
BrokenText breakText(const QString& text, const QFont& font, double width, double spacing);

/// The width of the text on one line, or of its longest line where it has line breaks.
double naturalWidth(const QString& text, const QFont& font);

/// Letters of an item that no font has a shape for.
QString shapelessIn(const TextItem& item);

/// The width of the longest word.
double widestWord(const QString& text, const QFont& font);

} // namespace ladlework::ui
