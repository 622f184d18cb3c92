#include "ui/handout/handout_options_panel.h"

#include "handout/page_language.h"
#include "ui/paint/theme.h"
#include "ui/shared/week_stepper.h"

#include <QCheckBox>
#include <QComboBox>
#include <QFormLayout>
#include <QLabel>
#include <QSignalBlocker>

namespace ladlework::ui {

HandoutOptionsPanel::HandoutOptionsPanel(QWidget* parent)
    : QWidget(parent), m_stepper(new WeekStepper), m_names(new QComboBox),
      m_language(new QComboBox), m_paper(new QComboBox),
      m_largePrint(new QCheckBox(tr("&Large print (16 point)"))) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(step(*this));
    column->addWidget(m_stepper);
    column->addWidget(makeForm());
    connect(m_stepper, &WeekStepper::weekChanged, this, &HandoutOptionsPanel::optionsChanged);
    connect(m_names, &QComboBox::currentIndexChanged, this, &HandoutOptionsPanel::optionsChanged);
    connect(m_language, &QComboBox::currentIndexChanged, this,
            &HandoutOptionsPanel::optionsChanged);
    connect(m_paper, &QComboBox::currentIndexChanged, this, &HandoutOptionsPanel::optionsChanged);
    connect(m_largePrint, &QCheckBox::toggled, this, &HandoutOptionsPanel::optionsChanged);
}

QWidget* HandoutOptionsPanel::makeForm() {
    m_names->addItem(tr("First names"), static_cast<int>(handout::Names::First));
    m_names->addItem(tr("Full names"), static_cast<int>(handout::Names::Full));
    m_names->addItem(tr("No names"), static_cast<int>(handout::Names::None));
    for (const Language& language : shippedLanguages())
        m_language->addItem(language.name, language.id);
    m_paper->addItem(tr("Letter"), static_cast<int>(people::Paper::Letter));
    m_paper->addItem(tr("A4"), static_cast<int>(people::Paper::A4));

    auto* box = new QWidget;
    auto* form = new QFormLayout(box);
    form->setContentsMargins(0, 0, 0, 0);
    form->setSpacing(step(*this));
    form->setFieldGrowthPolicy(QFormLayout::AllNonFixedFieldsGrow);
    const auto addRow = [&](const QString& text, QWidget* field) {
        auto* label = new QLabel(text);
        label->setBuddy(field);
        field->setAccessibleName(QString(text).remove(QLatin1Char('&')));
        form->addRow(label, field);
    };
    addRow(tr("&Names"), m_names);
    addRow(tr("Lang&uage"), m_language);
    addRow(tr("Pape&r"), m_paper);
    form->addRow(m_largePrint);
    return box;
}

void HandoutOptionsPanel::setOptions(const handout::HandoutOptions& options, people::Paper paper,
                                     const QString& language) {
    const QSignalBlocker quiet(this);
    m_stepper->setWeek(options.week);
    m_names->setCurrentIndex(m_names->findData(static_cast<int>(options.names)));
    m_language->setCurrentIndex(
        m_language->findData(handout::pageLanguage(options.language, language)));
    m_paper->setCurrentIndex(m_paper->findData(static_cast<int>(options.paper.value_or(paper))));
    m_largePrint->setChecked(options.largePrint);
}

void HandoutOptionsPanel::takeInto(handout::HandoutOptions& options) const {
    options.week = m_stepper->week();
    options.names = static_cast<handout::Names>(m_names->currentData().toInt());
    options.language = m_language->currentData().toString();
    options.paper = static_cast<people::Paper>(m_paper->currentData().toInt());
    options.largePrint = m_largePrint->isChecked();
}

void HandoutOptionsPanel::setToday(QDate today) {
    m_stepper->setToday(today);
}

} // namespace ladlework::ui
