#include "ui/print/pdf_writer.h"

#include "ui/print/page_layout.h"
#include "ui/print/page_painter.h"
#include "ui/print/pdf_outline.h"
#include "ui/print/print_font.h"

#include <QBuffer>
#include <QCoreApplication>
#include <QPageLayout>
#include <QPainter>
#include <QPdfWriter>
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

/// The sheet that a page is printed on.
QPageLayout sheetOf(const PageLayout& layout, qsizetype page) {
    return {pageSizeOf(layout, page), QPageLayout::Portrait, QMarginsF()};
}

} // namespace

Result<QByteArray> pdfOf(const handout::Document& document) {
    const PageLayout layout = layOut(document);
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    QPdfWriter writer(&buffer);
    writer.setPageLayout(sheetOf(layout, 0));
    writer.setResolution(unitsPerInch);
    writer.setTitle(document.title);
    writer.setCreator(QStringLiteral("Ladlework " LADLEWORK_VERSION));
    writer.setDocumentXmpMetadata(metadataOf(document));
    QPainter painter;
    if (!painter.begin(&writer))
        return problem(Problem::Kind::Unavailable,
                       tr("The pages could not be drawn. Close other programs and try again."));
    for (qsizetype page = 0; page < layout.pages.size(); ++page) {
        if (page > 0) {
            writer.setPageLayout(sheetOf(layout, page));
            writer.newPage();
        }
        paintPage(painter, layout, page, QRectF(QPointF(0, 0), layout.pages.at(page).size));
    }
    if (!painter.end() || bytes.isEmpty())
        return problem(Problem::Kind::Unavailable,
                       tr("The pages could not be drawn. Close other programs and try again."));
    return withOutline(bytes, layout, document);
}

Outcome writePdf(const handout::Document& document, const QString& path) {
    const Result<QByteArray> pdf = pdfOf(document);
    if (!pdf)
        return passOn(pdf);
    return saveWhole(*pdf, path);
}

} // namespace ladlework::ui
