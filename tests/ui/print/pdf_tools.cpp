#include "ui/print/pdf_tools.h"

#include <QProcess>
#include <QTemporaryFile>
#include <QXmlStreamReader>
#include <stdexcept>

namespace ladlework::ui {

QString runOnPdf(const QString& tool, const QStringList& options, const QByteArray& pdf,
                 int* status) {
    QTemporaryFile file;
    if (!file.open() || file.write(pdf) != pdf.size() || !file.flush())
        throw std::runtime_error("no temporary file for the PDF");
    QStringList arguments = options;
    arguments << file.fileName();
    if (tool == QStringLiteral("pdftotext"))
        arguments << QStringLiteral("-");
    QProcess process;
    process.setProcessChannelMode(QProcess::MergedChannels);
    process.start(tool, arguments);
    if (!process.waitForFinished(60'000))
        throw std::runtime_error("the PDF tool did not run: " + tool.toStdString());
    if (status != nullptr)
        *status = process.exitCode();
    return QString::fromUtf8(process.readAll());
}

QList<PdfWord> wordsOfPdf(const QByteArray& pdf) {
    QXmlStreamReader xml(runOnPdf(QStringLiteral("pdftotext"), {QStringLiteral("-bbox")}, pdf));
    QList<PdfWord> words;
    int page = 0;
    while (!xml.atEnd()) {
        if (xml.readNext() != QXmlStreamReader::StartElement)
            continue;
        if (xml.name() == QLatin1String("page"))
            ++page;
        if (xml.name() != QLatin1String("word"))
            continue;
        const QXmlStreamAttributes at = xml.attributes();
        const auto number = [&](const char* name) {
            return at.value(QLatin1String(name)).toDouble();
        };
        const QRectF box(QPointF(number("xMin"), number("yMin")),
                         QPointF(number("xMax"), number("yMax")));
        words << PdfWord{page, xml.readElementText(), box};
    }
    return words;
}

QString lettersOf(const QString& text) {
    QString letters;
    for (const QChar letter : text.normalized(QString::NormalizationForm_KC))
        if (!letter.isSpace() && letter.category() != QChar::Other_Control &&
            letter.category() != QChar::Other_Format)
            letters += letter;
    return letters;
}

QString lettersOfPdf(const QByteArray& pdf) {
    return lettersOf(runOnPdf(QStringLiteral("pdftotext"), {QStringLiteral("-raw")}, pdf));
}

} // namespace ladlework::ui
