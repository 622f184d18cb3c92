#include "ui/week/pot_chooser.h"

#include "ui/paint/theme.h"
#include "ui/shared/section.h"

#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QLocale>
#include <QPushButton>
#include <QSortFilterProxyModel>
#include <QVBoxLayout>

namespace ladlework::ui {

PotChooser::PotChooser(QWidget* parent)
    : QWidget(parent), m_section(new Section(tr("Pots"))), m_model(new PotsModel(this)),
      m_filtered(new QSortFilterProxyModel(this)), m_filter(new QLineEdit), m_list(new QListView),
      m_empty(new QLabel), m_build(new QPushButton(tr("&Build a pot"))) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(m_section);
    m_filtered->setSourceModel(m_model);
    m_filtered->setFilterRole(PotsModel::NameRole);
    m_filtered->setFilterCaseSensitivity(Qt::CaseInsensitive);
    m_filter->setPlaceholderText(tr("Type to find a pot"));
    m_filter->setAccessibleName(tr("Find a pot"));
    m_filter->setClearButtonEnabled(true);
    m_filter->installEventFilter(this);
    m_list->setModel(m_filtered);
    m_list->setAccessibleName(tr("Pots to put on a day"));
    m_list->setDragEnabled(true);
    m_list->setDragDropMode(QAbstractItemView::DragOnly);
    m_list->setWordWrap(true);
    m_list->setSpacing(1);
    m_list->setMinimumHeight(8 * step(*this));
    // It scrolls before the screen does.
    m_list->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Ignored);
    m_list->installEventFilter(this);
    m_empty->setWordWrap(true);
    m_empty->setForegroundRole(QPalette::PlaceholderText);
    m_section->body()->addWidget(m_filter);
    m_section->body()->addWidget(m_empty);
    m_section->body()->addWidget(m_build);
    m_section->body()->addWidget(m_list, 1);
    m_section->body()->addStretch();
    connect(m_build, &QPushButton::clicked, this, &PotChooser::potsWanted);
    connect(m_filter, &QLineEdit::textChanged, this, [this](const QString& text) {
        m_filtered->setFilterFixedString(text.trimmed());
        selectFirst();
        follow();
    });
    connect(m_list, &QListView::doubleClicked, this, &PotChooser::chooseCurrent);
    follow();
}

void PotChooser::setPots(const QList<PotsModel::Row>& rows) {
    m_model->setRows(rows);
    if (!m_list->currentIndex().isValid())
        selectFirst();
    follow();
}

void PotChooser::setDay(QDate day) {
    m_day = day;
    m_section->setRemark(day.isValid()
                             ? tr("Enter or drag: %1").arg(QLocale().dayName(day.dayOfWeek()))
                             : QString());
}

void PotChooser::choose() {
    m_filter->clear();
    selectFirst();
    m_filter->setFocus(Qt::ShortcutFocusReason);
}

bool PotChooser::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() != QEvent::KeyPress)
        return QWidget::eventFilter(watched, event);
    auto* press = static_cast<QKeyEvent*>(event);
    switch (press->key()) {
    case Qt::Key_Return:
    case Qt::Key_Enter:
        chooseCurrent();
        return true;
    case Qt::Key_Escape:
        m_filter->clear();
        Q_EMIT givenUp();
        return true;
    case Qt::Key_Up:
    case Qt::Key_Down: {
        if (watched != m_filter)
            break;
        const int row = m_list->currentIndex().row() + (press->key() == Qt::Key_Up ? -1 : 1);
        if (row >= 0 && row < m_filtered->rowCount())
            m_list->setCurrentIndex(m_filtered->index(row, 0));
        return true;
    }
    default:
        break;
    }
    return QWidget::eventFilter(watched, event);
}

void PotChooser::chooseCurrent() {
    const QModelIndex index = m_list->currentIndex();
    if (index.isValid() && m_day.isValid())
        Q_EMIT chosen(m_model->potAt(m_filtered->mapToSource(index).row()), m_day);
}

void PotChooser::selectFirst() {
    m_list->setCurrentIndex(m_filtered->index(0, 0));
}

void PotChooser::follow() {
    const bool none = m_filtered->rowCount() == 0;
    m_empty->setText(m_model->rowCount() == 0
                         ? tr("This family has no pots yet. Build one in Pots; it can be put on a "
                              "day here.")
                         : tr("No pot of that name."));
    m_empty->setVisible(none);
    m_list->setVisible(!none);
    m_build->setVisible(m_model->rowCount() == 0);
}

} // namespace ladlework::ui
