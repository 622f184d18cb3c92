#include "ui/shell/widget_desk.h"

#include <QCoreApplication>
#include <QDir>
#include <QFileDialog>
#include <QMessageBox>
#include <QPushButton>
#include <QStandardPaths>

namespace ladlework::ui {

namespace {

std::optional<QString> chosen(const QString& path) {
    return path.isEmpty() ? std::nullopt : std::optional(path);
}

QString documents() {
    return QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
}

} // namespace

std::optional<QString> WidgetDesk::fileToSave(QWidget* parent, const QString& title,
                                              const QString& suggested, const QString& filter) {
    const QString start =
        QDir::isAbsolutePath(suggested) ? suggested : QDir(documents()).filePath(suggested);
    return chosen(QFileDialog::getSaveFileName(parent, title, start, filter));
}

std::optional<QString> WidgetDesk::fileToOpen(QWidget* parent, const QString& title,
                                              const QString& filter) {
    return chosen(QFileDialog::getOpenFileName(parent, title, documents(), filter));
}

bool WidgetDesk::confirm(QWidget* parent, const QString& question, const QString& yes) {
    QMessageBox box(QMessageBox::NoIcon, QCoreApplication::applicationName(), question,
                    QMessageBox::Cancel, parent);
    const QPushButton* agreed = box.addButton(yes, QMessageBox::AcceptRole);
    box.setDefaultButton(QMessageBox::Cancel);
    box.exec();
    return box.clickedButton() == agreed;
}

void WidgetDesk::tell(QWidget* parent, const QString& sentence) {
    QMessageBox box(QMessageBox::NoIcon, QCoreApplication::applicationName(), sentence,
                    QMessageBox::Close, parent);
    box.setTextFormat(Qt::PlainText);
    box.exec();
}

} // namespace ladlework::ui
