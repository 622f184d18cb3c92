// What a handout of six pages costs as a PDF, against one plain text document of Qt with the same
// words, printed to a PDF in the same run. Works without a screen: QT_QPA_PLATFORM=offscreen.
#include "casebook/casebook.h"
#include "goals.h"
#include "handout/family_handout.h"
#include "handout/plain_lines.h"
#include "store/exchange/sample_practice.h"
#include "store/workbook.h"
#include "ui/print/page_layout.h"
#include "ui/print/pdf_writer.h"
#include "ui/print/print_font.h"
#include "week/week_plan.h"

#include <QBuffer>
#include <QGuiApplication>
#include <QPdfWriter>
#include <QTemporaryDir>
#include <QTextDocument>
#include <iostream>
#include <optional>
#include <stdexcept>

namespace ladlework::bench {

namespace {

constexpr qsizetype pagesWanted = 6;

/// A handout of this family that has as many pages as wanted, with parts left out from the end.
std::optional<handout::Document> documentOf(const casebook::Casebook& book) {
    handout::HandoutOptions options;
    options.week = week::weekStart(book.today());
    while (!options.sections.isEmpty()) {
        handout::Document document = handout::familyHandout(book, options);
        if (ui::layOut(document).pages.size() == pagesWanted)
            return document;
        options.sections.removeLast();
    }
    return std::nullopt;
}

/// The first of the sample's families that has such a handout.
handout::Document makeDocument() {
    const auto catalogue = kitchen::Catalogue::load();
    const QTemporaryDir folder;
    const SystemClock clock;
    if (!catalogue)
        throw std::runtime_error("no catalogue");
    const auto workbook = exchange::createSamplePractice(
        folder.filePath(QStringLiteral("print.ladlework")), *catalogue, clock);
    if (!workbook)
        throw std::runtime_error("no sample practice");
    for (const people::Family& family : (*workbook)->families().families()) {
        const casebook::Casebook book(*(*workbook)->records(family.id), *catalogue,
                                      clock.today(family.zone));
        if (const auto document = documentOf(book))
            return *document;
    }
    throw std::runtime_error("no family of the sample has a handout of six pages");
}

const handout::Document& document() {
    static const handout::Document made = makeDocument();
    return made;
}

void handoutToPdf(benchmark::State& state) {
    const handout::Document& pages = document();
    for (auto _ : state)
        benchmark::DoNotOptimize(ui::pdfOf(pages)->size());
}
BENCHMARK(handoutToPdf)->Unit(benchmark::kMillisecond);

void layoutAlone(benchmark::State& state) {
    const handout::Document& pages = document();
    for (auto _ : state)
        benchmark::DoNotOptimize(ui::layOut(pages).pages.size());
}
BENCHMARK(layoutAlone)->Unit(benchmark::kMillisecond);

void plainTextToPdf(benchmark::State& state) {
    const QString words = handout::plainLines(document()).join(QLatin1Char('\n'));
    const QFont font = ui::printStyle(false).body;
    for (auto _ : state) {
        QByteArray bytes;
        QBuffer buffer(&bytes);
        buffer.open(QIODevice::WriteOnly);
        QPdfWriter writer(&buffer);
        QTextDocument plain;
        QFont same(font);
        same.setPointSizeF(font.pixelSize() / ui::unitsPerPoint);
        plain.setDefaultFont(same);
        plain.setPlainText(words);
        plain.print(&writer);
        benchmark::DoNotOptimize(bytes.size());
    }
}
BENCHMARK(plainTextToPdf)->Unit(benchmark::kMillisecond);
} // namespace

} // namespace ladlework::bench

int main(int argc, char** argv) {
    using namespace ladlework::bench;
    if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM"))
        qputenv("QT_QPA_PLATFORM", QByteArrayLiteral("offscreen"));
    QGuiApplication application(argc, argv);
    KeepingReporter reporter;
    if (!runAll(reporter, argc, argv))
        return 2;
    try {
        const double ratio =
            reporter.nanoseconds("handoutToPdf") / reporter.nanoseconds("plainTextToPdf");
        return allMet({{"a handout of six pages against the same words as plain text", ratio, 2.0,
                        "times"}},
                      std::cout)
                   ? 0
                   : 1;
    } catch (const std::out_of_range&) {
        return 0; // a filter left one of them out
    }
}
