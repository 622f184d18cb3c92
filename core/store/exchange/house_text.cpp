#include "exchange/house_text.h"

#include "exchange/rules_text.h"
#include "store/practice_repository.h"

#include <QCoreApplication>
#include <algorithm>

namespace ladlework::exchange {

namespace {

QString say(const char* sentence) {
    return QCoreApplication::translate("PracticeText", sentence);
}

/// Fails when another record of the list has the name already.
template <class Record>
void refuseTwice(TextReader& entry, const QList<Record>& before, const QString& name) {
    const bool twice = std::ranges::any_of(before, [&name](const Record& record) {
        return record.name.compare(name, Qt::CaseInsensitive) == 0;
    });
    if (twice)
        entry.fail(QStringLiteral("name"), say("This name is in the list twice."));
}

void readTemplates(TextReader& reader, PracticeText& text) {
    reader.each(QStringLiteral("ladder_templates"), [&](TextReader& entry) {
        intake::LadderTemplate ladderTemplate;
        ladderTemplate.name = entry.text(QStringLiteral("name"));
        ladderTemplate.rungs = entry.volumes(QStringLiteral("rungs"));
        refuseTwice(entry, text.ladderTemplates, ladderTemplate.name);
        entry.accept(intake::check(ladderTemplate));
        text.ladderTemplates.append(ladderTemplate);
    });
}

void readSymptoms(TextReader& reader, PracticeText& text) {
    reader.each(QStringLiteral("symptoms"), [&](TextReader& entry) {
        intake::Symptom symptom;
        symptom.name = entry.text(QStringLiteral("name"));
        symptom.redFlag = entry.flagOr(QStringLiteral("red_flag"), false);
        refuseTwice(entry, text.symptoms, symptom.name);
        entry.accept(intake::check(symptom));
        text.symptoms.append(symptom);
    });
}

void readLabelStocks(TextReader& reader, PracticeText& text) {
    constexpr double most = 1e4; // casebook::check() knows the true limits
    reader.each(QStringLiteral("label_stocks"), [&](TextReader& entry) {
        const auto millimetres = [&](const char* key) {
            return entry.number(QLatin1String(key), -most, most);
        };
        casebook::LabelStock stock;
        stock.name = entry.text(QStringLiteral("name"));
        stock.pageWidthMm = millimetres("page_width_mm");
        stock.pageHeightMm = millimetres("page_height_mm");
        stock.columns = entry.integer(QStringLiteral("columns"), 0, 1000);
        stock.rows = entry.integer(QStringLiteral("rows"), 0, 1000);
        stock.leftMm = millimetres("left_mm");
        stock.topMm = millimetres("top_mm");
        stock.labelWidthMm = millimetres("label_width_mm");
        stock.labelHeightMm = millimetres("label_height_mm");
        stock.gapAcrossMm = millimetres("gap_across_mm");
        stock.gapDownMm = millimetres("gap_down_mm");
        refuseTwice(entry, text.labelStocks, stock.name);
        entry.accept(casebook::check(stock));
        text.labelStocks.append(stock);
    });
}

/// An object with the items as its keys.
void readPrices(TextReader& reader, PracticeText& text) {
    const QString key = QStringLiteral("prices");
    if (!reader.has(key))
        return;
    constexpr double most = 1e9; // store::checkPrice() knows the true limit
    TextReader inner(reader.object(key), reader.pathOf(key), reader.reading());
    for (const QString& item : inner.keys()) {
        const double perKilogram = inner.number(item, -most, most);
        if (const Outcome checked =
                store::checkPrice(item, perKilogram, reader.reading().catalogue);
            !checked)
            inner.fail(item, checked.error().sentence);
        text.prices.insert(item, perKilogram);
    }
    if (const Outcome finished = inner.finish(); !finished)
        reader.fail(finished.error());
}

} // namespace

void readHouse(TextReader& reader, PracticeText& text) {
    const QString rules = QStringLiteral("house_rules");
    text.houseRules = readRules(reader, rules, {});
    if (const Outcome checked = intake::check(text.houseRules); !checked)
        reader.fail(rules, checked.error().sentence);
    readTemplates(reader, text);
    readSymptoms(reader, text);
    readPrices(reader, text);
    readLabelStocks(reader, text);
}

} // namespace ladlework::exchange
