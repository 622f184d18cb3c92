#include "ui/log/member_day_panel.h"

#include "ui/log/drinks_model.h"
#include "ui/log/log_delegates.h"
#include "ui/log/reactions_model.h"
#include "ui/paint/theme.h"
#include "ui/shared/amount_delegate.h"
#include "ui/shared/section.h"
#include "ui/shared/side_by_side.h"
#include "ui/shared/table_look.h"

#include <QKeyEvent>
#include <QLabel>
#include <QTableView>
#include <QVBoxLayout>

namespace ladlework::ui {

namespace {
constexpr int mostDetails = 6;
} // namespace

MemberDayPanel::MemberDayPanel(const LogWriter& writer, QWidget* parent)
    : QWidget(parent), m_writer(writer), m_section(new Section(tr("Drinks and reactions"), this)),
      m_noDrinks(new QLabel(tr("No drink entered. What it came out of and a note go here."), this)),
      m_noReactions(new QLabel(tr("Nothing felt was entered. When it began and how long it lasted "
                                  "go here."),
                               this)),
      m_drinks(new DrinksModel(this)),
      m_drinksTable(makeTable(m_drinks, tr("Drinks of the member"), DrinksModel::NoteColumn, this)),
      m_sources(new SourceDelegate(this)), m_reactions(new ReactionsModel(this)),
      m_reactionsTable(
          makeTable(m_reactions, tr("Reactions of the member"), ReactionsModel::NoteColumn, this)),
      m_symptoms(new SymptomDelegate(false, this)) {
    makeTables();
    auto* sides = new SideBySide(this);
    sides->setSpacing(2 * step(*this));
    sides->add(makeSide(m_drinksTable, m_noDrinks));
    sides->add(makeSide(m_reactionsTable, m_noReactions));
    m_section->body()->addWidget(sides);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_section);
    connectModels();
}

void MemberDayPanel::makeTables() {
    m_drinksTable->setItemDelegateForColumn(DrinksModel::SourceColumn, m_sources);
    m_drinksTable->setItemDelegateForColumn(
        DrinksModel::AmountColumn, new AmountDelegate(AmountDelegate::Kind::Volume,
                                                      quantity::MeasureSystem::UsCustomary, this));
    m_reactionsTable->setItemDelegateForColumn(ReactionsModel::SymptomColumn, m_symptoms);
    m_drinksTable->installEventFilter(this);
    m_reactionsTable->installEventFilter(this);
}

QWidget* MemberDayPanel::makeSide(QTableView* table, QLabel* words) {
    words->setForegroundRole(QPalette::PlaceholderText);
    words->setWordWrap(true);
    auto* side = new QWidget(this);
    auto* column = new QVBoxLayout(side);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(table);
    column->addWidget(words);
    column->addStretch();
    return side;
}

void MemberDayPanel::connectModels() {
    connect(m_drinks, &DrinksModel::entryChanged, this, [this](const intake::IntakeEntry& entry) {
        m_writer.change(entry, nameOf(entry.member));
    });
    connect(m_reactions, &ReactionsModel::reactionChanged, this,
            [this](const intake::Reaction& reaction) {
                m_writer.change(reaction, nameOf(reaction.member));
            });
    connect(m_reactions, &ReactionsModel::refused, this, &MemberDayPanel::refused);
}

void MemberDayPanel::show(std::shared_ptr<const casebook::Casebook> casebook,
                          const casebook::Standing* standing, QDate day) {
    m_casebook = std::move(casebook);
    setVisible(standing != nullptr);
    if (!standing)
        return;
    const casebook::FamilyRecords& records = m_casebook->records();
    m_sources->setCasebook(m_casebook);
    m_symptoms->setWords(symptomWords(records));
    qobject_cast<AmountDelegate*>(m_drinksTable->itemDelegateForColumn(DrinksModel::AmountColumn))
        ->setMeasures(records.family.measures);
    m_section->setTitle(tr("Drinks and reactions: %1").arg(standing->member.name));
    m_drinks->show(m_casebook, standing->member.id, day);
    m_reactions->show(records, standing->member.id, day);
    const bool drinks = m_drinks->rowCount() > 0;
    const bool reactions = m_reactions->rowCount() > 0;
    m_drinksTable->setVisible(drinks);
    m_noDrinks->setVisible(!drinks);
    m_reactionsTable->setVisible(reactions);
    m_noReactions->setVisible(!reactions);
    m_section->setRemark(drinks || reactions ? tr("Delete takes the chosen one out.") : QString());
    fitTables();
}

void MemberDayPanel::fitTables() {
    fitRows(*m_drinksTable, 1, mostDetails);
    fitRows(*m_reactionsTable, 1, mostDetails);
}

QString MemberDayPanel::nameOf(MemberId member) const {
    const casebook::Standing* standing = m_casebook->standing(member);
    return standing ? standing->member.name : QString();
}

void MemberDayPanel::removeDrink() {
    if (const auto* entry = m_drinks->entryAt(m_drinksTable->currentIndex().row()))
        m_writer.remove(intake::IntakeEntry(*entry), nameOf(entry->member));
}

void MemberDayPanel::removeReaction() {
    if (const auto* reaction = m_reactions->reactionAt(m_reactionsTable->currentIndex().row()))
        m_writer.remove(intake::Reaction(*reaction), nameOf(reaction->member));
}

bool MemberDayPanel::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() != QEvent::KeyPress ||
        static_cast<QKeyEvent*>(event)->key() != Qt::Key_Delete)
        return QWidget::eventFilter(watched, event);
    if (watched == m_drinksTable)
        removeDrink();
    else
        removeReaction();
    return true;
}

} // namespace ladlework::ui
