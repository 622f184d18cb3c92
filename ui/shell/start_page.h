#pragma once

#include <QStringList>
#include <QWidget>

class QLabel;
class QVBoxLayout;

namespace ladlework::ui {

/// What one sees without a workbook: three honest choices, and the workbooks opened last.
class StartPage final : public QWidget {
    Q_OBJECT
public:
    explicit StartPage(QWidget* parent);
    void setRecent(const QStringList& paths);

Q_SIGNALS:
    void newWanted();
    void openWanted();
    void sampleWanted();
    void recentWanted(const QString& path);

private:
    QWidget* makeChoice(const QString& action, const QString& text, bool first,
                        void (StartPage::*wanted)());
    QLabel* m_recentTitle;
    QVBoxLayout* m_recent;
};

} // namespace ladlework::ui
