#pragma once

#include <QByteArray>
#include <QList>
#include <QRectF>
#include <QString>
#include <QStringList>

namespace ladlework::ui {

/// A word as poppler's pdftotext finds it on a page, in points from the top left.
struct PdfWord {
    int page = 0;
    QString text;
    QRectF box;
};

/// What a tool prints about a PDF, errors included; `status` gets its exit code.
QString runOnPdf(const QString& tool, const QStringList& options, const QByteArray& pdf,
                 int* status = nullptr);

QList<PdfWord> wordsOfPdf(const QByteArray& pdf);

/// The text in the order it was drawn, compatibility forms folded and all spaces taken out.
QString lettersOfPdf(const QByteArray& pdf);
QString lettersOf(const QString& text);

} // namespace ladlework::ui
