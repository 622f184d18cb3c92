#include "ui/handout/labels_panel.h"

#include "ui/handout/millimetre_edit.h"
#include "ui/paint/theme.h"
#include "ui/shared/problem_line.h"

#include <QCheckBox>
#include <QFormLayout>
#include <QGridLayout>
#include <QLabel>
#include <QSignalBlocker>
#include <QSpinBox>
#include <QVBoxLayout>
#include <algorithm>

namespace ladlework::ui {

namespace {

using casebook::LabelStock;

constexpr double largestSheetMm = 500;
constexpr int mostInALine = 20;

QSpinBox* counted(const QString& name, int least, int most) {
    auto* box = new QSpinBox;
    box->setRange(least, most);
    box->setAccessibleName(name);
    box->setKeyboardTracking(false);
    return box;
}

} // namespace

LabelsPanel::LabelsPanel(QWidget* parent)
    : QWidget(parent), m_kept(new KeptChoice({tr("Sheets"),
                                              {},
                                              tr("New sheet from this one..."),
                                              tr("Rename these sheets..."),
                                              tr("Remove these sheets"),
                                              tr("Na&me")})),
      m_planned(new QCheckBox(tr("For the jars of this &week's pots"))),
      m_onHand(new QCheckBox(tr("For stoc&k that is kept now"))), m_jar(new VolumeEdit),
      m_used(counted(tr("Labels gone from the first sheet"), 0, 0)),
      m_columns(counted(tr("Labels across"), 1, mostInALine)),
      m_rows(counted(tr("Labels down"), 1, mostInALine)), m_remark(new QLabel),
      m_usual(new QLabel(tr("These are usual measures. To change them, keep them as a new sheet "
                            "first."))),
      m_problem(new ProblemLine(this)) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(step(*this));
    column->addWidget(makeWhat());
    column->addWidget(m_kept);
    column->addWidget(makeMeasures());
    for (QLabel* label : {m_usual, m_remark}) {
        label->setWordWrap(true);
        label->setForegroundRole(QPalette::PlaceholderText);
    }
    column->addWidget(m_problem);
    column->addWidget(m_usual);
    column->addWidget(m_remark);
    column->addStretch();
    connect(m_planned, &QCheckBox::toggled, this, &LabelsPanel::choiceChanged);
    connect(m_onHand, &QCheckBox::toggled, this, &LabelsPanel::choiceChanged);
    connect(m_jar, &QuantityEdit::valueCommitted, this, &LabelsPanel::choiceChanged);
    connect(m_used, &QSpinBox::valueChanged, this, &LabelsPanel::choiceChanged);
    connect(m_columns, &QSpinBox::valueChanged, this, &LabelsPanel::takeStock);
    connect(m_rows, &QSpinBox::valueChanged, this, &LabelsPanel::takeStock);
    connect(m_kept, &KeptChoice::chosen, this, &LabelsPanel::choiceChanged);
}

QWidget* LabelsPanel::makeWhat() {
    auto* box = new QWidget;
    auto* form = new QFormLayout(box);
    form->setContentsMargins(0, 0, 0, 0);
    form->setSpacing(step(*this));
    form->addRow(m_planned);
    form->addRow(m_onHand);
    const auto addRow = [&](const QString& text, QWidget* field) {
        auto* label = new QLabel(text);
        label->setBuddy(field);
        field->setAccessibleName(QString(text).remove(QLatin1Char('&')));
        form->addRow(label, field);
    };
    addRow(tr("A &jar holds"), m_jar);
    addRow(tr("Labels gone fro&m the first sheet"), m_used);
    return box;
}

MillimetreEdit* LabelsPanel::makeMeasure(const QString& name, double LabelStock::*field) {
    auto* edit = new MillimetreEdit(largestSheetMm);
    edit->setAccessibleName(name);
    m_measures << Measure{edit, field};
    connect(edit, &QDoubleSpinBox::valueChanged, this, &LabelsPanel::takeStock);
    return edit;
}

QWidget* LabelsPanel::makeMeasures() {
    auto* box = new QWidget;
    auto* grid = new QGridLayout(box);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setSpacing(step(*this));
    grid->addWidget(new QLabel(tr("Across")), 0, 1);
    grid->addWidget(new QLabel(tr("Down")), 0, 2);
    const auto addRow = [grid](const QString& text, QWidget* across, QWidget* down) {
        const int row = grid->rowCount();
        auto* label = new QLabel(text);
        label->setBuddy(across);
        grid->addWidget(label, row, 0);
        grid->addWidget(across, row, 1);
        grid->addWidget(down, row, 2);
    };
    addRow(tr("&Labels"), m_columns, m_rows);
    addRow(tr("Sheet"), makeMeasure(tr("Width of the sheet"), &LabelStock::pageWidthMm),
           makeMeasure(tr("Height of the sheet"), &LabelStock::pageHeightMm));
    addRow(tr("One la&bel"), makeMeasure(tr("Width of a label"), &LabelStock::labelWidthMm),
           makeMeasure(tr("Height of a label"), &LabelStock::labelHeightMm));
    addRow(tr("First label from the edge"),
           makeMeasure(tr("From the left edge to the first label"), &LabelStock::leftMm),
           makeMeasure(tr("From the top edge to the first label"), &LabelStock::topMm));
    addRow(tr("Gap bet&ween labels"),
           makeMeasure(tr("Gap between labels across"), &LabelStock::gapAcrossMm),
           makeMeasure(tr("Gap between labels down"), &LabelStock::gapDownMm));
    grid->setColumnStretch(1, 1);
    grid->setColumnStretch(2, 1);
    return box;
}

void LabelsPanel::show(const handout::JarLabelChoice& choice,
                       const casebook::FamilyRecords& records, bool mayChange) {
    const QSignalBlocker quiet(this);
    m_mayChange = mayChange;
    m_stocks = records.labelStocks;
    const LabelStock shown = choice.stock.value_or(handout::labelStockFor(records));
    QList<KeptChoice::Item> items;
    for (const people::Paper paper : {people::Paper::Letter, people::Paper::A4}) {
        LabelStock usual = handout::usualLabelStock(paper);
        usual.id = LabelStockId{paper == people::Paper::Letter ? 0 : -1};
        m_stocks.append(usual);
    }
    for (const LabelStock& stock : m_stocks)
        items << KeptChoice::Item{stock.id.value, stock.name};
    const auto same = std::find_if(m_stocks.cbegin(), m_stocks.cend(), [&](const LabelStock& one) {
        return shown.id.value > 0 ? one.id == shown.id : one.name == shown.name;
    });
    m_kept->setMayChange(mayChange);
    m_kept->setItems(items, same == m_stocks.cend() ? 0 : same->id.value);
    showStock(same == m_stocks.cend() ? shown : *same);
    m_planned->setChecked(choice.planned);
    m_onHand->setChecked(choice.onHand);
    const quantity::MeasureSystem measures = records.family.measures;
    m_jar->setValue(choice.jar > quantity::Volume() ? choice.jar : handout::usualJar(measures),
                    measures);
    m_used->setMaximum(std::max(0, m_stock.columns * m_stock.rows - 1));
    m_used->setValue(choice.placesUsed);
}

void LabelsPanel::showStock(const LabelStock& stock) {
    m_stock = stock;
    const bool kept = stock.id.value > 0;
    const auto set = [&](auto* box, auto value) {
        const QSignalBlocker quiet(box);
        box->setValue(value);
        box->setEnabled(kept && m_mayChange);
    };
    set(m_columns, stock.columns);
    set(m_rows, stock.rows);
    for (const Measure& measure : std::as_const(m_measures))
        set(measure.edit, stock.*measure.field);
    m_usual->setVisible(!kept);
}

handout::JarLabelChoice LabelsPanel::choice() const {
    handout::JarLabelChoice choice;
    const auto found =
        std::find_if(m_stocks.cbegin(), m_stocks.cend(), [this](const LabelStock& stock) {
            return stock.id.value == m_kept->current();
        });
    if (found != m_stocks.cend())
        choice.stock = *found;
    choice.jar = m_jar->value();
    choice.planned = m_planned->isChecked();
    choice.onHand = m_onHand->isChecked();
    choice.placesUsed = m_used->value();
    return choice;
}

void LabelsPanel::takeStock() {
    LabelStock edited = m_stock;
    edited.columns = m_columns->value();
    edited.rows = m_rows->value();
    for (const Measure& measure : std::as_const(m_measures))
        edited.*measure.field = measure.edit->value();
    if (edited == m_stock)
        return;
    const Outcome good = casebook::check(edited);
    m_problem->take(good);
    if (!good)
        return;
    m_stock = edited;
    Q_EMIT stockEdited(edited);
}

void LabelsPanel::remark(const QString& words) {
    m_remark->setText(words);
    m_remark->setVisible(!words.isEmpty());
}

void LabelsPanel::sayProblem(const QString& sentence) {
    m_problem->say(sentence);
}

} // namespace ladlework::ui
