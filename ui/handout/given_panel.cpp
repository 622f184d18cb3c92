#include "ui/handout/given_panel.h"

#include "ui/handout/given_handouts_model.h"
#include "ui/paint/theme.h"
#include "ui/shared/section.h"

#include <QHBoxLayout>
#include <QItemSelectionModel>
#include <QLabel>
#include <QListView>
#include <QPushButton>
#include <QVBoxLayout>

namespace ladlework::ui {

namespace {
constexpr int rowsShown = 4;
}

GivenPanel::GivenPanel(QWidget* parent)
    : QWidget(parent), m_section(new Section(tr("Already given"))),
      m_model(new GivenHandoutsModel(this)), m_list(new QListView),
      m_empty(new QLabel(tr("What you give out is kept here, word for word."))) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(m_section);
    m_empty->setWordWrap(true);
    m_empty->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    m_empty->setForegroundRole(QPalette::PlaceholderText);
    m_list->setModel(m_model);
    m_list->setAccessibleName(tr("Handouts already given"));
    m_list->setUniformItemSizes(true);
    m_list->setMinimumHeight(rowsShown * 5 * step(*this));
    m_section->body()->addWidget(m_empty);
    m_section->body()->addWidget(m_list, 1);
    auto* row = new QHBoxLayout;
    row->setSpacing(step(*this));
    const auto addButton = [&](const QString& text, const QString& tip) {
        auto* button = new QPushButton(text);
        button->setToolTip(tip);
        row->addWidget(button);
        m_buttons << button;
        return button;
    };
    connect(addButton(tr("&Open"), tr("Shows these pages as they were given")),
            &QPushButton::clicked, this, &GivenPanel::openWanted);
    connect(addButton(tr("Save again"), tr("Saves the very PDF that was given")),
            &QPushButton::clicked, this, &GivenPanel::saveWanted);
    connect(addButton(tr("Re&move"), tr("Takes it out of the record; can be undone")),
            &QPushButton::clicked, this, &GivenPanel::removeWanted);
    m_section->body()->addLayout(row);
    connect(m_list, &QListView::activated, this, &GivenPanel::openWanted);
    connect(m_list->selectionModel(), &QItemSelectionModel::currentChanged, this,
            &GivenPanel::follow);
    m_section->body()->addStretch();
    follow();
}

void GivenPanel::setHandouts(const QList<casebook::HandoutRecord>& handouts,
                             const QTimeZone& zone) {
    const casebook::HandoutRecord* before = chosen();
    const HandoutId kept = before != nullptr ? before->id : HandoutId{};
    m_model->setHandouts(handouts, zone);
    const int row = m_model->rowOf(kept);
    if (row >= 0)
        m_list->setCurrentIndex(m_model->index(row));
    follow();
}

const casebook::HandoutRecord* GivenPanel::chosen() const {
    const QModelIndex index = m_list->currentIndex();
    return index.isValid() ? m_model->handout(index.row()) : nullptr;
}

void GivenPanel::follow() {
    const bool any = m_model->rowCount() > 0;
    m_empty->setVisible(!any);
    m_list->setVisible(any);
    for (QPushButton* button : std::as_const(m_buttons)) {
        button->setVisible(any);
        button->setEnabled(chosen() != nullptr);
    }
}

} // namespace ladlework::ui
