#pragma once

#include "handout/document.h"
#include "ui/shared/screen_context.h"

#include <QByteArray>
#include <QString>

class QWidget;

namespace ladlework::ui {

/// Asks where to, and saves a PDF; false when there is none. What goes wrong is told at the desk.
bool savePdfFile(const ScreenContext& context, QWidget* parent, const QByteArray& pdf,
                 const QString& title);

/// Asks where to, and saves each page as a PNG picture: "name-1.png", "name-2.png"... Asks again
/// before pictures of these names are replaced.
bool savePictureFiles(const ScreenContext& context, QWidget* parent,
                      const handout::Document& document);

/// A file name that every system takes, from a title.
QString fileNameFrom(const QString& title);

} // namespace ladlework::ui
