#include "ui/handout/handout_side.h"

#include "ui/handout/given_panel.h"
#include "ui/handout/handout_options_panel.h"
#include "ui/handout/handout_parts_panel.h"
#include "ui/handout/kept_choice.h"
#include "ui/handout/labels_panel.h"
#include "ui/paint/theme.h"
#include "ui/shared/page_scroll.h"

#include <QLabel>
#include <QTabWidget>
#include <QVBoxLayout>

namespace ladlework::ui {

HandoutSide::HandoutSide(QWidget* parent)
    : QWidget(parent), m_options(new HandoutOptionsPanel),
      m_templates(new KeptChoice({tr("Te&mplate"), tr("Keep the changes in this template"),
                                  tr("Keep as a new template..."), tr("Rename this template..."),
                                  tr("Remove this template"), tr("Na&me")})),
      m_parts(new HandoutPartsPanel), m_labels(new LabelsPanel), m_given(new GivenPanel),
      m_leaves(new QTabWidget), m_remark(new QLabel) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(m_leaves);
    const auto addLeaf = [this](QWidget* content, const QString& title) {
        auto* page = new QWidget;
        auto* inside = new QVBoxLayout(page);
        const int gap = step(*this);
        inside->setContentsMargins(gap, gap, gap, gap);
        inside->addWidget(content);
        m_leaves->addTab(new PageScroll(page, m_leaves), title);
    };
    addLeaf(makePages(), tr("Pages"));
    addLeaf(m_labels, tr("Jar labels"));
    addLeaf(m_given, tr("Given"));
    m_leaves->setAccessibleName(tr("Pages, jar labels and handouts given"));
    connect(m_leaves, &QTabWidget::currentChanged, this, &HandoutSide::leafChanged);
}

QWidget* HandoutSide::makePages() {
    auto* box = new QWidget;
    auto* column = new QVBoxLayout(box);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(step(*this));
    column->addWidget(m_options);
    column->addWidget(m_templates);
    column->addWidget(m_parts, 1);
    m_remark->setWordWrap(true);
    m_remark->setForegroundRole(QPalette::PlaceholderText);
    m_remark->hide();
    column->addWidget(m_remark);
    return box;
}

HandoutSide::Leaf HandoutSide::leaf() const {
    return static_cast<Leaf>(m_leaves->currentIndex());
}

void HandoutSide::showLeaf(Leaf leaf) {
    m_leaves->setCurrentIndex(static_cast<int>(leaf));
}

void HandoutSide::remark(const QString& words) {
    m_remark->setText(words);
    m_remark->setVisible(!words.isEmpty());
}

} // namespace ladlework::ui
