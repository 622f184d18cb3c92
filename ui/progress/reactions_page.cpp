#include "ui/progress/reactions_page.h"

#include "casebook/member_intake.h"
#include "ui/paint/theme.h"
#include "ui/progress/patterns_model.h"
#include "ui/progress/reaction_kinds.h"
#include "ui/shared/section.h"
#include "ui/shared/table_look.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QSpinBox>
#include <QTableView>
#include <QVBoxLayout>

namespace ladlework::ui {

namespace {
constexpr int mostKinds = 7;
constexpr int mostPatterns = 14;
constexpr int longestWindow = 7;
constexpr int strongest = 10;

QLabel* quiet(const QString& text, QWidget* parent) {
    auto* label = new QLabel(text, parent);
    label->setForegroundRole(QPalette::PlaceholderText);
    label->setWordWrap(true);
    return label;
}
} // namespace

ReactionsPage::ReactionsPage(const kitchen::Catalogue& catalogue, QWidget* parent)
    : QWidget(parent) {
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(step(*this));
    layout->addWidget(makeKinds());
    layout->addWidget(makePatterns(catalogue));
    layout->addStretch(1);
}

Section* ReactionsPage::makeKinds() {
    auto* section = new Section(tr("Reactions by kind"), this);
    m_kinds = new ReactionKindsModel(this);
    m_kindsTable =
        makeTable(m_kinds, tr("Reactions by kind"), ReactionKindsModel::SymptomColumn, section);
    m_kindsTable->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_noKinds = quiet(tr("No reaction was entered."), section);
    section->body()->addWidget(m_kindsTable);
    section->body()->addWidget(m_noKinds);
    return section;
}

QSpinBox* ReactionsPage::makeBox(const QString& name, int least, int most, int value) {
    auto* box = new QSpinBox(this);
    box->setRange(least, most);
    box->setValue(value);
    box->setAccessibleName(name);
    connect(box, &QSpinBox::valueChanged, this, &ReactionsPage::showPatterns);
    return box;
}

Section* ReactionsPage::makePatterns(const kitchen::Catalogue& catalogue) {
    auto* section = new Section(tr("What was in the stock, and what was felt"), this);
    const intake::PatternRules usual;
    m_window = makeBox(tr("Days after it that still count as with it"), 0, longestWindow,
                       usual.windowDays);
    m_strength = makeBox(tr("Strength from which something counts as felt"), 1, strongest,
                         usual.reactionAtLeast);
    m_patterns = new PatternsModel(catalogue, this);
    m_patternsTable = makeTable(m_patterns, tr("Patterns"), PatternsModel::WordsColumn, section);
    m_patternsTable->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_noPatterns = quiet({}, section);
    auto* row = new QHBoxLayout;
    row->addWidget(new QLabel(tr("Count as felt from strength"), section));
    row->addWidget(m_strength);
    row->addSpacing(step(*this));
    row->addWidget(new QLabel(tr("and as with it for"), section));
    row->addWidget(m_window);
    row->addWidget(new QLabel(tr("days after"), section));
    row->addStretch();
    section->body()->addLayout(row);
    section->body()->addWidget(m_patternsTable);
    section->body()->addWidget(m_noPatterns);
    section->body()->addWidget(
        quiet(tr("Only days count on which the pot behind every drink is known. A pattern is a "
                 "reason to talk, never a finding about the cause; days that follow one another "
                 "are alike, so chance does more than the figures allow for."),
              section));
    return section;
}

void ReactionsPage::show(std::shared_ptr<const casebook::Casebook> casebook,
                         const casebook::Standing& standing) {
    m_casebook = std::move(casebook);
    m_member = standing.member.id;
    QList<intake::Reaction> own = m_casebook->records().reactions;
    own.removeIf([this](const intake::Reaction& each) { return each.member != m_member; });
    m_kinds->setKinds(reactionKinds(own));
    m_kindsTable->setVisible(!own.isEmpty());
    m_noKinds->setVisible(own.isEmpty());
    fitRows(*m_kindsTable, 1, mostKinds);
    showPatterns();
}

void ReactionsPage::showPatterns() {
    if (!m_casebook)
        return;
    const QList<intake::Pattern> patterns =
        casebook::memberPatterns(*m_casebook, m_member, {m_window->value(), m_strength->value()});
    m_patterns->setPatterns(patterns);
    m_patternsTable->setVisible(!patterns.isEmpty());
    m_noPatterns->setVisible(patterns.isEmpty());
    m_noPatterns->setText(tr("No entry of this member says what it came out of yet. In the Log the "
                             "pot or container can be chosen for each drink."));
    fitRows(*m_patternsTable, 1, mostPatterns);
}

QWidget* ReactionsPage::firstField() const {
    return m_strength;
}

} // namespace ladlework::ui
