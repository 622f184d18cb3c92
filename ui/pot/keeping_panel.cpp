#include "ui/pot/keeping_panel.h"

#include "kitchen/keeping.h"
#include "kitchen/keeping_figures.h"
#include "kitchen/pot_notes.h"
#include "ui/paint/theme.h"
#include "ui/shared/day_text.h"

#include <QGridLayout>
#include <QLabel>
#include <QLocale>

namespace ladlework::ui {

using kitchen::CookClass;
using kitchen::KeepingFigures;
using kitchen::Lot;

namespace {

QString day(QDate date) {
    return printDay(date, QLocale());
}

QString daysWords(int least, int most) {
    return least == most ? KeepingPanel::tr("%1 days").arg(most)
                         : KeepingPanel::tr("%1 to %2 days").arg(least).arg(most);
}

QString figureId(const char* id) {
    return QString::fromLatin1(id);
}

/// The words of a line, with where its figure comes from for the eye and the screen reader.
void say(QLabel* label, const QString& words, const kitchen::Provenance& provenance) {
    label->setText(words);
    const QString source = KeepingPanel::tr("Source: %1").arg(kitchen::cited(provenance));
    label->setToolTip(source);
    label->setAccessibleDescription(source);
}

} // namespace

QString rawKeepingWords(CookClass cookClass) {
    const kitchen::RawKeeping raw = kitchen::rawKeeping(cookClass);
    return KeepingPanel::tr("Raw it keeps %1 in the refrigerator: buy it at most %2 days before. "
                            "Source: %3")
        .arg(daysWords(raw.leastDays, raw.mostDays))
        .arg(raw.mostDays)
        .arg(kitchen::cited(raw.provenance));
}

KeepingPanel::KeepingPanel(QWidget* parent) : QWidget(parent), m_grid(new QGridLayout(this)) {
    m_grid->setHorizontalSpacing(2 * step(*this));
    m_grid->setVerticalSpacing(step(*this) / 2);
    m_grid->setColumnStretch(1, 1);
    m_raw = addLine(tr("Raw"));
    m_fridge = addLine(tr("Refrigerator"));
    m_freezer = addLine(tr("Freezer"));
    m_thawed = addLine(tr("Thawed"));
    m_warm = addLine(tr("Warm it up"));
    m_meat = addLine(tr("The meat"));
    m_notes = addLine(tr("Take note"));
    m_grid->setRowStretch(m_grid->rowCount(), 1);
}

QLabel* KeepingPanel::addLine(const QString& title) {
    const int row = m_grid->rowCount();
    auto* name = new QLabel(title, this);
    QFont strong = font();
    strong.setBold(true);
    name->setFont(strong);
    auto* words = new QLabel(this);
    words->setWordWrap(true);
    words->setTextFormat(Qt::PlainText);
    words->setTextInteractionFlags(Qt::TextSelectableByMouse);
    name->setBuddy(words);
    m_grid->addWidget(name, row, 0, Qt::AlignTop);
    m_grid->addWidget(words, row, 1);
    return words;
}

void KeepingPanel::show(const kitchen::Pot& pot, const casebook::Casebook& book) {
    const KeepingFigures& figures = KeepingFigures::shipped();
    const QDate today = book.today();
    const int days = book.records().practice.fridgeDays;
    const auto measures = book.records().family.measures;
    say(m_fridge,
        tr("Cooked and cooled today, drink it by %1: the practice keeps stock %2 days. Published "
           "charts differ, from %3 to %4 days.")
            .arg(day(kitchen::useBy(Lot::Place::Fridge, today, days)))
            .arg(days)
            .arg(figures.count(figureId("broth-fridge-least")))
            .arg(figures.count(figureId("soup-fridge-most"))),
        figures.provenance(figureId("soup-fridge-most")));
    say(m_freezer,
        tr("Frozen today, best by %1. Leave room at the top: stock swells.")
            .arg(day(kitchen::useBy(Lot::Place::Freezer, today, days))),
        figures.provenance(figureId("stock-freezer-least")));
    say(m_thawed,
        tr("Thaw it in the refrigerator, never on the counter, and drink it within %1 days.")
            .arg(figures.count(figureId("thawed-stock"))),
        figures.provenance(figureId("thawed-stock")));
    say(m_warm,
        tr("Heat it until it boils, then let it cool until it is safe to sip; meat to %1 or more. "
           "Warm only what is drunk at once.")
            .arg(quantity::printTemperature(figures.temperature(figureId("reheat")), measures)),
        figures.provenance(figureId("reheat")));
    say(m_meat,
        tr("Eat it within %1 from the refrigerator, or freeze it.")
            .arg(daysWords(figures.count(figureId("cooked-meat-least")),
                           figures.count(figureId("cooked-meat-most")))),
        figures.provenance(figureId("cooked-meat-least")));
    fillNotes(pot, book.catalogue());
}

void KeepingPanel::fillNotes(const kitchen::Pot& pot, const kitchen::Catalogue& catalogue) {
    const Findings notes = kitchen::standingNotes(pot, catalogue);
    const auto fill = [&notes](QLabel* label, bool raw, const QString& nothing) {
        QStringList lines;
        QStringList sources;
        for (const Finding& note : notes) {
            if (note.code.startsWith(u"raw-") != raw)
                continue;
            lines.append(note.text);
            if (!note.source.isEmpty())
                sources.append(note.source);
        }
        label->setText(lines.isEmpty() ? nothing : lines.join(u'\n'));
        const QString source = sources.isEmpty()
                                   ? QString()
                                   : tr("Source: %1").arg(sources.join(QStringLiteral("; ")));
        label->setToolTip(source);
        label->setAccessibleDescription(source);
    };
    fill(m_raw, true, tr("Nothing raw is in this pot."));
    fill(m_notes, false, {});
}

} // namespace ladlework::ui
