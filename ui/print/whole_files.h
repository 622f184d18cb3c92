#pragma once

#include "foundation/result.h"

#include <QByteArray>
#include <QList>
#include <QString>

namespace ladlework::ui {

struct WholeFile {
    QString path;
    QByteArray bytes;
};

/// Writes a finished file, whole or not at all. Refused when the path leads, also through links, to
/// a database or to anything that is no ordinary file.
Outcome saveWhole(const QByteArray& bytes, const QString& path);

/// Writes several files, each as saveWhole() does, all of them before the first is put in its
/// place: when one cannot be written, none is.
Outcome saveAllWhole(const QList<WholeFile>& files);

} // namespace ladlework::ui
