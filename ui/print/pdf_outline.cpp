#include "ui/print/pdf_outline.h"

#include "ui/print/print_font.h"

#include <QList>
#include <memory>
#include <qpdf/qpdf-c.h>

namespace ladlework::ui {

namespace {

struct Cleanup {
    using pointer = qpdf_data;
    void operator()(qpdf_data data) const { qpdf_cleanup(&data); }
};
using Pdf = std::unique_ptr<qpdf_data, Cleanup>;

/// "[page /XYZ null top null]": the page, with the card's top at the top of the window (ISO
/// 32000-1, 12.3.2.2). PDF counts upwards from the foot of the page, in points.
qpdf_oh destination(qpdf_data pdf, const PageLayout& layout, const OutlineEntry& entry) {
    const double height = layout.pages.at(entry.page).size.height();
    const qpdf_oh place = qpdf_oh_new_array(pdf);
    qpdf_oh_append_item(pdf, place, qpdf_get_page_n(pdf, static_cast<size_t>(entry.page)));
    qpdf_oh_append_item(pdf, place, qpdf_oh_new_name(pdf, "/XYZ"));
    qpdf_oh_append_item(pdf, place, qpdf_oh_new_null(pdf));
    qpdf_oh_append_item(pdf, place,
                        qpdf_oh_new_real_from_double(pdf, (height - entry.top) / unitsPerPoint, 1));
    qpdf_oh_append_item(pdf, place, qpdf_oh_new_null(pdf));
    return place;
}

/// The entries as a list of objects that name each other (ISO 32000-1, 12.3.3).
void addOutline(qpdf_data pdf, const PageLayout& layout) {
    if (layout.outline.isEmpty())
        return;
    const qpdf_oh root = qpdf_make_indirect_object(pdf, qpdf_oh_new_dictionary(pdf));
    QList<qpdf_oh> items;
    for (const OutlineEntry& entry : layout.outline) {
        const qpdf_oh item = qpdf_make_indirect_object(pdf, qpdf_oh_new_dictionary(pdf));
        qpdf_oh_replace_key(pdf, item, "/Title",
                            qpdf_oh_new_unicode_string(pdf, entry.title.toUtf8().constData()));
        qpdf_oh_replace_key(pdf, item, "/Parent", root);
        qpdf_oh_replace_key(pdf, item, "/Dest", destination(pdf, layout, entry));
        if (!items.isEmpty()) {
            qpdf_oh_replace_key(pdf, item, "/Prev", items.last());
            qpdf_oh_replace_key(pdf, items.last(), "/Next", item);
        }
        items << item;
    }
    qpdf_oh_replace_key(pdf, root, "/Type", qpdf_oh_new_name(pdf, "/Outlines"));
    qpdf_oh_replace_key(pdf, root, "/First", items.first());
    qpdf_oh_replace_key(pdf, root, "/Last", items.last());
    qpdf_oh_replace_key(pdf, root, "/Count", qpdf_oh_new_integer(pdf, items.size()));
    const qpdf_oh catalogue = qpdf_get_root(pdf);
    qpdf_oh_replace_key(pdf, catalogue, "/Outlines", root);
    // Viewers show the outline at once and the title in place of the file's name.
    qpdf_oh_replace_key(pdf, catalogue, "/PageMode", qpdf_oh_new_name(pdf, "/UseOutlines"));
    const qpdf_oh preferences = qpdf_oh_new_dictionary(pdf);
    qpdf_oh_replace_key(pdf, preferences, "/DisplayDocTitle", qpdf_oh_new_bool(pdf, QPDF_TRUE));
    qpdf_oh_replace_key(pdf, catalogue, "/ViewerPreferences", preferences);
}

bool failed(qpdf_data pdf, QPDF_ERROR_CODE code) {
    if (qpdf_has_error(pdf) == QPDF_FALSE)
        return (code & QPDF_ERRORS) != 0;
    qpdf_get_error(pdf); // taken note of: the library would print it otherwise
    return true;
}

} // namespace

QByteArray withOutline(const QByteArray& pdf, const PageLayout& layout,
                       const handout::Document& document) {
    const Pdf file(qpdf_init());
    qpdf_silence_errors(file.get());
    qpdf_set_suppress_warnings(file.get(), QPDF_TRUE);
    if (failed(file.get(), qpdf_read_memory(file.get(), "handout", pdf.constData(),
                                            static_cast<unsigned long long>(pdf.size()), nullptr)))
        return pdf;
    addOutline(file.get(), layout);
    if (!document.author.isEmpty())
        qpdf_set_info_key(file.get(), "/Author", document.author.toUtf8().constData());
    if (failed(file.get(), qpdf_init_write_memory(file.get())))
        return pdf;
    qpdf_set_deterministic_ID(file.get(), QPDF_TRUE);
    if (failed(file.get(), qpdf_write(file.get())))
        return pdf;
    const auto size = static_cast<qsizetype>(qpdf_get_buffer_length(file.get()));
    const auto* bytes = qpdf_get_buffer(file.get());
    return size > 0 ? QByteArray(reinterpret_cast<const char*>(bytes), size) : pdf;
}

bool canWriteOutlines() {
    return true;
}

} // namespace ladlework::ui
