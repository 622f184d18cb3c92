#include "ui/handout/handout_screen.h"

#include "ui/handout/given_panel.h"
#include "ui/handout/handout_files.h"
#include "ui/handout/handout_options_panel.h"
#include "ui/handout/handout_parts_panel.h"
#include "ui/handout/handout_side.h"
#include "ui/handout/kept_choice.h"
#include "ui/handout/labels_panel.h"
#include "ui/handout/pages_preview.h"
#include "ui/paint/theme.h"
#include "ui/print/label_layout.h"
#include "ui/print/pdf_writer.h"
#include "ui/shared/action_button.h"
#include "ui/shared/week_stepper.h"
#include "week/week_plan.h"

#include <QAction>
#include <QBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <algorithm>

namespace ladlework::ui {

HandoutScreen::HandoutScreen(const ScreenContext& context, QWidget* parent)
    : FamilyScreen(context, parent), m_side(new HandoutSide), m_preview(new PagesPreview),
      m_where(new QLabel), m_givenBar(new QWidget), m_givenWords(new QLabel),
      m_kept(context, this) {
    makeActions();
    const int gap = step(*this);
    auto* whole = new QWidget;
    auto* row = new QHBoxLayout(whole);
    row->setContentsMargins(gap, gap, gap, gap);
    row->setSpacing(gap);
    m_side->setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Preferred);
    row->addWidget(m_side);
    row->addWidget(makePages(), 1);
    // With very large type the screen is wider than its window: it scrolls, nothing is cut.
    auto* scroll = new QScrollArea;
    scroll->setWidget(whole);
    scroll->setWidgetResizable(true);
    scroll->setFocusPolicy(Qt::NoFocus);
    auto* outer = new QVBoxLayout(this);
    outer->setContentsMargins(0, 0, 0, 0);
    outer->addWidget(scroll);
    connect(m_side->options(), &HandoutOptionsPanel::optionsChanged, this,
            &HandoutScreen::takeOptions);
    connect(m_side->parts(), &HandoutPartsPanel::sectionsChanged, this, &HandoutScreen::takeParts);
    connect(m_side->given(), &GivenPanel::openWanted, this, &HandoutScreen::openGiven);
    connect(m_side->given(), &GivenPanel::saveWanted, this, &HandoutScreen::saveGiven);
    connect(m_side->given(), &GivenPanel::removeWanted, this, &HandoutScreen::removeGiven);
    connect(m_side, &HandoutSide::leafChanged, this, [this] {
        m_shown.reset();
        showPages(false);
    });
    connect(m_preview, &PagesPreview::currentPageChanged, this, [this](qsizetype page) {
        m_where->setText(tr("Page %1 of %2").arg(page + 1).arg(m_preview->pages().pages.size()));
    });
    connectTemplates();
    connectLabels();
}

void HandoutScreen::makeActions() {
    const auto add = [this](const QString& text, const QString& tip, const QKeySequence& keys,
                            void (HandoutScreen::*work)()) {
        QAction* action = addScreenAction(text, tip, keys);
        connect(action, &QAction::triggered, this, work);
        return action;
    };
    m_save = add(tr("Save PDF..."), tr("Saves these pages as a PDF"),
                 QKeySequence(QKeySequence::Save), &HandoutScreen::savePdf);
    m_print = add(tr("&Print..."), tr("Prints these pages"), QKeySequence(QKeySequence::Print),
                  &HandoutScreen::print);
    m_give = add(tr("Give it..."), tr("Saves the PDF and keeps these pages as given"),
                 QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_G), &HandoutScreen::give);
    m_record =
        add(tr("Rec&ord as given"), tr("Keeps these pages as given, when they are printed already"),
            QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_R), &HandoutScreen::recordAsGiven);
    m_pictures =
        add(tr("Save pict&ures..."), tr("Saves each of these pages as a picture, to be sent"),
            QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_P), &HandoutScreen::savePictures);
    for (QAction* action : m_side->options()->stepper()->steps() + m_side->parts()->steps() +
                               m_side->templates()->entries() + m_side->labels()->kept()->entries())
        addAction(action);
}

QWidget* HandoutScreen::makePages() {
    const int gap = step(*this);
    auto* right = new QWidget;
    auto* column = new QVBoxLayout(right);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(gap);
    auto* bar = new QHBoxLayout;
    bar->setSpacing(gap);
    bar->addWidget(buttonFor(m_give, true));
    for (QAction* action : {m_save, m_print, m_record, m_pictures})
        bar->addWidget(buttonFor(action));
    bar->addStretch();
    m_where->setForegroundRole(QPalette::PlaceholderText);
    m_where->setFont(figuresFont(font()));
    bar->addWidget(m_where);
    column->addLayout(bar);

    auto* given = new QHBoxLayout(m_givenBar);
    given->setContentsMargins(0, 0, 0, 0);
    given->setSpacing(gap);
    auto* back = new QPushButton(tr("&Back to this week's pages"));
    connect(back, &QPushButton::clicked, this, &HandoutScreen::backToThisWeek);
    m_givenWords->setFont(sectionFont(font()));
    m_givenWords->setWordWrap(true);
    given->addWidget(m_givenWords, 1);
    given->addWidget(back);
    m_givenBar->hide();
    column->addWidget(m_givenBar);
    column->addWidget(m_preview, 1);
    return right;
}

QWidget* HandoutScreen::firstField() {
    return m_preview;
}

void HandoutScreen::refresh(bool sameFamily) {
    const casebook::FamilyRecords& records = book().records();
    m_side->options()->setToday(book().today());
    if (!sameFamily) {
        m_shown.reset();
        m_now = m_chosen.value(records.family.id, firstChoice());
    }
    if (m_now.from.isStored() && keptTemplate() == nullptr)
        m_now.from = {}; // removed or undone: its parts stay as they are
    m_side->given()->setHandouts(records.handouts, records.family.zone);
    if (m_shown && std::none_of(records.handouts.cbegin(), records.handouts.cend(),
                                [this](const auto& record) { return record.id == *m_shown; }))
        m_shown.reset();
    showChoices();
    showPages(sameFamily);
    followShown();
}

HandoutScreen::Chosen HandoutScreen::firstChoice() const {
    // The week that is planned next is the one to hand out; without any, this week.
    Chosen first;
    first.options.week = week::weekStart(book().today());
    QDate planned;
    for (const week::WeekPlan& plan : book().records().weeks)
        if (!plan.placements.isEmpty() && plan.start >= first.options.week &&
            (!planned.isValid() || plan.start < planned))
            planned = plan.start;
    if (planned.isValid())
        first.options.week = planned;
    return first;
}

bool HandoutScreen::labelsInHand() const {
    return m_side->leaf() == HandoutSide::Leaf::Labels;
}

handout::Document HandoutScreen::documentNow() const {
    if (!labelsInHand())
        return handout::familyHandout(book(), m_now.options);
    handout::HandoutOptions labels = m_now.options;
    labels.sections = {{casebook::HandoutPart::JarLabels, true, {}, {}}};
    handout::Document document = handout::familyHandout(book(), labels);
    document.title = tr("%1 - jar labels").arg(document.title);
    return document;
}

void HandoutScreen::showPages(bool keepPlace) {
    if (m_shown)
        return;
    m_document = documentNow();
    PageLayout layout = layOut(m_document);
    if (labelsInHand() && m_document.cards.isEmpty())
        layout.pages = {emptyLabelSheet(
            m_now.options.labels.stock.value_or(handout::labelStockFor(book().records())))};
    m_preview->setPages(layout, keepPlace);
    showRemarks();
    followShown();
}

void HandoutScreen::showRemarks() {
    QStringList remarks;
    if (book().plan(m_now.options.week).placements.isEmpty())
        remarks << tr("No pots are planned in this week: the pages give amounts, keeping and "
                      "whom to call. Put pots on it in Week.");
    const QString shapeless = lettersWithoutShape(m_preview->pages());
    if (!shapeless.isEmpty())
        remarks << tr("No font on this computer has these letters, so they would print as empty "
                      "boxes: %1")
                       .arg(shapeless);
    m_side->remark(remarks.join(QStringLiteral("\n\n")));
    m_side->labels()->remark(labelsRemark());
}

QString HandoutScreen::labelsRemark() const {
    if (!labelsInHand())
        return {};
    if (m_document.cards.isEmpty())
        return tr("There is nothing to label: no pot is planned in this week, or no stock is kept. "
                  "The sheet is shown as it is measured.");
    const handout::LabelSheet* sheet = labelSheetIn(m_document.cards.first());
    if (sheet == nullptr)
        return {};
    const qsizetype count = sheet->labels.size();
    const qsizetype sheets = m_preview->pages().pages.size();
    QStringList remarks{tr("%1 on %2.")
                            .arg(count == 1 ? tr("1 label") : tr("%1 labels").arg(count),
                                 sheets == 1 ? tr("1 sheet") : tr("%1 sheets").arg(sheets))};
    const int cut = labelsCutShort(*sheet);
    if (cut > 0)
        remarks
            << (cut == 1
                    ? tr("1 label is too small for all lines: the last are left out.")
                    : tr("%1 labels are too small for all lines: the last are left out.").arg(cut));
    if (reachesIntoMargin(sheet->stock))
        remarks << tr("Some labels lie partly where printers do not reach: their text keeps %1 mm "
                      "away from the edge of the sheet.")
                       .arg(printerMarginMm);
    return remarks.join(QLatin1Char('\n'));
}

void HandoutScreen::followShown() {
    // What was given cannot be given once more: it is in the record already. Labels alone are no
    // handout.
    const bool mayRecord =
        !m_shown && !labelsInHand() && context().workbook.readOnlyReason().isEmpty();
    m_give->setEnabled(mayRecord);
    m_record->setEnabled(mayRecord);
    const bool any = !labelsInHand() || !m_document.cards.isEmpty();
    for (QAction* action : {m_save, m_print, m_pictures})
        action->setEnabled(any);
    m_givenBar->setVisible(m_shown.has_value());
}

void HandoutScreen::savePdf() {
    if (m_shown) {
        savePdfFile(context(), this, context().workbook.handouts().pdf(*m_shown), m_document.title);
        return;
    }
    const Result<QByteArray> pdf = pdfOf(m_document);
    if (pdf)
        savePdfFile(context(), this, *pdf, m_document.title);
    else
        context().desk.tell(this, pdf.error().sentence);
}

void HandoutScreen::savePictures() {
    savePictureFiles(context(), this, m_document);
}

void HandoutScreen::print() {
    const PageLayout all = layOut(m_document);
    const PageLayout pages = withoutLabelSheets(all);
    const bool both = !pages.pages.isEmpty() && pages.pages.size() < all.pages.size();
    const Result<Printed> printed = m_printing(this, both ? pages : all, m_document.title);
    if (!printed) {
        context().desk.tell(this, printed.error().sentence);
        return;
    }
    if (!printed->sent)
        return;
    if (!printed->remark.isEmpty())
        context().desk.tell(this, printed->remark);
    QStringList remarks;
    if (!m_shown && !labelsInHand())
        remarks << tr("Sent to the printer. When the family takes the pages along, record them as "
                      "given.");
    if (both)
        remarks << tr("The jar labels were left out: put label sheets into the printer and print "
                      "them from the leaf Jar labels.");
    m_side->remark(remarks.join(QStringLiteral("\n\n")));
}

} // namespace ladlework::ui
