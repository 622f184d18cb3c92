#include "ui/families/new_family_panel.h"

#include "ui/paint/theme.h"
#include "ui/shared/section.h"

#include <QComboBox>
#include <QFormLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QVBoxLayout>

namespace ladlework::ui {

namespace {
constexpr int fieldWidth = 44; ///< characters
constexpr int contactLines = 3;
} // namespace

NewFamilyPanel::NewFamilyPanel(const ScreenContext& context, QWidget* parent)
    : QWidget(parent), m_context(context), m_name(new QLineEdit), m_contact(new QPlainTextEdit),
      m_measures(new QComboBox), m_paper(new QComboBox), m_altitude(new AltitudeEdit),
      m_takeOn(new QPushButton(tr("Take on this family"))) {
    build();
    connect(m_name, &QLineEdit::textChanged, this,
            [this](const QString& text) { m_takeOn->setEnabled(!text.trimmed().isEmpty()); });
    connect(m_name, &QLineEdit::returnPressed, m_takeOn, &QPushButton::click);
    connect(m_takeOn, &QPushButton::clicked, this, &NewFamilyPanel::takeOn);
    connect(m_measures, &QComboBox::currentIndexChanged, this, &NewFamilyPanel::followMeasures);
}

void NewFamilyPanel::build() {
    const int gap = ui::step(*this);
    const int width = fontMetrics().averageCharWidth() * fieldWidth;
    m_name->setMaxLength(Name::longest);
    m_name->setPlaceholderText(tr("as you would say it: Hale, or Ana and Tom"));
    m_name->setFixedWidth(width);
    m_contact->setTabChangesFocus(true);
    m_contact->setFixedSize(width, fontMetrics().lineSpacing() * contactLines + 2 * gap);
    m_contact->setPlaceholderText(tr("phone, mail, address"));
    m_measures->addItems({tr("US cups and pounds"), tr("Metric")});
    m_paper->addItems({tr("Letter"), tr("A4")});
    m_takeOn->setProperty("primary", true);
    m_takeOn->setEnabled(false);
    auto* cancel = new QPushButton(tr("Not now"));
    connect(cancel, &QPushButton::clicked, this, &NewFamilyPanel::cancelled);

    auto* section = new Section(tr("Take on a family"));
    auto* form = new QFormLayout;
    form->setSpacing(gap);
    form->setFieldGrowthPolicy(QFormLayout::FieldsStayAtSizeHint);
    form->addRow(tr("&Name of the family"), m_name);
    form->addRow(tr("&Contact"), m_contact);
    form->addRow(tr("&Measures"), m_measures);
    form->addRow(tr("Height above sea level"), m_altitude);
    form->addRow(tr("&Paper of its handouts"), m_paper);
    auto* altitudeWhy = new QLabel(tr("Water boils cooler the higher the kitchen lies."));
    altitudeWhy->setForegroundRole(QPalette::PlaceholderText);
    form->insertRow(4, QString(), altitudeWhy);
    section->body()->addLayout(form);
    auto* row = new QHBoxLayout;
    row->setSpacing(gap);
    row->addWidget(m_takeOn);
    row->addWidget(cancel);
    row->addStretch();
    section->body()->addLayout(row);

    auto* across = new QHBoxLayout(this);
    auto* column = new QVBoxLayout;
    across->addStretch();
    across->addLayout(column);
    across->addStretch();
    column->addStretch(1);
    column->addWidget(section);
    column->addStretch(2);
}

void NewFamilyPanel::startAfresh() {
    const people::Practice practice = m_context.workbook.practice().practice();
    m_name->clear();
    m_contact->clear();
    m_measures->setCurrentIndex(practice.measures == quantity::MeasureSystem::UsCustomary ? 0 : 1);
    m_paper->setCurrentIndex(practice.paper == people::Paper::Letter ? 0 : 1);
    m_altitude->setValue(quantity::Length(), practice.measures);
    m_name->setFocus();
}

quantity::MeasureSystem NewFamilyPanel::measures() const {
    return m_measures->currentIndex() == 0 ? quantity::MeasureSystem::UsCustomary
                                           : quantity::MeasureSystem::Metric;
}

void NewFamilyPanel::followMeasures() {
    m_altitude->setValue(m_altitude->value(), measures());
}

void NewFamilyPanel::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape)
        Q_EMIT cancelled();
    else
        QWidget::keyPressEvent(event);
}

void NewFamilyPanel::takeOn() {
    const people::Practice practice = m_context.workbook.practice().practice();
    people::Family family;
    family.name = m_name->text().trimmed();
    family.contact = m_contact->toPlainText().trimmed();
    family.zone = practice.zone;
    family.since = m_context.clock.today(practice.zone);
    family.measures = measures();
    family.altitude = m_altitude->value();
    family.paper = m_paper->currentIndex() == 0 ? people::Paper::Letter : people::Paper::A4;
    FamilyId made;
    const bool done = m_context.act(
        this, tr("Took on the family %1").arg(family.name), [&](store::Action& action) -> Outcome {
            const Result<FamilyId> id = m_context.workbook.families().addFamily(action, family);
            if (!id)
                return passOn(id);
            made = *id;
            return {};
        });
    if (done)
        Q_EMIT familyMade(made);
}

} // namespace ladlework::ui
