#include "ui/shell/navigation.h"

#include "ui/shell/screen_names.h"

#include <QAction>
#include <QKeySequence>
#include <QSignalBlocker>

namespace ladlework::ui {

Navigation::Navigation(QWidget* parent) : QTabBar(parent) {
    setAccessibleName(tr("Screens of the family"));
    setExpanding(false);
    setDrawBase(false);
    setUsesScrollButtons(true);
    setElideMode(Qt::ElideNone);
    int number = 1;
    for (const ScreenName& screen : screenNames()) {
        auto* action = new QAction(screen.title, this);
        const QString keys = QStringLiteral("Ctrl+%1").arg(number++);
        action->setShortcut(QKeySequence(keys));
        action->setStatusTip(screen.purpose);
        action->setData(screen.id);
        connect(action, &QAction::triggered, this,
                [this, id = screen.id] { Q_EMIT screenChosen(id, true); });
        m_actions.append(action);

        QString plain = screen.title;
        const int tab = addTab(plain.remove(u'&'));
        setTabData(tab, screen.id);
        setTabToolTip(tab, tr("%1 (%2)").arg(screen.purpose, keys));
    }
    connect(this, &QTabBar::currentChanged, this,
            [this](int tab) { Q_EMIT screenChosen(tabData(tab).toString(), false); });
}

void Navigation::setCurrent(const QString& screen) {
    const QSignalBlocker silence(this);
    for (int tab = 0; tab < count(); ++tab) {
        if (tabData(tab).toString() == screen)
            setCurrentIndex(tab);
    }
}

QString Navigation::current() const {
    return tabData(currentIndex()).toString();
}

} // namespace ladlework::ui
