#include "ui/families/practice_today.h"

#include "ui/families/attention_reader.h"
#include "ui/families/need_table.h"
#include "ui/paint/theme.h"
#include "ui/shared/empty_state.h"
#include "ui/shared/section.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLocale>
#include <QPushButton>
#include <QSet>
#include <QStackedWidget>
#include <QVBoxLayout>

namespace ladlework::ui {

PracticeToday::PracticeToday(const ScreenContext& context, const AttentionReader& reader,
                             QWidget* parent)
    : QWidget(parent), m_context(context), m_reader(reader), m_pages(new QStackedWidget),
      m_day(new QLabel), m_summary(new QLabel),
      m_now(makePart(tr("Needs you now"), tr("No family needs you now."))),
      m_reviews(makePart(tr("Reviews this week"), tr("No review in the next seven days."))),
      m_cookings(makePart(tr("Planned, not recorded"),
                          tr("Every planned cooking of the last week has its batch."))) {
    build();
    connect(&reader, &AttentionReader::changed, this, [this] {
        if (isVisible())
            refresh();
    });
}

PracticeToday::Part PracticeToday::makePart(const QString& title, const QString& calm) {
    Part part{new Section(title), new NeedTable(title, nullptr), new QLabel(calm)};
    part.calm->setForegroundRole(QPalette::PlaceholderText);
    part.calm->setWordWrap(true);
    part.calm->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    part.section->body()->addWidget(part.table);
    part.section->body()->addWidget(part.calm);
    part.section->body()->addStretch();
    part.section->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Maximum);
    connect(part.table, &NeedTable::wanted, this, &PracticeToday::wanted);
    return part;
}

void PracticeToday::build() {
    const int gap = ui::step(*this);
    m_day->setFont(titleFont(font()));
    m_summary->setForegroundRole(QPalette::PlaceholderText);
    auto* head = new QHBoxLayout;
    head->setSpacing(2 * gap);
    head->addWidget(m_day);
    head->addWidget(m_summary, 1, Qt::AlignBottom);

    auto* lower = new QHBoxLayout;
    lower->setSpacing(2 * gap);
    lower->addWidget(m_reviews.section, 1, Qt::AlignTop);
    lower->addWidget(m_cookings.section, 1, Qt::AlignTop);

    auto* page = new QWidget;
    auto* column = new QVBoxLayout(page);
    column->setContentsMargins(2 * gap, 2 * gap, 2 * gap, 2 * gap);
    column->setSpacing(2 * gap);
    column->addLayout(head);
    column->addWidget(m_now.section);
    column->addLayout(lower);
    column->addStretch();

    auto* empty = new EmptyState(
        tr("No families yet"),
        tr("A family is one household that you guide. Its members, its pots, its weeks and its log "
           "all live under its name, and this page will tell each morning who needs you."),
        tr("Take on your first family"));
    connect(empty->button(), &QPushButton::clicked, this, &PracticeToday::newFamilyWanted);

    m_pages->addWidget(page);
    m_pages->addWidget(empty);
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->addWidget(m_pages);
}

void PracticeToday::refresh() {
    m_pages->setCurrentIndex(m_reader.summaries().isEmpty() ? 1 : 0);
    const QDate today = m_context.clock.today(m_context.workbook.practice().practice().zone);
    const QList<Need> now = needsNow(m_reader);
    m_day->setText(QLocale().toString(today, QStringLiteral("dddd d MMMM")));
    m_summary->setText(summaryWords(now));
    fill(m_now, now);
    fill(m_reviews, reviewsToCome(m_reader, today));
    fill(m_cookings, cookingsToRecord(m_reader));
}

void PracticeToday::fill(const Part& part, const QList<Need>& needs) {
    part.table->setVisible(!needs.isEmpty());
    part.calm->setVisible(needs.isEmpty());
    part.table->setNeeds(needs);
}

QString PracticeToday::summaryWords(const QList<Need>& needs) const {
    QSet<FamilyId> families;
    for (const Need& need : needs)
        families.insert(need.family);
    const qsizetype all = m_reader.summaries().size();
    QString words = all == 1 ? tr("1 family") : tr("%1 families").arg(all);
    if (!families.isEmpty())
        words +=
            families.size() == 1 ? tr(", 1 needs you") : tr(", %1 need you").arg(families.size());
    if (!m_reader.isFinished())
        words += tr(", still reading");
    return words;
}

void PracticeToday::showEvent(QShowEvent* event) {
    refresh();
    QWidget::showEvent(event);
}

} // namespace ladlework::ui
