#include "ui/handout/handout_screen.h"

#include "foundation/json_reader.h"
#include "handout/document_json.h"
#include "ui/handout/given_handouts_model.h"
#include "ui/handout/given_panel.h"
#include "ui/handout/handout_options_panel.h"
#include "ui/handout/pages_preview.h"
#include "ui/paint/theme.h"
#include "ui/print/pdf_writer.h"
#include "ui/shared/action_button.h"
#include "ui/shared/week_stepper.h"
#include "week/week_plan.h"

#include <QAction>
#include <QBoxLayout>
#include <QJsonDocument>
#include <QLabel>
#include <QPushButton>
#include <QRegularExpression>
#include <QScrollArea>
#include <algorithm>

namespace ladlework::ui {

HandoutScreen::HandoutScreen(const ScreenContext& context, QWidget* parent)
    : FamilyScreen(context, parent), m_options(new HandoutOptionsPanel), m_given(new GivenPanel),
      m_preview(new PagesPreview), m_where(new QLabel), m_remark(new QLabel),
      m_givenBar(new QWidget), m_givenWords(new QLabel) {
    makeActions();
    const int gap = step(*this);
    auto* whole = new QWidget;
    auto* row = new QHBoxLayout(whole);
    row->setContentsMargins(gap, gap, gap, gap);
    row->setSpacing(gap);
    row->addWidget(makeSide());
    row->addWidget(makePages(), 1);
    // With very large type the screen is wider than its window: it scrolls, nothing is cut.
    auto* scroll = new QScrollArea;
    scroll->setWidget(whole);
    scroll->setWidgetResizable(true);
    scroll->setFocusPolicy(Qt::NoFocus);
    auto* outer = new QVBoxLayout(this);
    outer->setContentsMargins(0, 0, 0, 0);
    outer->addWidget(scroll);
    connect(m_options, &HandoutOptionsPanel::optionsChanged, this, &HandoutScreen::optionsChanged);
    connect(m_given, &GivenPanel::openWanted, this, &HandoutScreen::openGiven);
    connect(m_given, &GivenPanel::saveWanted, this, &HandoutScreen::saveGiven);
    connect(m_given, &GivenPanel::removeWanted, this, &HandoutScreen::removeGiven);
    connect(m_preview, &PagesPreview::currentPageChanged, this, [this](qsizetype page) {
        m_where->setText(tr("Page %1 of %2").arg(page + 1).arg(m_preview->pages().pages.size()));
    });
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
    for (QAction* stepAction : m_options->stepper()->steps())
        addAction(stepAction);
}

QWidget* HandoutScreen::makeSide() {
    auto* pages = new Section(tr("The pages"));
    pages->body()->addWidget(m_options);
    m_remark->setWordWrap(true);
    m_remark->setForegroundRole(QPalette::PlaceholderText);
    pages->body()->addWidget(m_remark);

    auto* side = new QWidget;
    auto* column = new QVBoxLayout(side);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(step(*this));
    column->addWidget(pages);
    column->addWidget(m_given, 1);
    auto* scroll = new QScrollArea;
    scroll->setWidget(side);
    scroll->setWidgetResizable(true);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll->setFocusPolicy(Qt::NoFocus);
    scroll->setFixedWidth(side->sizeHint().width() + 2 * step(*this));
    return scroll;
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
    bar->addWidget(buttonFor(m_save));
    bar->addWidget(buttonFor(m_print));
    bar->addWidget(buttonFor(m_record));
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
    const people::Family& family = book().records().family;
    m_options->setToday(book().today());
    if (!sameFamily) {
        m_shown.reset();
        m_options->setOptions(m_chosen.value(family.id, firstOptions()), family.paper,
                              family.handoutLanguage);
    }
    m_given->setHandouts(book().records().handouts, family.zone);
    const auto& given = book().records().handouts;
    if (m_shown && std::none_of(given.cbegin(), given.cend(),
                                [this](const auto& record) { return record.id == *m_shown; }))
        m_shown.reset();
    showPages(sameFamily);
    followShown();
}

handout::HandoutOptions HandoutScreen::firstOptions() const {
    // The week that is planned next is the one to hand out; without any, this week.
    handout::HandoutOptions options;
    options.week = week::weekStart(book().today());
    QDate planned;
    for (const week::WeekPlan& plan : book().records().weeks)
        if (!plan.placements.isEmpty() && plan.start >= options.week &&
            (!planned.isValid() || plan.start < planned))
            planned = plan.start;
    if (planned.isValid())
        options.week = planned;
    return options;
}

void HandoutScreen::optionsChanged() {
    m_chosen.insert(book().records().family.id, m_options->options());
    m_shown.reset();
    showPages(true);
}

void HandoutScreen::showPages(bool keepPlace) {
    if (m_shown)
        return;
    const handout::HandoutOptions options = m_options->options();
    m_document = handout::familyHandout(book(), options);
    const bool bare = book().plan(options.week).placements.isEmpty();
    m_remark->setText(tr("No pots are planned in this week: the pages give amounts, keeping and "
                         "whom to call. Put pots on it in Week."));
    m_remark->setVisible(bare);
    m_preview->setPages(layOut(m_document), keepPlace);
    followShown();
}

void HandoutScreen::followShown() {
    // What was given cannot be given once more: it is in the record already.
    const bool mayRecord = !m_shown && context().workbook.readOnlyReason().isEmpty();
    m_give->setEnabled(mayRecord);
    m_record->setEnabled(mayRecord);
    m_givenBar->setVisible(m_shown.has_value());
}

QString HandoutScreen::suggestedFile(const QString& title) const {
    static const QRegularExpression unfit(QStringLiteral("[\\\\/:*?\"<>|\\x00-\\x1f]+"));
    const QString name = QString(title).replace(unfit, QStringLiteral("-")).trimmed().left(120);
    return (name.isEmpty() ? tr("handout") : name) + QStringLiteral(".pdf");
}

bool HandoutScreen::saveTo(const QByteArray& pdf, const QString& title) {
    const std::optional<QString> path = context().desk.fileToSave(
        this, tr("Save the handout"), suggestedFile(title), tr("PDF (*.pdf)"));
    if (!path)
        return false;
    const Outcome saved = saveWhole(pdf, *path);
    if (!saved)
        context().desk.tell(this, saved.error().sentence);
    return saved.has_value();
}

void HandoutScreen::savePdf() {
    if (m_shown) {
        saveTo(context().workbook.handouts().pdf(*m_shown), m_document.title);
        return;
    }
    const Result<QByteArray> pdf = pdfOf(m_document);
    if (pdf)
        saveTo(*pdf, m_document.title);
    else
        context().desk.tell(this, pdf.error().sentence);
}

void HandoutScreen::print() {
    const Result<bool> printed = m_printing(this, layOut(m_document), m_document.title);
    if (!printed)
        context().desk.tell(this, printed.error().sentence);
    if (!printed.value_or(false) || m_shown)
        return;
    m_remark->setText(tr("Sent to the printer. When the family takes the pages along, record them "
                         "as given."));
    m_remark->show();
}

void HandoutScreen::give() {
    const Result<QByteArray> pdf = pdfOf(m_document);
    if (!pdf)
        context().desk.tell(this, pdf.error().sentence);
    else if (saveTo(*pdf, m_document.title))
        record(*pdf);
}

void HandoutScreen::recordAsGiven() {
    const Result<QByteArray> pdf = pdfOf(m_document);
    if (!pdf)
        context().desk.tell(this, pdf.error().sentence);
    else
        record(*pdf);
}

bool HandoutScreen::record(const QByteArray& pdf) {
    casebook::HandoutRecord handout;
    handout.family = book().records().family.id;
    handout.week = m_options->options().week;
    handout.madeUtc = context().clock.nowUtc();
    handout.title = m_document.title;
    const QByteArray json =
        QJsonDocument(handout::toJson(m_document)).toJson(QJsonDocument::Compact);
    const QString sentence = tr("Gave %1 the handout of the %2")
                                 .arg(book().records().family.name,
                                      weekInWords(handout.week).replace(0, 1, QLatin1Char('w')));
    return context().act(this, sentence, [&](store::Action& action) -> Outcome {
        const Result<HandoutId> added =
            context().workbook.handouts().addHandout(action, handout, pdf, json);
        if (!added)
            return passOn(added);
        return {};
    });
}

void HandoutScreen::openGiven() {
    const casebook::HandoutRecord* record = m_given->chosen();
    if (record == nullptr)
        return;
    const Result<QJsonObject> json =
        parseJsonObject(context().workbook.handouts().documentJson(record->id));
    const Result<handout::Document> document =
        json ? handout::fromJson(*json) : Result<handout::Document>(passOn(json));
    if (!document) {
        context().desk.tell(this, tr("The pages of this handout cannot be shown, but its PDF is "
                                     "kept: use Save again."));
        return;
    }
    m_shown = record->id;
    m_document = *document;
    m_givenWords->setText(tr("As given %1").arg(givenAt(*record, book().records().family.zone)));
    m_remark->hide();
    m_preview->setPages(layOut(m_document), false);
    followShown();
    m_preview->setFocus();
}

void HandoutScreen::saveGiven() {
    const casebook::HandoutRecord* record = m_given->chosen();
    if (record != nullptr)
        saveTo(context().workbook.handouts().pdf(record->id), record->title);
}

void HandoutScreen::removeGiven() {
    const casebook::HandoutRecord* chosen = m_given->chosen();
    if (chosen == nullptr)
        return;
    const HandoutId handout = chosen->id;
    const QString sentence =
        tr("Removed the handout given %1").arg(givenAt(*chosen, book().records().family.zone));
    if (m_shown == handout)
        m_shown.reset();
    context().act(this, sentence, [&](store::Action& action) {
        return context().workbook.handouts().removeHandout(action, handout);
    });
}

void HandoutScreen::backToThisWeek() {
    m_shown.reset();
    showPages(false);
    m_preview->setFocus();
}

} // namespace ladlework::ui
