#include "ui/log/import_panel.h"

#include "ui/log/import_model.h"
#include "ui/paint/theme.h"
#include "ui/shared/problem_line.h"
#include "ui/shared/section.h"
#include "ui/shared/table_look.h"

#include <QClipboard>
#include <QFile>
#include <QGuiApplication>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QTableView>
#include <QVBoxLayout>

namespace ladlework::ui {

namespace {
constexpr int pauseMs = 150;
constexpr int sheetLines = 7;
constexpr int tabWidth = 18; ///< characters
constexpr qint64 mostBytes = 4 * 1024 * 1024;
} // namespace

ImportPanel::ImportPanel(const ScreenContext& context, QWidget* parent)
    : QWidget(parent), m_context(context), m_sheet(new QPlainTextEdit(this)),
      m_problem(new ProblemLine(this)), m_summary(new QLabel(this)), m_model(new ImportModel(this)),
      m_table(makeTable(m_model, tr("What becomes of each line"), ImportModel::WordsColumn, this)),
      m_add(new QPushButton(this)) {
    m_sheet->setAccessibleName(tr("Lines of the sheet"));
    m_sheet->setPlaceholderText(
        tr("day,member,amount,reaction,strength\n2026-11-03,Ana,1 1/2 cups,,\n"
           "2026-11-03,Bo,missed,headache,2"));
    m_sheet->setTabChangesFocus(true);
    m_sheet->setTabStopDistance(fontMetrics().averageCharWidth() * tabWidth);
    m_sheet->setLineWrapMode(QPlainTextEdit::NoWrap);
    m_sheet->setFixedHeight(fontMetrics().lineSpacing() * sheetLines + 2 * step(*this));
    m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_summary->setWordWrap(true);
    m_add->setProperty("primary", true);
    auto* section = new Section(tr("Take in a filled sheet"), this);
    section->setRemark(tr("The first line names the columns: day, member, amount; also pot, lot, "
                          "reaction, strength, start, length, note."));
    section->body()->addWidget(makeHead());
    section->body()->addWidget(m_sheet);
    section->body()->addWidget(m_problem);
    auto* line = new QHBoxLayout;
    line->addWidget(m_summary, 1);
    line->addWidget(m_add);
    section->body()->addLayout(line);
    section->body()->addWidget(m_table, 1);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(section);
    m_pause.setSingleShot(true);
    m_pause.setInterval(pauseMs);
    connect(&m_pause, &QTimer::timeout, this, &ImportPanel::preview);
    connect(m_sheet, &QPlainTextEdit::textChanged, this, [this] { m_pause.start(); });
    connect(m_add, &QPushButton::clicked, this, &ImportPanel::add);
}

QWidget* ImportPanel::makeHead() {
    auto* head = new QWidget(this);
    auto* row = new QHBoxLayout(head);
    row->setContentsMargins(0, 0, 0, 0);
    const auto button = [&](const QString& text, const QString& tip, auto&& work) {
        auto* made = new QPushButton(text, head);
        made->setToolTip(tip);
        row->addWidget(made);
        connect(made, &QPushButton::clicked, this, work);
    };
    button(tr("&Paste"), tr("Takes the lines that were copied from a table or a message"),
           [this] { paste(); });
    button(tr("&Open a file"), tr("Takes a table that was saved as CSV in UTF-8"),
           [this] { openFile(); });
    row->addStretch();
    button(tr("Back to the &day"), tr("Escape does the same; nothing is added"),
           [this] { Q_EMIT leave(); });
    return head;
}

void ImportPanel::setCasebook(std::shared_ptr<const casebook::Casebook> casebook) {
    m_casebook = std::move(casebook);
    preview();
}

void ImportPanel::clear() {
    m_sheet->clear();
    preview();
}

void ImportPanel::take(const QString& sheet) {
    m_sheet->setPlainText(sheet);
    preview();
    m_sheet->setFocus();
}

void ImportPanel::paste() {
    const QString text = QGuiApplication::clipboard()->text();
    if (text.trimmed().isEmpty()) {
        m_problem->say(tr("There is no text to paste. Copy the lines of the sheet first, its "
                          "first line too."));
        m_sheet->setFocus();
        return;
    }
    take(text);
}

void ImportPanel::openFile() {
    const auto name =
        m_context.desk.fileToOpen(this, tr("Open a filled sheet"), tr("Tables (*.csv *.txt)"));
    if (!name)
        return;
    QFile file(*name);
    if (!file.open(QIODevice::ReadOnly)) {
        m_problem->say(tr("%1 cannot be read: %2.").arg(*name, file.errorString()));
        return;
    }
    if (file.size() > mostBytes) {
        m_problem->say(
            tr("%1 is larger than a log can be. Open the sheet of one family.").arg(*name));
        return;
    }
    const Result<QString> text = exchange::textOfLog(file.readAll());
    if (!text) {
        m_problem->say(text.error().sentence);
        return;
    }
    take(*text);
}

void ImportPanel::preview() {
    m_pause.stop();
    m_preview = {};
    const QString sheet = m_sheet->toPlainText();
    m_problem->clear();
    if (m_casebook && !sheet.trimmed().isEmpty()) {
        Result<ImportPreview> result =
            previewImport(sheet, m_casebook->records(), m_casebook->today());
        if (result)
            m_preview = *std::move(result);
        else
            m_problem->say(result.error().sentence);
    }
    m_model->setLines(m_preview.lines);
    using Fate = ImportLine::Fate;
    const int adds = m_preview.count(Fate::Added);
    m_add->setVisible(!m_preview.lines.isEmpty());
    m_add->setEnabled(adds > 0);
    m_add->setText(adds == 1 ? tr("Add this &line") : tr("Add these %1 &lines").arg(adds));
    m_table->setVisible(!m_preview.lines.isEmpty());
    if (m_preview.lines.isEmpty()) {
        m_summary->setText(tr("Nothing is written before you add it; one step of Undo takes the "
                              "whole sheet back."));
        return;
    }
    m_summary->setText(tr("To add: %1. There already: %2. Refused: %3%4")
                           .arg(adds)
                           .arg(m_preview.count(Fate::AlreadyThere))
                           .arg(m_preview.count(Fate::Refused))
                           .arg(m_preview.report.refused.isEmpty()
                                    ? QStringLiteral(".")
                                    : tr("; mend them above, or they are left out.")));
}

void ImportPanel::add() {
    preview(); // what was typed just now counts
    exchange::LogReport report = m_preview.report;
    if (report.additions.isEmpty())
        return;
    report.refused.clear(); // they stay in the sheet, and were shown
    QDate latest;
    for (const exchange::LogAddition& addition : std::as_const(report.additions)) {
        const QDate day = addition.entry ? addition.entry->day : addition.reaction->day;
        latest = latest.isValid() ? std::max(latest, day) : day;
    }
    const bool allTaken = m_preview.report.refused.isEmpty();
    const int lines = report.lineCount();
    if (!m_problem->take(exchange::importLog(m_context.workbook, m_casebook->records(), report)))
        return;
    if (allTaken) {
        m_sheet->clear();
        Q_EMIT added(lines, latest);
    }
}

QWidget* ImportPanel::firstField() const {
    return m_sheet;
}

void ImportPanel::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape) {
        Q_EMIT leave();
        return;
    }
    QWidget::keyPressEvent(event);
}

} // namespace ladlework::ui
