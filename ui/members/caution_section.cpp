#include "ui/members/caution_section.h"

#include "ui/shared/problem_line.h"
#include "ui/shared/section.h"
#include "ui/shared/text_field.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QListWidget>
#include <QPushButton>
#include <QShortcut>
#include <QSpinBox>
#include <QVBoxLayout>
#include <algorithm>

namespace ladlework::ui {

namespace {

constexpr int mostSodiumMg = 10'000;
constexpr int sodiumStepMg = 100;

QString kindName(const QString& id) {
    for (const people::CautionKind& kind : people::cautionKinds())
        if (kind.id == id)
            return kind.name;
    return id;
}

QString adviceOf(const QString& id) {
    for (const people::CautionKind& kind : people::cautionKinds())
        if (kind.id == id)
            return kind.advice;
    return {};
}

} // namespace

CautionSection::CautionSection(const ScreenContext& context, QWidget* parent)
    : QWidget(parent), m_context(context), m_list(new QListWidget(this)),
      m_kind(new QComboBox(this)), m_detail(new TextField(this)), m_sodium(new QSpinBox(this)),
      m_remove(new QPushButton(tr("Remove caution"), this)), m_problem(new ProblemLine(this)) {
    auto* section = new Section(tr("Cautions"), this);
    section->setRemark(tr("They change findings and print on the pages."));
    section->addAction(m_remove);
    m_list->setAccessibleName(tr("Cautions"));
    m_list->setWordWrap(true);
    m_list->setResizeMode(QListView::Adjust);
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    section->body()->addWidget(m_list);
    for (const people::CautionKind& kind : people::cautionKinds())
        m_kind->addItem(kind.name, kind.id);
    m_kind->setAccessibleName(tr("Kind of caution"));
    m_detail->setPlaceholderText(tr("Details, in your words"));
    m_detail->setAccessibleName(tr("Details of the caution"));
    m_sodium->setRange(0, mostSodiumMg);
    m_sodium->setSingleStep(sodiumStepMg);
    m_sodium->setSuffix(tr(" mg sodium a day"));
    m_sodium->setSpecialValueText(tr("no figure given"));
    m_sodium->setAccessibleName(tr("Sodium limit a day"));
    auto* addButton = new QPushButton(tr("Add &caution"), this);
    auto* line = new QHBoxLayout;
    line->addWidget(m_kind);
    line->addWidget(m_sodium);
    line->addWidget(m_detail, 1);
    line->addWidget(addButton);
    section->body()->addLayout(line);
    section->body()->addWidget(m_problem);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(section);
    connect(addButton, &QPushButton::clicked, this, &CautionSection::add);
    connect(m_detail, &QLineEdit::returnPressed, this, &CautionSection::add);
    connect(m_remove, &QPushButton::clicked, this, &CautionSection::removeSelected);
    m_remove->setToolTip(tr("Removes the chosen caution; Delete in the list does the same"));
    auto* deletes = new QShortcut(QKeySequence::Delete, m_list);
    deletes->setContext(Qt::WidgetShortcut);
    connect(deletes, &QShortcut::activated, this, &CautionSection::removeSelected);
    connect(m_kind, &QComboBox::currentIndexChanged, this, &CautionSection::suitKind);
    suitKind();
}

void CautionSection::suitKind() {
    m_sodium->setVisible(m_kind->currentData().toString() == u"sodium-restricted");
    m_kind->setToolTip(adviceOf(m_kind->currentData().toString()));
}

void CautionSection::show(const casebook::Casebook& book, const casebook::Standing& standing) {
    const bool sameMember = m_member.id == standing.member.id;
    const int row = sameMember ? m_list->currentRow() : 0;
    if (!sameMember) {
        clearEntryLine();
        m_problem->clear();
    }
    m_member = standing.member;
    m_cautions.clear();
    m_list->clear();
    for (const people::Caution& caution : book.records().cautions) {
        if (caution.member != m_member.id)
            continue;
        m_cautions.append(caution);
        QString line = kindName(caution.kind);
        if (caution.sodiumLimitMg)
            line += tr(" (%1 mg sodium a day)").arg(qRound(*caution.sodiumLimitMg));
        if (!caution.detail.isEmpty())
            line += QStringLiteral(": ") + caution.detail;
        line += u'\n';
        line += adviceOf(caution.kind);
        m_list->addItem(line);
    }
    m_list->setVisible(!m_cautions.isEmpty());
    m_remove->setVisible(!m_cautions.isEmpty());
    if (!m_cautions.isEmpty())
        m_list->setCurrentRow(std::clamp(row, 0, static_cast<int>(m_cautions.size()) - 1));
    fitList();
}

QWidget* CautionSection::firstField() const {
    return m_cautions.isEmpty() ? static_cast<QWidget*>(m_kind) : m_list;
}

void CautionSection::fitList() {
    // Two lines each at full width; a narrow window wraps them and then the list scrolls.
    constexpr int mostShown = 4;
    int height = 2 * m_list->frameWidth();
    for (int row = 0; row < std::min(m_list->count(), mostShown); ++row)
        height += m_list->sizeHintForRow(row) + 2 * m_list->spacing();
    m_list->setFixedHeight(height);
}

void CautionSection::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    fitList();
}

void CautionSection::add() {
    people::Caution caution;
    caution.member = m_member.id;
    caution.kind = m_kind->currentData().toString();
    caution.detail = m_detail->trimmed();
    if (!m_sodium->isHidden() && m_sodium->value() > 0)
        caution.sodiumLimitMg = m_sodium->value();
    const Outcome outcome = m_context.workbook.act(
        tr("Added the caution %1 for %2").arg(m_kind->currentText(), m_member.name),
        [&](store::Action& action) -> Outcome {
            const auto added = m_context.workbook.families().addCaution(action, caution);
            return added ? Outcome{} : Outcome(passOn(added));
        });
    if (!m_problem->take(outcome))
        return;
    clearEntryLine();
    m_kind->setFocus();
}

void CautionSection::clearEntryLine() {
    m_detail->clear();
    m_detail->setStored({});
    m_sodium->setValue(0);
    m_kind->setCurrentIndex(0);
}

void CautionSection::removeSelected() {
    const int row = m_list->currentRow();
    if (row < 0 || row >= m_cautions.size()) {
        m_problem->say(tr("Choose the caution to remove in the list first."));
        return;
    }
    const people::Caution caution = m_cautions.at(row);
    m_problem->take(m_context.workbook.act(
        tr("Removed the caution %1 for %2").arg(kindName(caution.kind), m_member.name),
        [&](store::Action& action) {
            return m_context.workbook.families().removeCaution(action, caution.id);
        }));
}

} // namespace ladlework::ui
