#include "ui/print/page_pictures.h"

#include "ui/print/pdf_tools.h"
#include "ui/print/pdf_writer.h"
#include "ui/print/sample_document.h"
#include "ui/print/write_pages.h"

#include <QBuffer>
#include <QDir>
#include <QFile>
#include <QProcess>
#include <QTemporaryDir>
#include <cmath>
#include <gtest/gtest.h>

namespace ladlework::ui {

namespace {

class PagePicturesTest : public ::testing::Test {
protected:
    QTemporaryDir m_folder;
};

/// How dark each square of so many dots a side is, 0 to 255.
QList<double> darkness(const QImage& image, int side) {
    QList<double> squares;
    for (int top = 0; top + side <= image.height(); top += side)
        for (int left = 0; left + side <= image.width(); left += side) {
            double sum = 0;
            for (int y = top; y < top + side; ++y)
                for (int x = left; x < left + side; ++x)
                    sum += 255 - qGray(image.pixel(x, y));
            squares << sum / (side * side);
        }
    return squares;
}

QByteArray redSquarePng() {
    QImage image(600, 300, QImage::Format_RGB32);
    image.fill(Qt::darkRed);
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    image.save(&buffer, "PNG");
    return bytes;
}

} // namespace

TEST_F(PagePicturesTest, APictureShowsThePageThatPopplerDrawsFromThePdf) {
    const handout::Document document = sampleDocument(2, 1);
    const Result<QByteArray> pdf = pdfOf(document);
    ASSERT_TRUE(pdf);
    const PageLayout layout = layOut(document);
    constexpr int dots = 72;
    for (qsizetype page = 0; page < layout.pages.size(); ++page) {
        const QString number = QString::number(page + 1);
        const QString root = m_folder.filePath(QStringLiteral("poppler"));
        QFile file(m_folder.filePath(QStringLiteral("x.pdf")));
        ASSERT_TRUE(file.open(QIODevice::WriteOnly) && file.write(*pdf) == pdf->size());
        file.close();
        QProcess process;
        process.start(QStringLiteral("pdftoppm"),
                      {QStringLiteral("-r"), QString::number(dots), QStringLiteral("-png"),
                       QStringLiteral("-singlefile"), QStringLiteral("-f"), number, file.fileName(),
                       root});
        ASSERT_TRUE(process.waitForFinished() && process.exitCode() == 0);
        const QImage theirs(QString(root + QStringLiteral(".png")));
        const QImage ours = pictureOf(layout, page, dots);
        ASSERT_EQ(ours.size(), theirs.size());
        // Two renderers smooth letters differently; over squares of 16 dots the ink is the same.
        const QList<double> a = darkness(ours, 16);
        const QList<double> b = darkness(theirs, 16);
        double difference = 0;
        double ink = 0;
        for (qsizetype i = 0; i < a.size(); ++i) {
            difference += std::abs(a[i] - b[i]);
            ink += b[i];
        }
        EXPECT_GT(ink, 0);
        EXPECT_LT(difference / ink, 0.35) << "page " << page + 1;
    }
}

TEST_F(PagePicturesTest, FilesAreNumberedPngsOfThePaper) {
    handout::Document document = sampleDocument(10, 2);
    document.paper = people::Paper::Letter;
    const auto files = picturesOf(document, m_folder.path());
    ASSERT_TRUE(files);
    ASSERT_GE(files->size(), 10);
    EXPECT_TRUE(files->first().path.endsWith(QStringLiteral("/page-01.png")));
    const QImage image = QImage::fromData(files->first().bytes, "PNG");
    EXPECT_EQ(image.size(), QSize(1275, 1650)) << "8.5 x 11 inches at 150 to the inch";
    EXPECT_NEAR(image.dotsPerMeterX(), 150 / 0.0254, 1);
}

TEST_F(PagePicturesTest, TheLogoIsOnThePageAndInTheFile) {
    handout::Document document;
    handout::Letterhead head{QStringLiteral("Harbour Lane"), {}, {}, redSquarePng()};
    document.cards << handout::Card{
        handout::Card::Kind::Cover, QStringLiteral("Title"), {head}, true};
    const QImage page = pictureOf(layOut(document), 0);
    qsizetype red = 0;
    for (int y = 0; y < page.height(); ++y)
        for (int x = 0; x < page.width(); ++x)
            red += qRed(page.pixel(x, y)) > 100 && qGreen(page.pixel(x, y)) < 40 ? 1 : 0;
    // 46 points high and twice as wide, at 150 dots to the inch.
    EXPECT_NEAR(static_cast<double>(red), 46.0 / 72 * 150 * 92.0 / 72 * 150, 800);
    const Result<QByteArray> pdf = pdfOf(document);
    ASSERT_TRUE(pdf);
    EXPECT_TRUE(runOnPdf(QStringLiteral("pdfimages"), {QStringLiteral("-list")}, *pdf)
                    .contains(QStringLiteral("image")));
    // What is no picture is left out, and the words beside it stand.
    std::get<handout::Letterhead>(document.cards[0].blocks[0]).logo = QByteArrayLiteral("no PNG");
    EXPECT_TRUE(lettersOfPdf(*pdfOf(document)).contains(QStringLiteral("HarbourLane")));
}

TEST_F(PagePicturesTest, PagesAndPicturesAreWrittenTogetherOrNotAtAll) {
    const handout::Document document = sampleDocument(1, 0);
    const QString pdf = m_folder.filePath(QStringLiteral("h.pdf"));
    const Result<QStringList> written = writePages(document, pdf, m_folder.path());
    ASSERT_TRUE(written);
    EXPECT_EQ(QDir(m_folder.path()).entryList({QStringLiteral("*.png")}).size(), written->size());
    EXPECT_TRUE(QFile::exists(pdf));
    QTemporaryDir other;
    const Result<QStringList> refused =
        writePages(document, other.filePath(QStringLiteral("no/h.pdf")), other.path());
    ASSERT_FALSE(refused);
    EXPECT_TRUE(QDir(other.path()).entryList(QDir::Files).isEmpty());
    // A folder in the place of a picture stops all of it.
    ASSERT_TRUE(QDir(other.path()).mkdir(QStringLiteral("page-1.png")));
    EXPECT_FALSE(writePages(document, other.filePath(QStringLiteral("h.pdf")), other.path()));
    EXPECT_TRUE(QDir(other.path()).entryList(QDir::Files).isEmpty());
}

} // namespace ladlework::ui
