#include "ui/pot/pot_library.h"

#include "ui/pot/pot_library_model.h"
#include "ui/shared/action_button.h"
#include "ui/shared/character_width.h"

#include <QAction>
#include <QKeyEvent>
#include <QLineEdit>
#include <QListView>
#include <QPushButton>
#include <QShortcut>
#include <QVBoxLayout>
#include <algorithm>

namespace ladlework::ui {

PotLibrary::PotLibrary(const QList<std::pair<QAction*, QString>>& actions, QWidget* parent)
    : QWidget(parent), m_model(new PotLibraryModel(this)), m_filter(new QLineEdit(this)),
      m_list(new QListView(this)) {
    makeFilter();
    m_list->setModel(m_model);
    m_list->setAccessibleName(tr("Pots at hand"));
    m_list->installEventFilter(this);
    m_list->setSpacing(1);
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_list->setTextElideMode(Qt::ElideRight);
    m_list->setToolTip(tr("Delete removes the chosen pot; Undo brings it back"));
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_filter);
    layout->addWidget(m_list, 1);
    for (const auto& [action, words] : actions) {
        QPushButton* button = buttonFor(action);
        button->setText(words);
        layout->addWidget(button);
    }
    constexpr int charactersWide = 26;
    CharacterWidth::hold(*this, charactersWide);
    auto* deletes = new QShortcut(QKeySequence::Delete, m_list);
    deletes->setContext(Qt::WidgetShortcut);
    connect(deletes, &QShortcut::activated, this, &PotLibrary::removeWanted);
    connect(m_list->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            [this](const QModelIndex& current) { takeCurrent(current.row()); });
}

void PotLibrary::makeFilter() {
    m_filter->setPlaceholderText(tr("Find a pot"));
    m_filter->setAccessibleName(tr("Find a pot"));
    m_filter->setClearButtonEnabled(true);
    m_filter->setToolTip(tr("Keeps the pots with this in their name; Enter takes the first, "
                            "Escape shows all again"));
    m_filter->installEventFilter(this);
    connect(m_filter, &QLineEdit::textChanged, this, [this](const QString& words) {
        m_model->setFilter(words);
        showChosen();
    });
    connect(m_filter, &QLineEdit::returnPressed, this, [this] {
        if (const kitchen::Pot* first = m_model->potAt(m_model->firstPotRow()))
            choose(first->id);
        m_list->setFocus();
    });
}

bool PotLibrary::eventFilter(QObject* watched, QEvent* event) {
    if (watched == m_filter && event->type() == QEvent::KeyPress) {
        const int key = static_cast<QKeyEvent*>(event)->key();
        if (key == Qt::Key_Escape && !m_filter->text().isEmpty()) {
            m_filter->clear();
            return true;
        }
        if (key == Qt::Key_Down) {
            m_list->setFocus();
            if (!m_list->currentIndex().isValid())
                m_list->setCurrentIndex(m_model->index(std::max(0, m_model->firstPotRow())));
            return true;
        }
    }
    // The first row is a heading, which cannot be gone to.
    if (watched == m_list && event->type() == QEvent::KeyPress &&
        static_cast<QKeyEvent*>(event)->key() == Qt::Key_Home) {
        m_list->setCurrentIndex(m_model->index(std::max(0, m_model->firstPotRow())));
        return true;
    }
    return QWidget::eventFilter(watched, event);
}

void PotLibrary::show(const QList<kitchen::Pot>& pots) {
    const QList<kitchen::Pot>& before = m_model->pots();
    const auto place = std::ranges::find(before, m_chosen, &kitchen::Pot::id) - before.begin();
    m_model->show(pots);
    const QList<kitchen::Pot>& now = m_model->pots();
    if (chosen() == nullptr)
        m_chosen =
            now.isEmpty() ? PotId{} : now.at(std::clamp<qsizetype>(place, 0, now.size() - 1)).id;
    showChosen();
}

void PotLibrary::choose(PotId pot) {
    m_chosen = pot;
    if (m_model->rowOf(pot) < 0)
        m_filter->clear();
    showChosen();
    Q_EMIT potChosen();
}

void PotLibrary::showChosen() {
    const QModelIndex index = m_model->index(m_model->rowOf(m_chosen));
    m_list->setCurrentIndex(index);
    m_list->scrollTo(index);
}

void PotLibrary::takeCurrent(int row) {
    const kitchen::Pot* pot = m_model->potAt(row);
    if (pot == nullptr || pot->id == m_chosen)
        return;
    m_chosen = pot->id;
    Q_EMIT potChosen();
}

const kitchen::Pot* PotLibrary::chosen() const {
    const QList<kitchen::Pot>& pots = m_model->pots();
    const auto found = std::ranges::find(pots, m_chosen, &kitchen::Pot::id);
    return found == pots.end() ? nullptr : &*found;
}

bool PotLibrary::isEmpty() const {
    return m_model->pots().isEmpty();
}

QWidget* PotLibrary::list() const {
    return m_list;
}

} // namespace ladlework::ui
