#include "ui/shell/start_page.h"

#include "ui/paint/theme.h"

#include <QDir>
#include <QFileInfo>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace ladlework::ui {

namespace {
constexpr int columnWidth = 72; ///< characters
}

StartPage::StartPage(QWidget* parent)
    : QWidget(parent), m_recentTitle(new QLabel(tr("Opened last"))), m_recent(new QVBoxLayout) {
    const int gap = step(*this);
    auto* title = new QLabel(QStringLiteral("Ladlework"));
    title->setFont(titleFont(titleFont(font())));
    auto* purpose = new QLabel(tr("The workbook for guiding families through their meat stock: "
                                  "pots, ladders, weeks, handouts and the log, in one file of "
                                  "your own."));
    purpose->setWordWrap(true);
    const int width = fontMetrics().averageCharWidth() * columnWidth;
    purpose->setFixedWidth(width);
    purpose->setMinimumHeight(purpose->heightForWidth(width));
    m_recentTitle->setFont(sectionFont(font()));
    m_recent->setSpacing(gap / 2);

    auto* inner = new QWidget;
    inner->setFixedWidth(width);
    auto* column = new QVBoxLayout(inner);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(gap);
    column->addWidget(title);
    column->addWidget(purpose);
    column->addSpacing(2 * gap);
    column->addWidget(makeChoice(tr("&New workbook"),
                                 tr("Start your own practice in a new file, where you choose."),
                                 true, &StartPage::newWanted));
    column->addWidget(makeChoice(tr("&Open a workbook"), tr("Go on with a file you have."), false,
                                 &StartPage::openWanted));
    column->addWidget(makeChoice(tr("&Look at the sample"),
                                 tr("An invented practice to try everything on. It is made anew "
                                    "each time; what you change in it is not kept."),
                                 false, &StartPage::sampleWanted));
    column->addSpacing(gap);
    column->addWidget(m_recentTitle);
    column->addLayout(m_recent);

    auto* page = new QVBoxLayout(this);
    page->addStretch(2);
    page->addWidget(inner, 0, Qt::AlignHCenter);
    page->addStretch(3);
    setRecent({});
}

QWidget* StartPage::makeChoice(const QString& action, const QString& text, bool first,
                               void (StartPage::*wanted)()) {
    auto* choice = new QWidget;
    auto* button = new QPushButton(action);
    button->setProperty("primary", first);
    button->setAccessibleDescription(text);
    connect(button, &QPushButton::clicked, this, wanted);
    auto* words = new QLabel(text);
    words->setWordWrap(true);
    words->setForegroundRole(QPalette::PlaceholderText);
    const int width = fontMetrics().averageCharWidth() * columnWidth * 3 / 5;
    words->setFixedWidth(width);
    words->setMinimumHeight(
        std::max(words->heightForWidth(width), 2 * fontMetrics().lineSpacing()));
    words->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    auto* row = new QHBoxLayout(choice);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(2 * step(*this));
    row->addWidget(button, 1, Qt::AlignTop);
    row->addWidget(words, 0, Qt::AlignTop);
    return choice;
}

void StartPage::setRecent(const QStringList& paths) {
    while (QLayoutItem* item = m_recent->takeAt(0)) {
        delete item->widget();
        delete item;
    }
    m_recentTitle->setVisible(!paths.isEmpty());
    for (const QString& path : paths) {
        const QFileInfo file(path);
        auto* button = new QPushButton(
            tr("%1  in %2")
                .arg(file.completeBaseName(), QDir::toNativeSeparators(file.absolutePath())));
        button->setFlat(true);
        button->setProperty("leftText", true);
        button->setToolTip(QDir::toNativeSeparators(path));
        connect(button, &QPushButton::clicked, this, [this, path] { Q_EMIT recentWanted(path); });
        m_recent->addWidget(button);
    }
}

} // namespace ladlework::ui
