#include "ui/print/pdf_writer.h"

#include "ui/print/page_layout.h"
#include "ui/print/page_painter.h"
#include "ui/print/print_font.h"

#include <QBuffer>
#include <QCoreApplication>
#include <QFile>
#include <QFileInfo>
#include <QPageLayout>
#include <QPainter>
#include <QPdfWriter>
#include <QSaveFile>
#include <QXmlStreamWriter>

namespace ladlework::ui {

namespace {

QString tr(const char* text) {
    return QCoreApplication::translate("PdfWriter", text);
}

/// Qt has no setter for a PDF's author; the metadata packet (XMP, ISO 16684-1) has a place for it.
QByteArray metadataOf(const handout::Document& document) {
    const QString rdf = QStringLiteral("http://www.w3.org/1999/02/22-rdf-syntax-ns#");
    const QString dc = QStringLiteral("http://purl.org/dc/elements/1.1/");
    QByteArray packet;
    QXmlStreamWriter xml(&packet);
    const auto list = [&](const QString& name, const QString& kind, const QString& text) {
        xml.writeStartElement(dc, name);
        xml.writeStartElement(rdf, kind);
        xml.writeStartElement(rdf, QStringLiteral("li"));
        if (kind == QStringLiteral("Alt"))
            xml.writeAttribute(QStringLiteral("xml:lang"), QStringLiteral("x-default"));
        xml.writeCharacters(text);
        xml.writeEndElement();
        xml.writeEndElement();
        xml.writeEndElement();
    };
    xml.writeProcessingInstruction(QStringLiteral("xpacket"),
                                   QStringLiteral("begin=\"\" id=\"W5M0MpCehiHzreSzNTczkc9d\""));
    xml.writeNamespace(QStringLiteral("adobe:ns:meta/"), QStringLiteral("x"));
    xml.writeStartElement(QStringLiteral("adobe:ns:meta/"), QStringLiteral("xmpmeta"));
    xml.writeNamespace(rdf, QStringLiteral("rdf"));
    xml.writeNamespace(dc, QStringLiteral("dc"));
    xml.writeStartElement(rdf, QStringLiteral("RDF"));
    xml.writeStartElement(rdf, QStringLiteral("Description"));
    xml.writeAttribute(rdf, QStringLiteral("about"), QString());
    list(QStringLiteral("title"), QStringLiteral("Alt"), document.title);
    list(QStringLiteral("creator"), QStringLiteral("Seq"), document.author);
    xml.writeEndDocument();
    xml.writeProcessingInstruction(QStringLiteral("xpacket"), QStringLiteral("end=\"r\""));
    return packet;
}

/// Refuses a target that printing would destroy: a database (every workbook is one), and anything
/// that is no ordinary file. Follows links, as the writing does.
Outcome mayBeReplaced(const QString& path) {
    const QFileInfo target(path);
    if (!target.exists())
        return {};
    const auto refused = [&](const QString& sentence) {
        return problem(Problem::Kind::Refused, sentence.arg(target.fileName()), path);
    };
    if (!target.isFile())
        return refused(tr("\"%1\" is not an ordinary file, so no pages are written to it. Choose "
                          "another name."));
    // https://www.sqlite.org/fileformat2.html#magic_header_string
    static const QByteArray magic = QByteArrayLiteral("SQLite format 3");
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly))
        return refused(tr("\"%1\" is there already and cannot be read, so it is not replaced. "
                          "Choose another name."));
    if (file.read(magic.size()) == magic)
        return refused(tr("\"%1\" is a workbook or another database, so it is not replaced by "
                          "printed pages. Choose another name."));
    return {};
}

} // namespace

Result<QByteArray> pdfOf(const handout::Document& document) {
    const PageLayout layout = layOut(document);
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    QPdfWriter writer(&buffer);
    const QPageSize size(layout.paper == people::Paper::A4 ? QPageSize::A4 : QPageSize::Letter);
    writer.setPageLayout(QPageLayout(size, QPageLayout::Portrait, QMarginsF()));
    writer.setResolution(unitsPerInch);
    writer.setTitle(document.title);
    writer.setCreator(QStringLiteral("Ladlework " LADLEWORK_VERSION));
    writer.setDocumentXmpMetadata(metadataOf(document));
    QPainter painter;
    if (!painter.begin(&writer))
        return problem(Problem::Kind::Unavailable,
                       tr("The pages could not be drawn. Close other programs and try again."));
    for (qsizetype page = 0; page < layout.pages.size(); ++page) {
        if (page > 0)
            writer.newPage();
        paintPage(painter, layout, page, QRectF(QPointF(0, 0), layout.size));
    }
    if (!painter.end() || bytes.isEmpty())
        return problem(Problem::Kind::Unavailable,
                       tr("The pages could not be drawn. Close other programs and try again."));
    return bytes;
}

Outcome saveWhole(const QByteArray& pdf, const QString& path) {
    if (const Outcome replaceable = mayBeReplaced(path); !replaceable)
        return replaceable;
    QSaveFile file(path);
    if (!file.open(QIODevice::WriteOnly))
        return problem(Problem::Kind::Unavailable,
                       tr("%1 cannot be written. Choose another folder or close the program that "
                          "shows it.")
                           .arg(QFileInfo(path).fileName()),
                       path, file.errorString());
    if (file.write(pdf) != pdf.size() || !file.commit())
        return problem(Problem::Kind::DiskFull,
                       tr("%1 could not be written whole, so it was not written at all. Make room "
                          "on the disk or choose another folder.")
                           .arg(QFileInfo(path).fileName()),
                       path, file.errorString());
    return {};
}

Outcome writePdf(const handout::Document& document, const QString& path) {
    const Result<QByteArray> pdf = pdfOf(document);
    if (!pdf)
        return passOn(pdf);
    return saveWhole(*pdf, path);
}

} // namespace ladlework::ui
