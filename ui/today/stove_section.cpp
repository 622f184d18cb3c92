#include "ui/today/stove_section.h"

#include "casebook/cookings_to_confirm.h"
#include "ui/paint/theme.h"
#include "ui/shared/section.h"

#include <QGridLayout>
#include <QLabel>
#include <QLocale>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace ladlework::ui {

namespace {

QString potName(const casebook::Casebook& book, PotId id) {
    const kitchen::Pot* pot = book.pot(id);
    return pot != nullptr ? pot->name : StoveSection::tr("a pot that is gone");
}

QString placementWords(const casebook::Casebook& book, const week::Placement& placement) {
    const QString name = potName(book, placement.pot);
    return placement.start.isValid()
               ? StoveSection::tr("%1, from %2")
                     .arg(name, QLocale().toString(placement.start, QLocale::ShortFormat))
               : name;
}

} // namespace

StoveSection::StoveSection(QWidget* parent)
    : QWidget(parent), m_section(new Section(tr("On the stove"))), m_lines(new QGridLayout) {
    const int gap = step(*this);
    m_lines->setHorizontalSpacing(2 * gap);
    m_lines->setVerticalSpacing(gap / 2);
    m_lines->setColumnStretch(1, 1);
    m_section->body()->addLayout(m_lines);
    auto* plan = new QPushButton(tr("Plan the week"));
    connect(plan, &QPushButton::clicked, this, &StoveSection::weekWanted);
    auto* record = new QPushButton(tr("Record a cooking"));
    record->setToolTip(tr("The stock that came out, and the jars it went into"));
    connect(record, &QPushButton::clicked, this, &StoveSection::recordWanted);
    m_section->addAction(record);
    m_section->addAction(plan);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(m_section);
}

void StoveSection::show(const casebook::Casebook& book) {
    while (QLayoutItem* item = m_lines->takeAt(0)) {
        delete item->widget();
        delete item;
    }
    addDay(book, book.today(), tr("Today"));
    addDay(book, book.today().addDays(1), tr("Tomorrow"));
    for (const week::Placement& open : casebook::cookingsToConfirm(book)) {
        addLine(QLocale().toString(open.day, QStringLiteral("ddd d MMM")),
                tr("%1: planned, no batch recorded").arg(potName(book, open.pot)));
    }
}

void StoveSection::addDay(const casebook::Casebook& book, QDate day, const QString& name) {
    QList<week::Placement> placements = book.plan(week::weekStart(day)).placements;
    placements.removeIf([day](const week::Placement& placement) { return placement.day != day; });
    std::ranges::stable_sort(placements, {}, &week::Placement::start);
    QStringList words;
    for (const week::Placement& placement : placements)
        words << placementWords(book, placement);
    addLine(name, words.isEmpty() ? tr("nothing planned") : words.join(u'\n'));
}

void StoveSection::addLine(const QString& when, const QString& what) {
    auto* day = new QLabel(when);
    day->setForegroundRole(QPalette::PlaceholderText);
    auto* words = new QLabel(what);
    words->setWordWrap(true);
    words->setTextFormat(Qt::PlainText);
    const int row = m_lines->rowCount();
    m_lines->addWidget(day, row, 0, Qt::AlignTop);
    m_lines->addWidget(words, row, 1, Qt::AlignTop);
}

} // namespace ladlework::ui
