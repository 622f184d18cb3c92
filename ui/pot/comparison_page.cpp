#include "ui/pot/comparison_page.h"

#include "ui/paint/theme.h"
#include "ui/pot/comparison_model.h"
#include "ui/shared/choices.h"
#include "ui/shared/section.h"
#include "ui/shared/table_look.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QShortcut>
#include <QTableView>
#include <QVBoxLayout>
#include <algorithm>

namespace ladlework::ui {

ComparisonPage::ComparisonPage(QWidget* parent)
    : QWidget(parent), m_other(new QComboBox(this)), m_title(new QLabel(this)),
      m_sum(new QLabel(this)), m_model(new ComparisonModel(this)),
      m_table(
          makeTable(m_model, tr("Two pots compared"), ComparisonModel::DifferenceColumn, this)) {
    auto* section = new Section(tr("Two pots side by side"), this);
    m_table->setProperty("roomy", true);
    m_table->setEditTriggers(QAbstractItemView::NoEditTriggers);
    m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_table->setWordWrap(true);
    m_table->setTextElideMode(Qt::ElideNone);
    m_table->verticalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    m_sum->setWordWrap(true);
    section->body()->addWidget(makeHead());
    section->body()->addWidget(m_table, 1);
    section->body()->addWidget(m_sum);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(section);
    connect(m_other, &QComboBox::activated, this, &ComparisonPage::compare);
    auto* escape = new QShortcut(QKeySequence(Qt::Key_Escape), this);
    escape->setContext(Qt::WidgetWithChildrenShortcut);
    connect(escape, &QShortcut::activated, this, &ComparisonPage::leave);
}

QWidget* ComparisonPage::makeHead() {
    auto* head = new QWidget(this);
    m_title->setTextFormat(Qt::PlainText);
    QFont strong = font();
    strong.setBold(true);
    m_title->setFont(strong);
    auto* with = new QLabel(tr("against"), head);
    with->setBuddy(m_other);
    m_other->setAccessibleName(tr("Compare with"));
    m_other->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    constexpr int leastCharacters = 24;
    m_other->setMinimumContentsLength(leastCharacters);
    auto* back = new QPushButton(tr("Back to the pot"), head);
    back->setToolTip(tr("Escape does the same"));
    connect(back, &QPushButton::clicked, this, &ComparisonPage::leave);
    auto* row = new QHBoxLayout(head);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(step(*this));
    row->addWidget(m_title);
    row->addWidget(with);
    row->addWidget(m_other);
    row->addStretch();
    row->addWidget(back);
    return head;
}

void ComparisonPage::show(const kitchen::Pot& pot, std::shared_ptr<const casebook::Casebook> book) {
    m_book = std::move(book);
    m_pot = pot;
    m_title->setText(pot.name);
    fillOthers();
    compare();
}

void ComparisonPage::fillOthers() {
    QList<Choice> choices;
    for (const kitchen::Pot& pot : m_book->records().pots)
        if (pot.id != m_pot.id)
            choices.append({pot.family.isStored() ? tr("%1 (their own)").arg(pot.name) : pot.name,
                            qint64{pot.id.value}});
    setChoices(*m_other, choices, m_other->currentData());
}

void ComparisonPage::compare() {
    const kitchen::Pot* other = m_book->pot(PotId{m_other->currentData().toLongLong()});
    m_table->setVisible(other != nullptr);
    if (other == nullptr) {
        m_sum->setText(tr("There is no other pot yet. Make a variant of this one first."));
        return;
    }
    const auto brewed = [this](const kitchen::Pot& pot) {
        return BrewedPot{pot, kitchen::brew(m_book->brewInput(pot), m_book->catalogue())};
    };
    const casebook::FamilyRecords& records = m_book->records();
    const QList<ComparedLine> lines =
        comparePots(brewed(m_pot), brewed(*other),
                    {records.prices, records.practice.currency, records.family.measures});
    m_model->show(m_pot.name, other->name, lines);
    const auto clear = std::ranges::count_if(lines, &ComparedLine::clearly);
    m_sum->setText(clear == 0 ? tr("Nothing differs by more than the ranges leave open.")
                   : clear == 1
                       ? tr("One line differs clearly; in the rest the ranges overlap.")
                       : tr("%1 lines differ clearly; in the rest the ranges overlap.").arg(clear));
}

QWidget* ComparisonPage::firstField() const {
    return m_other;
}

} // namespace ladlework::ui
