#include "ui/handout/handout_files.h"

#include "ui/print/page_pictures.h"
#include "ui/print/whole_files.h"

#include <QCoreApplication>
#include <QFileInfo>
#include <QRegularExpression>
#include <algorithm>

namespace ladlework::ui {

namespace {
struct Words {
    Q_DECLARE_TR_FUNCTIONS(HandoutFiles)
};

bool tellUnlessDone(const ScreenContext& context, QWidget* parent, const Outcome& outcome) {
    if (!outcome)
        context.desk.tell(parent, outcome.error().sentence);
    return outcome.has_value();
}
} // namespace

QString fileNameFrom(const QString& title) {
    constexpr qsizetype longest = 120;
    static const QRegularExpression unfit(QStringLiteral("[\\\\/:*?\"<>|\\x00-\\x1f]+"));
    QString name = QString(title).replace(unfit, QStringLiteral("-"));
    name.removeIf([](QChar letter) { return letter.category() == QChar::Other_Format; });
    name = name.trimmed().left(longest);
    return name.isEmpty() ? Words::tr("handout") : name;
}

bool savePdfFile(const ScreenContext& context, QWidget* parent, const QByteArray& pdf,
                 const QString& title) {
    const std::optional<QString> path = context.desk.fileToSave(
        parent, Words::tr("Save the handout"), fileNameFrom(title) + QStringLiteral(".pdf"),
        Words::tr("PDF (*.pdf)"));
    return path && tellUnlessDone(context, parent, saveWhole(pdf, *path));
}

bool savePictureFiles(const ScreenContext& context, QWidget* parent,
                      const handout::Document& document) {
    const std::optional<QString> path = context.desk.fileToSave(
        parent, Words::tr("Save the pages as pictures"),
        fileNameFrom(document.title) + QStringLiteral(".png"), Words::tr("Pictures (*.png)"));
    if (!path)
        return false;
    const QFileInfo target(*path);
    const auto pictures = picturesOf(document, target.path(), target.completeBaseName());
    if (!pictures)
        return tellUnlessDone(context, parent, passOn(pictures));
    const auto there = std::count_if(pictures->cbegin(), pictures->cend(),
                                     [](const auto& file) { return QFileInfo::exists(file.path); });
    if (there > 0 &&
        !context.desk.confirm(
            parent,
            there == 1 ? Words::tr("A picture of this name is there already. Replace it?")
                       : Words::tr("%1 pictures of these names are there already. Replace them?")
                             .arg(there),
            Words::tr("Replace")))
        return false;
    return tellUnlessDone(context, parent, saveAllWhole(*pictures));
}

} // namespace ladlework::ui
