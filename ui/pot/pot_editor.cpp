#include "ui/pot/pot_editor.h"

#include "ui/pot/pot_ingredients.h"
#include "ui/pot/salt_edit.h"
#include "ui/shared/choices.h"
#include "ui/shared/note_edit.h"
#include "ui/shared/text_field.h"

#include <QComboBox>
#include <QGridLayout>
#include <QLabel>
#include <QRegularExpression>
#include <QVBoxLayout>
#include <optional>

namespace ladlework::ui {

namespace {

/// The row that a finding's field names: 1 of "cuts[1].mass".
std::optional<int> rowIn(const QString& field) {
    static const QRegularExpression pattern(QStringLiteral("\\[(\\d+)\\]"));
    const QRegularExpressionMatch found = pattern.match(field);
    return found.hasMatch() ? std::optional(found.captured(1).toInt()) : std::nullopt;
}

} // namespace

PotEditor::PotEditor(const kitchen::Catalogue& catalogue, QWidget* parent)
    : QWidget(parent), m_name(new TextField(this)), m_water(new VolumeEdit(this)),
      m_simmer(new DurationEdit(this)),
      m_salt(new SaltEdit(catalogue.extra(QStringLiteral("table-salt"))->piece, this)),
      m_brew(new QComboBox(this)), m_vessel(new QComboBox(this)),
      m_ingredients(new PotIngredients(catalogue, this)), m_note(new NoteEdit(this)) {
    m_brew->addItem(tr("meat stock"));
    m_brew->addItem(tr("bone broth"));
    m_salt->setToolTip(tr("Fine table salt; weigh coarse salt and write it in grams"));
    m_vessel->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    m_note->setLines(2);
    m_note->setAccessibleName(tr("Note on the pot"));
    m_note->setPlaceholderText(tr("Your words for this pot"));
    auto* grid = new QGridLayout;
    const auto place = [&](const QString& words, QWidget* widget, int row, int column, int span) {
        auto* label = new QLabel(words, this);
        label->setBuddy(widget);
        widget->setAccessibleName(QString(words).remove(u'&'));
        grid->addWidget(label, row, column);
        grid->addWidget(widget, row, column + 1, 1, span);
    };
    place(tr("Na&me"), m_name, 0, 0, 3);
    place(tr("&Water"), m_water, 1, 0, 1);
    place(tr("Simmer"), m_simmer, 1, 2, 1);
    place(tr("Sa&lt"), m_salt, 2, 0, 1);
    place(tr("&Brew"), m_brew, 2, 2, 1);
    place(tr("Vessel"), m_vessel, 3, 0, 3);
    grid->setColumnStretch(1, 1);
    grid->setColumnStretch(3, 1);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addLayout(grid);
    layout->addWidget(m_ingredients);
    layout->addWidget(m_note);
    layout->addStretch();
    connectEdits();
}

void PotEditor::connectEdits() {
    for (QuantityEdit* edit : std::initializer_list<QuantityEdit*>{m_water, m_salt, m_simmer}) {
        connect(edit, &QuantityEdit::valueEdited, this, &PotEditor::draftChanged);
        connect(edit, &QuantityEdit::valueCommitted, this, &PotEditor::committed);
    }
    connect(m_name, &TextField::committed, this, &PotEditor::committed);
    connect(m_note, &NoteEdit::committed, this, &PotEditor::committed);
    connect(m_brew, &QComboBox::activated, this, &PotEditor::committed);
    connect(m_vessel, &QComboBox::activated, this, &PotEditor::committed);
    connect(m_ingredients, &PotIngredients::edited, this, &PotEditor::committed);
    connect(m_ingredients, &PotIngredients::priced, this, &PotEditor::priced);
    connect(m_ingredients, &PotIngredients::refused, this, &PotEditor::refused);
}

void PotEditor::show(const kitchen::Pot& pot, const casebook::Casebook& book) {
    m_pot = pot;
    m_measures = book.records().family.measures;
    m_name->setStored(pot.name);
    m_note->setText(pot.note);
    m_water->setValue(pot.water, m_measures);
    m_salt->setValue(pot.salt, m_measures);
    m_simmer->setValue(pot.simmer, m_measures);
    m_brew->setCurrentIndex(pot.brew == kitchen::Pot::Brew::BoneBroth ? 1 : 0);
    showVessels(book);
    const casebook::FamilyRecords& records = book.records();
    m_ingredients->show(pot, {records.prices, records.practice.currency, m_measures});
}

void PotEditor::showVessels(const casebook::Casebook& book) {
    const auto& vessels = book.records().vessels;
    QList<Choice> choices{{vessels.isEmpty() ? tr("a usual stockpot; none is on record")
                                             : tr("the largest the family has"),
                           qint64{0}}};
    // The practice's pot is cooked in many kitchens: it can name the vessel of none.
    const bool isShared = !m_pot.family.isStored();
    m_vessel->setEnabled(!isShared);
    m_vessel->setToolTip(isShared ? tr("Make the pot their own to choose its vessel") : QString());
    for (const kitchen::Vessel& vessel : vessels)
        choices.append({tr("%1, holds %2")
                            .arg(vessel.name, quantity::printVolume(vessel.capacity(), m_measures)),
                        qint64{vessel.id.value}});
    setChoices(*m_vessel, choices, qint64{m_pot.vessel.value});
}

void PotEditor::setWater(quantity::Volume water) {
    m_water->setValue(water, m_measures);
}

kitchen::Pot PotEditor::draft() const {
    kitchen::Pot pot = m_pot;
    pot.name = m_name->trimmed();
    pot.note = m_note->text();
    pot.brew =
        m_brew->currentIndex() == 1 ? kitchen::Pot::Brew::BoneBroth : kitchen::Pot::Brew::MeatStock;
    pot.vessel = VesselId{m_vessel->currentData().toLongLong()};
    pot.water = m_water->value();
    pot.salt = m_salt->value();
    pot.simmer = m_simmer->value();
    pot.cuts = m_ingredients->cuts();
    pot.extras = m_ingredients->extras();
    return pot;
}

QWidget* PotEditor::field(const QString& name) const {
    if (name.startsWith(u"water"))
        return m_water;
    if (name.startsWith(u"salt"))
        return m_salt;
    if (name.startsWith(u"simmer"))
        return m_simmer;
    if (name.startsWith(u"cuts"))
        return m_ingredients->cutsField(rowIn(name).value_or(0));
    if (name.startsWith(u"extras"))
        return m_ingredients->extrasField(rowIn(name).value_or(-1));
    if (name == u"brew")
        return m_brew;
    if (name == u"prices")
        return m_ingredients->priceField();
    return name.startsWith(u"vessel") ? static_cast<QWidget*>(m_vessel) : nullptr;
}

void PotEditor::editName() {
    m_name->setFocus();
    m_name->selectAll();
}

} // namespace ladlework::ui
