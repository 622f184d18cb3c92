#include "ui/pot/size_panel.h"

#include "ui/paint/theme.h"
#include "ui/shared/action_button.h"
#include "ui/shared/character_width.h"
#include "ui/shared/choices.h"
#include "ui/shared/finding_line.h"
#include "ui/shared/side_by_side.h"

#include <QAction>
#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QSpinBox>
#include <QVBoxLayout>

namespace ladlework::ui {

namespace {

constexpr int mostDays = 60;

/// A button of an action under fewer words than its menu has.
QPushButton* shortButton(QAction* action, const QString& words) {
    QPushButton* button = buttonFor(action);
    button->setText(words);
    button->setAccessibleName(action->text());
    return button;
}

/// A row of small parts that ends where they do.
QHBoxLayout* rowIn(QWidget* part) {
    auto* row = new QHBoxLayout(part);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(step(*part) / 2);
    return row;
}

} // namespace

SizePanel::SizePanel(const SizeActions& actions, QWidget* parent)
    : QWidget(parent), m_days(new QSpinBox(this)), m_cut(new QComboBox(this)),
      m_mass(new MassEdit(this)), m_mark(new FindingMark(Finding::Severity::Caution, this)),
      m_words(new QLabel(this)) {
    setAccessibleName(tr("Size the pot"));
    QPushButton* fit = shortButton(actions.fit, tr("What fits my pot"));
    QPushButton* lowMeat = shortButton(actions.lowMeat, tr("Low-meat, same yield"));
    QPushButton* cover = shortButton(actions.cover, tr("Cover"));
    QPushButton* bones = shortButton(actions.bones, tr("Use all of it"));
    auto* first = new SideBySide(this);
    first->add(fit, 0);
    first->add(lowMeat, 0);
    first->add(makeCover(cover), 1);
    first->setSpacing(step(*this) / 2);
    m_words->setWordWrap(true);
    m_words->setTextInteractionFlags(Qt::TextSelectableByMouse);
    auto* answer = new QHBoxLayout;
    answer->setSpacing(step(*this) / 2);
    answer->addWidget(m_mark, 0, Qt::AlignTop);
    answer->addWidget(m_words, 1);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(step(*this) / 2);
    layout->addWidget(first);
    layout->addWidget(makeBones(bones));
    layout->addLayout(answer);
    say({});
    const std::initializer_list<QWidget*> stops{fit, lowMeat, m_days, cover, m_cut, m_mass, bones};
    for (auto stop = std::next(stops.begin()); stop != stops.end(); ++stop)
        setTabOrder(*std::prev(stop), *stop);
}

QWidget* SizePanel::makeCover(QPushButton* cover) {
    auto* part = new QWidget(this);
    m_days->setRange(1, mostDays);
    m_days->setAccessibleName(tr("Days to cover"));
    auto* words = new QLabel(tr("days"), part);
    QHBoxLayout* row = rowIn(part);
    row->addWidget(m_days);
    row->addWidget(words);
    row->addWidget(cover);
    row->addStretch();
    return part;
}

QWidget* SizePanel::makeBones(QPushButton* bones) {
    auto* part = new QWidget(this);
    m_cut->setAccessibleName(tr("Bones at hand"));
    m_cut->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    constexpr int cutWidth = 10;
    constexpr int massWidth = 11;
    m_cut->setMinimumContentsLength(cutWidth);
    m_mass->setAccessibleName(tr("Mass at hand"));
    CharacterWidth::hold(*m_mass, massWidth);
    QHBoxLayout* row = rowIn(part);
    row->addWidget(m_cut, 1);
    row->addWidget(m_mass);
    row->addWidget(bones);
    connect(m_cut, &QComboBox::activated, this, &SizePanel::suitCut);
    connect(m_mass, &QLineEdit::returnPressed, bones, &QPushButton::click);
    return part;
}

void SizePanel::show(const kitchen::Pot& pot, const kitchen::Catalogue& catalogue,
                     quantity::MeasureSystem measures, int keepingDays) {
    m_measures = measures;
    if (pot.id != m_pot) {
        say({});
        m_days->setValue(keepingDays);
    }
    const bool samePot = pot.id == m_pot;
    if (samePot && pot.cuts == m_cuts)
        return;
    m_pot = pot.id;
    if (!samePot)
        m_cut->clear(); // the first cut of another pot is offered
    fillCuts(pot, catalogue);
    suitCut();
}

void SizePanel::fillCuts(const kitchen::Pot& pot, const kitchen::Catalogue& catalogue) {
    m_cuts = pot.cuts;
    QList<Choice> choices;
    QStringList seen;
    for (const kitchen::CutInPot& cut : pot.cuts) {
        if (seen.contains(cut.cut))
            continue;
        seen.append(cut.cut);
        choices.append({catalogue.nameOf(cut.cut), cut.cut});
    }
    setChoices(*m_cut, choices, cut());
}

void SizePanel::suitCut() {
    quantity::Mass mass;
    for (const kitchen::CutInPot& cut : m_cuts)
        if (cut.cut == this->cut())
            mass += cut.mass;
    m_mass->setValue(mass, m_measures);
}

int SizePanel::days() const {
    return m_days->value();
}

QString SizePanel::cut() const {
    return m_cut->currentData().toString();
}

quantity::Mass SizePanel::bones() const {
    return m_mass->value();
}

void SizePanel::say(const QString& sentence) {
    m_mark->hide();
    m_words->setForegroundRole(QPalette::PlaceholderText);
    m_words->setText(sentence);
    m_words->setVisible(!sentence.isEmpty());
}

void SizePanel::refuse(const QString& sentence, const QString& field) {
    say(sentence);
    m_mark->show();
    m_words->setForegroundRole(QPalette::WindowText);
    if (field == u"days")
        m_days->setFocus();
}

} // namespace ladlework::ui
