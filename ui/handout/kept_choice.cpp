#include "ui/handout/kept_choice.h"

#include "ui/paint/theme.h"

#include <QAction>
#include <QComboBox>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QPushButton>
#include <QSignalBlocker>
#include <QVBoxLayout>

namespace ladlework::ui {

KeptChoice::KeptChoice(const WordsFor& words, QWidget* parent)
    : QWidget(parent), m_box(new QComboBox), m_nameRow(new QWidget), m_name(new QLineEdit),
      m_changed(new QLabel(tr("changed"))), m_keepAs(new QAction(words.keepAs, this)),
      m_rename(new QAction(words.rename, this)), m_remove(new QAction(words.remove, this)) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(step(*this) / 2);
    auto* row = new QHBoxLayout;
    row->setSpacing(step(*this));
    auto* label = new QLabel(words.label);
    label->setBuddy(m_box);
    m_box->setAccessibleName(QString(words.label).remove(QLatin1Char('&')));
    m_box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    m_box->setMinimumContentsLength(10);
    auto* menuButton = new QPushButton(tr("Keep"));
    menuButton->setToolTip(tr("Keep under a name, rename, remove"));
    auto* menu = new QMenu(menuButton);
    if (!words.save.isEmpty()) {
        m_save = new QAction(words.save, this);
        connect(m_save, &QAction::triggered, this, &KeptChoice::saveWanted);
    }
    menu->addActions(entries());
    menuButton->setMenu(menu);
    row->addWidget(label);
    row->addWidget(m_box, 1);
    m_changed->setForegroundRole(QPalette::PlaceholderText);
    row->addWidget(menuButton);
    column->addLayout(row);

    auto* nameRow = new QHBoxLayout(m_nameRow);
    nameRow->setContentsMargins(0, 0, 0, 0);
    nameRow->setSpacing(step(*this));
    auto* nameLabel = new QLabel(words.nameLabel);
    nameLabel->setBuddy(m_name);
    m_name->setAccessibleName(QString(words.nameLabel).remove(QLatin1Char('&')));
    m_name->setPlaceholderText(tr("Enter keeps it, Esc does not"));
    m_name->installEventFilter(this);
    nameRow->addWidget(nameLabel);
    nameRow->addWidget(m_name, 1);
    m_nameRow->hide();
    column->addWidget(m_nameRow);
    m_changed->hide();
    column->addWidget(m_changed);

    connect(m_box, &QComboBox::currentIndexChanged, this, [this] {
        follow();
        Q_EMIT chosen(current());
    });
    connect(m_keepAs, &QAction::triggered, this, &KeptChoice::askForNewName);
    connect(m_rename, &QAction::triggered, this, &KeptChoice::askForRename);
    connect(m_remove, &QAction::triggered, this, &KeptChoice::removeWanted);
    connect(m_name, &QLineEdit::returnPressed, this, &KeptChoice::takeName);
}

QList<QAction*> KeptChoice::entries() const {
    QList<QAction*> all{m_keepAs, m_rename, m_remove};
    if (m_save != nullptr)
        all.prepend(m_save);
    return all;
}

void KeptChoice::setItems(const QList<Item>& items, qint64 id) {
    const QSignalBlocker quiet(m_box);
    if (items != m_items) {
        m_items = items;
        m_box->clear();
        for (const Item& item : items)
            m_box->addItem(item.name, item.id);
    }
    m_box->setCurrentIndex(std::max(0, m_box->findData(id)));
    follow();
}

qint64 KeptChoice::current() const {
    return m_box->currentData().toLongLong();
}

void KeptChoice::setChanged(bool changed) {
    m_changed->setText(tr("Changed since it was chosen."));
    m_changed->setVisible(changed);
    if (m_save != nullptr)
        m_save->setEnabled(changed && current() > 0 && m_mayChange);
}

void KeptChoice::setMayChange(bool may) {
    m_mayChange = may;
    follow();
}

void KeptChoice::follow() {
    const bool kept = current() > 0;
    m_keepAs->setEnabled(m_mayChange);
    m_rename->setEnabled(kept && m_mayChange);
    m_remove->setEnabled(kept && m_mayChange);
}

void KeptChoice::askForNewName() {
    ask(Asked::NewName, QString());
}

void KeptChoice::askForRename() {
    ask(Asked::Rename, m_box->currentText());
}

void KeptChoice::ask(Asked what, const QString& name) {
    m_asked = what;
    m_name->setText(name);
    m_name->selectAll();
    m_nameRow->show();
    m_name->setFocus();
}

void KeptChoice::takeName() {
    const QString name = m_name->text().trimmed();
    if (name.isEmpty())
        return;
    const Asked asked = std::exchange(m_asked, Asked::Nothing);
    m_nameRow->hide();
    m_box->setFocus();
    if (asked == Asked::NewName)
        Q_EMIT keepAsWanted(name);
    else if (asked == Asked::Rename)
        Q_EMIT renameWanted(name);
}

bool KeptChoice::eventFilter(QObject* watched, QEvent* event) {
    if (watched == m_name && event->type() == QEvent::KeyPress) {
        const auto* key = static_cast<const QKeyEvent*>(event);
        if (key->key() == Qt::Key_Escape) {
            m_asked = Asked::Nothing;
            m_nameRow->hide();
            m_box->setFocus();
            return true;
        }
    }
    return QWidget::eventFilter(watched, event);
}

} // namespace ladlework::ui
