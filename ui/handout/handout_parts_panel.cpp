#include "ui/handout/handout_parts_panel.h"

#include "ui/handout/handout_parts_model.h"
#include "ui/paint/theme.h"
#include "ui/shared/action_button.h"

#include <QAction>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QSignalBlocker>
#include <QTimer>
#include <QVBoxLayout>

namespace ladlework::ui {

namespace {
constexpr int typingRest = 250; ///< milliseconds
constexpr int wordsLines = 4;
constexpr int partsShown = 10;

using casebook::HandoutPart;
} // namespace

HandoutPartsPanel::HandoutPartsPanel(QWidget* parent)
    : QWidget(parent), m_model(new HandoutPartsModel(this)), m_list(new QListView),
      m_titleLabel(new QLabel(tr("T&itle"))), m_title(new QLineEdit),
      m_wordsLabel(new QLabel(tr("&Your own words"))), m_words(new QPlainTextEdit),
      m_typing(new QTimer(this)), m_up(makeAction(tr("Up"), tr("Prints the chosen part earlier"),
                                                  QKeySequence(Qt::ALT | Qt::Key_Up))),
      m_down(makeAction(tr("Down"), tr("Prints the chosen part later"),
                        QKeySequence(Qt::ALT | Qt::Key_Down))),
      m_add(makeAction(tr("Add a page"), tr("A page of your own words below the chosen part"), {})),
      m_remove(makeAction(tr("Take out"), tr("Takes a page of your own words out"), {})) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(step(*this));
    m_list->setModel(m_model);
    m_list->setAccessibleName(tr("Parts of the pages in their order"));
    const int row = fontMetrics().height() + step(*this) / 2;
    m_list->setMinimumHeight(partsShown * row + step(*this));
    m_list->setMaximumHeight(2 * partsShown * row);
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    column->addWidget(m_list, 2);
    auto* buttons = new QHBoxLayout;
    buttons->setSpacing(step(*this) / 2);
    for (QAction* action : {m_up, m_down, m_add, m_remove})
        buttons->addWidget(buttonFor(action));
    column->addLayout(buttons);
    column->addWidget(makeWords(), 1);
    m_typing->setSingleShot(true);
    m_typing->setInterval(typingRest);
    connect(m_up, &QAction::triggered, this, [this] { moveChosen(-1); });
    connect(m_down, &QAction::triggered, this, [this] { moveChosen(1); });
    connect(m_add, &QAction::triggered, this, &HandoutPartsPanel::addPage);
    connect(m_remove, &QAction::triggered, this, &HandoutPartsPanel::removePage);
    connect(m_words, &QPlainTextEdit::textChanged, m_typing, qOverload<>(&QTimer::start));
    connect(m_title, &QLineEdit::textChanged, m_typing, qOverload<>(&QTimer::start));
    connect(m_typing, &QTimer::timeout, this, [this] { takeWords(chosenRow()); });
    connect(m_model, &HandoutPartsModel::edited, this, &HandoutPartsPanel::sectionsChanged);
    connect(m_list->selectionModel(), &QItemSelectionModel::currentChanged, this,
            [this](const QModelIndex& /*now*/, const QModelIndex& before) {
                settle(before.row());
                follow();
            });
}

QAction* HandoutPartsPanel::makeAction(const QString& text, const QString& tip,
                                       const QKeySequence& keys) {
    auto* action = new QAction(text, this);
    action->setStatusTip(tip);
    action->setToolTip(tip);
    action->setShortcut(keys);
    action->setShortcutContext(Qt::WidgetWithChildrenShortcut);
    addAction(action);
    return action;
}

QWidget* HandoutPartsPanel::makeWords() {
    m_titleLabel->setBuddy(m_title);
    m_title->setAccessibleName(tr("Title of the page"));
    m_wordsLabel->setBuddy(m_words);
    m_words->setAccessibleName(tr("Your own words"));
    m_words->setTabChangesFocus(true);
    m_words->setMinimumHeight(fontMetrics().lineSpacing() * wordsLines + 2 * step(*this));
    auto* box = new QWidget;
    auto* column = new QVBoxLayout(box);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(step(*this) / 2);
    auto* title = new QHBoxLayout;
    title->addWidget(m_titleLabel);
    title->addWidget(m_title, 1);
    column->addLayout(title);
    column->addWidget(m_wordsLabel);
    column->addWidget(m_words);
    return box;
}

QList<QAction*> HandoutPartsPanel::steps() const {
    return {m_up, m_down, m_add, m_remove};
}

void HandoutPartsPanel::setSections(const QList<casebook::HandoutSection>& sections) {
    const int row = std::max(0, chosenRow());
    const QSignalBlocker quiet(this);
    m_typing->stop();
    m_model->setSections(sections);
    if (chosenRow() < 0)
        m_list->setCurrentIndex(m_model->index(std::min(row, m_model->rowCount() - 1)));
    follow();
}

QList<casebook::HandoutSection> HandoutPartsPanel::sections() const {
    return m_model->sections();
}

int HandoutPartsPanel::chosenRow() const {
    return m_list->currentIndex().isValid() ? m_list->currentIndex().row() : -1;
}

void HandoutPartsPanel::moveChosen(int places) {
    settle(chosenRow());
    if (chosenRow() >= 0)
        m_list->setCurrentIndex(m_model->index(m_model->move(chosenRow(), places)));
    follow();
}

void HandoutPartsPanel::addPage() {
    settle(chosenRow());
    m_list->setCurrentIndex(m_model->index(m_model->addPage(chosenRow())));
    follow();
    m_title->setFocus();
}

void HandoutPartsPanel::removePage() {
    const int row = chosenRow();
    if (!m_model->mayRemove(row))
        return;
    m_typing->stop();
    m_model->remove(row);
    m_list->setCurrentIndex(m_model->index(std::min(row, m_model->rowCount() - 1)));
    follow();
}

void HandoutPartsPanel::follow() {
    const int row = chosenRow();
    const auto section = m_model->sections().value(row);
    const bool page = section.part == HandoutPart::OwnWords;
    const QSignalBlocker quietTitle(m_title);
    const QSignalBlocker quietWords(m_words);
    if (m_title->text() != section.title)
        m_title->setText(section.title);
    if (m_words->toPlainText() != section.words)
        m_words->setPlainText(section.words);
    m_titleLabel->setVisible(page);
    m_title->setVisible(page);
    const bool takesWords = row >= 0 && section.part != HandoutPart::JarLabels;
    m_words->setEnabled(takesWords);
    m_words->setPlaceholderText(!takesWords ? tr("Labels have no room for more words.")
                                : page      ? tr("The words of this page")
                                : section.part == HandoutPart::Cover
                                    ? tr("A few words to this family")
                                    : tr("Printed above this part"));
    m_up->setEnabled(row > 0);
    m_down->setEnabled(row >= 0 && row + 1 < m_model->rowCount());
    m_remove->setEnabled(m_model->mayRemove(row));
}

void HandoutPartsPanel::settle(int row) {
    // Words typed a moment ago belong to the part that was chosen then.
    if (!m_typing->isActive())
        return;
    m_typing->stop();
    takeWords(row);
}

void HandoutPartsPanel::takeWords(int row) {
    // One change for both: the title and the words are often typed in one go.
    const QString title = m_title->text();
    const QString words = m_words->toPlainText();
    m_model->setTitle(row, title);
    m_model->setWords(row, words);
}

} // namespace ladlework::ui
