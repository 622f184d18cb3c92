#include "ui/families/families_list.h"

#include "ui/families/family_delegate.h"
#include "ui/paint/theme.h"

#include <QHBoxLayout>
#include <QItemSelectionModel>
#include <QKeyEvent>
#include <QLineEdit>
#include <QListView>
#include <QPushButton>
#include <QScopedValueRollback>
#include <QVBoxLayout>

namespace ladlework::ui {

FamiliesList::FamiliesList(const AttentionReader& reader, QWidget* parent)
    : QWidget(parent), m_model(new FamiliesModel(reader, this)),
      m_everyone(new QPushButton(tr("Who needs me today"))),
      m_newFamily(new QPushButton(tr("New family"))), m_practice(new QPushButton(tr("Practice"))),
      m_search(new QLineEdit), m_view(new QListView) {
    build();
    connect(m_everyone, &QPushButton::clicked, this, &FamiliesList::everyoneWanted);
    connect(m_search, &QLineEdit::textChanged, m_model, &FamiliesModel::setSearch);
    connect(m_view->selectionModel(), &QItemSelectionModel::currentChanged, this,
            &FamiliesList::onCurrentChanged);
    connect(m_view, &QListView::clicked, this, &FamiliesList::toggleFold);
    m_search->installEventFilter(this);
    m_view->installEventFilter(this);
}

void FamiliesList::build() {
    const int gap = ui::step(*this);
    for (QPushButton* button : {m_everyone, m_newFamily, m_practice})
        button->setCheckable(true);
    m_everyone->setToolTip(tr("What every family needs today"));
    m_search->setPlaceholderText(tr("Find a family"));
    m_search->setAccessibleName(tr("Find a family"));
    m_search->setClearButtonEnabled(true);

    m_view->setModel(m_model);
    m_view->setItemDelegate(new FamilyDelegate(m_view));
    m_view->setAccessibleName(tr("Families"));
    m_view->setProperty("bare", true);
    m_view->viewport()->setAutoFillBackground(false);
    m_view->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_view->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    m_view->setResizeMode(QListView::Adjust);
    m_view->setEditTriggers(QAbstractItemView::NoEditTriggers);

    m_newFamily->setToolTip(tr("Take on a family"));
    connect(m_newFamily, &QPushButton::clicked, this, &FamiliesList::newFamilyWanted);
    m_practice->setToolTip(tr("Your practice: letterhead, measures, phases"));
    connect(m_practice, &QPushButton::clicked, this, &FamiliesList::practiceWanted);

    auto* foot = new QHBoxLayout;
    foot->setSpacing(gap / 2);
    foot->addWidget(m_newFamily);
    foot->addWidget(m_practice);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(gap, gap, gap / 2, gap);
    column->setSpacing(gap);
    column->addWidget(m_everyone);
    column->addWidget(m_search);
    column->addWidget(m_view, 1);
    column->addLayout(foot);
}

void FamiliesList::setCurrent(FamilyId family) {
    const QScopedValueRollback silence(m_silent, true);
    check(nullptr);
    if (!m_model->indexOf(family).isValid())
        m_model->setOpen(true);
    if (!m_model->indexOf(family).isValid())
        m_search->clear();
    m_view->setCurrentIndex(m_model->indexOf(family));
}

void FamiliesList::setPlace(Place place) {
    const QScopedValueRollback silence(m_silent, true);
    check(place == Place::Everyone    ? m_everyone
          : place == Place::NewFamily ? m_newFamily
                                      : m_practice);
    m_view->setCurrentIndex({});
    m_view->clearSelection();
}

void FamiliesList::check(const QPushButton* pressed) {
    for (QPushButton* button : {m_everyone, m_newFamily, m_practice})
        button->setChecked(button == pressed);
}

void FamiliesList::focusSearch() {
    m_search->setFocus(Qt::ShortcutFocusReason);
    m_search->selectAll();
}

void FamiliesList::step(int steps) {
    const int way = steps < 0 ? -1 : 1;
    const int from = m_view->currentIndex().isValid() ? m_view->currentIndex().row() + way
                     : way > 0                        ? 0
                                                      : m_model->rowCount() - 1;
    const int row = familyRow(from, way);
    if (row >= 0)
        m_view->setCurrentIndex(m_model->index(row));
}

int FamiliesList::familyRow(int row, int way) const {
    while (row >= 0 && row < m_model->rowCount()) {
        if (m_model->familyAt(m_model->index(row)).isStored())
            return row;
        row += way;
    }
    return -1;
}

void FamiliesList::onCurrentChanged(const QModelIndex& index) {
    const FamilyId family = m_model->familyAt(index);
    if (!m_silent && family.isStored())
        Q_EMIT familyChosen(family);
}

void FamiliesList::toggleFold(const QModelIndex& index) {
    if (index.data(FamiliesModel::IsFoldRole).toBool())
        m_model->setOpen(!m_model->isOpen());
}

bool FamiliesList::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::KeyPress) {
        const int key = static_cast<QKeyEvent*>(event)->key();
        if (watched == m_search ? onSearchKey(key) : onListKey(key))
            return true;
    }
    return QWidget::eventFilter(watched, event);
}

bool FamiliesList::onSearchKey(int key) {
    switch (key) {
    case Qt::Key_Escape:
        m_search->clear();
        return true;
    case Qt::Key_Return:
    case Qt::Key_Enter:
    case Qt::Key_Down: {
        const int row = familyRow(0, 1);
        if (row >= 0 && !m_search->text().isEmpty())
            m_view->setCurrentIndex(m_model->index(row));
        m_view->setFocus(Qt::TabFocusReason);
        return true;
    }
    default:
        return false;
    }
}

bool FamiliesList::onListKey(int key) {
    const QModelIndex current = m_view->currentIndex();
    if (!current.data(FamiliesModel::IsFoldRole).toBool())
        return false;
    switch (key) {
    case Qt::Key_Return:
    case Qt::Key_Enter:
    case Qt::Key_Space:
        toggleFold(current);
        return true;
    case Qt::Key_Right:
        m_model->setOpen(true);
        return true;
    case Qt::Key_Left:
        m_model->setOpen(false);
        return true;
    default:
        return false;
    }
}

} // namespace ladlework::ui
