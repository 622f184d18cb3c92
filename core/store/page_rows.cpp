#include "store/page_rows.h"

#include "store/statement.h"

namespace ladlework::store {

using namespace Qt::Literals::StringLiterals;

Fields fieldsOf(const casebook::HandoutTemplate& kept) {
    return {{"name"_L1, kept.name.simplified()}, {"large_print"_L1, kept.largePrint}};
}

casebook::HandoutTemplate readHandoutTemplate(const Statement& row) {
    casebook::HandoutTemplate kept;
    kept.id = row.id<HandoutTemplateId>("id"_L1);
    kept.name = row.text("name"_L1);
    kept.largePrint = row.flag("large_print"_L1);
    return kept;
}

Fields fieldsOf(const casebook::HandoutSection& section) {
    return {{"part"_L1, casebook::handoutPartId(section.part)},
            {"shown"_L1, section.shown},
            {"title"_L1, section.title},
            {"words"_L1, section.words}};
}

casebook::HandoutSection readHandoutSection(const Statement& row) {
    return {row.word("part"_L1, casebook::handoutPartFromId), row.flag("shown"_L1),
            row.text("title"_L1), row.text("words"_L1)};
}

Fields fieldsOf(const casebook::LabelStock& stock) {
    return {{"name"_L1, stock.name.simplified()},
            {"page_width_mm"_L1, stock.pageWidthMm},
            {"page_height_mm"_L1, stock.pageHeightMm},
            {"labels_across"_L1, stock.columns},
            {"labels_down"_L1, stock.rows},
            {"left_mm"_L1, stock.leftMm},
            {"top_mm"_L1, stock.topMm},
            {"label_width_mm"_L1, stock.labelWidthMm},
            {"label_height_mm"_L1, stock.labelHeightMm},
            {"gap_across_mm"_L1, stock.gapAcrossMm},
            {"gap_down_mm"_L1, stock.gapDownMm}};
}

casebook::LabelStock readLabelStock(const Statement& row) {
    casebook::LabelStock stock;
    stock.id = row.id<LabelStockId>("id"_L1);
    stock.name = row.text("name"_L1);
    stock.pageWidthMm = row.real("page_width_mm"_L1);
    stock.pageHeightMm = row.real("page_height_mm"_L1);
    stock.columns = row.integer("labels_across"_L1);
    stock.rows = row.integer("labels_down"_L1);
    stock.leftMm = row.real("left_mm"_L1);
    stock.topMm = row.real("top_mm"_L1);
    stock.labelWidthMm = row.real("label_width_mm"_L1);
    stock.labelHeightMm = row.real("label_height_mm"_L1);
    stock.gapAcrossMm = row.real("gap_across_mm"_L1);
    stock.gapDownMm = row.real("gap_down_mm"_L1);
    return stock;
}

} // namespace ladlework::store
