#pragma once

#include "casebook/casebook.h"

#include <QWidget>

class QGridLayout;

namespace ladlework::ui {

class Section;

/// What is to be cooked today and tomorrow, and what was planned and not recorded.
class StoveSection final : public QWidget {
    Q_OBJECT
public:
    explicit StoveSection(QWidget* parent);
    void show(const casebook::Casebook& book);
    using QWidget::show;

Q_SIGNALS:
    void weekWanted();
    /// Something was cooked and wants recording.
    void recordWanted();

private:
    void addLine(const QString& when, const QString& what);
    void addDay(const casebook::Casebook& book, QDate day, const QString& name);

    Section* m_section;
    QGridLayout* m_lines;
};

} // namespace ladlework::ui
