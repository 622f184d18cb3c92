#include "ui/progress/totals_page.h"

#include "casebook/member_intake.h"
#include "ui/paint/theme.h"
#include "ui/shared/section.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QVBoxLayout>

namespace ladlework::ui {

namespace {

using What = intake::TotalBesideReference::What;
constexpr int aWeek = 7;
constexpr int aMonth = 30;
constexpr int aQuarter = 90;

QString titleOf(What what) {
    switch (what) {
    case What::Sodium:
        return TotalsPage::tr("Sodium");
    case What::Protein:
        return TotalsPage::tr("Protein");
    case What::Fluid:
        return TotalsPage::tr("Fluid");
    }
    return {};
}

QLabel* wrapped(const QString& text, bool quiet) {
    auto* label = new QLabel(text);
    label->setWordWrap(true);
    label->setTextFormat(Qt::PlainText);
    label->setTextInteractionFlags(Qt::TextSelectableByMouse);
    if (quiet)
        label->setForegroundRole(QPalette::PlaceholderText);
    return label;
}

} // namespace

TotalsPage::TotalsPage(QWidget* parent)
    : QWidget(parent), m_span(new QComboBox(this)), m_behind(wrapped({}, true)),
      m_lines(new QVBoxLayout) {
    m_span->addItem(tr("The last week"), aWeek);
    m_span->addItem(tr("The last 30 days"), aMonth);
    m_span->addItem(tr("The last 90 days"), aQuarter);
    m_span->addItem(tr("Today"), 1);
    m_span->setAccessibleName(tr("Days that the mean is taken over"));
    auto* section = new Section(tr("A mean day of stock"), this);
    section->setRemark(tr("for information"));
    section->addAction(m_span);
    section->body()->addWidget(m_behind);
    m_lines->setSpacing(step(*this) / 2);
    section->body()->addLayout(m_lines);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(section);
    layout->addStretch(1);
    connect(m_span, &QComboBox::currentIndexChanged, this, &TotalsPage::fill);
}

void TotalsPage::show(std::shared_ptr<const casebook::Casebook> casebook,
                      const casebook::Standing& standing) {
    m_casebook = std::move(casebook);
    m_member = standing.member.id;
    fill();
}

void TotalsPage::addLine(const QString& title, const QString& text) {
    auto* head = new QLabel(title);
    head->setFont(sectionFont(font()));
    m_lines->addWidget(head);
    m_lines->addWidget(wrapped(text, false));
}

void TotalsPage::fill() {
    while (QLayoutItem* item = m_lines->takeAt(0)) {
        delete item->widget();
        delete item;
    }
    const casebook::Standing* standing = m_casebook ? m_casebook->standing(m_member) : nullptr;
    if (!standing)
        return;
    const QDate today = m_casebook->today();
    const int days = m_span->currentData().toInt();
    const auto totals =
        casebook::memberTotals(*m_casebook, m_member, today.addDays(1 - days), today);
    if (!totals) {
        m_behind->setText(
            tr("Nothing was entered for %1 in these days.").arg(standing->member.name));
        return;
    }
    const quantity::MeasureSystem measures = m_casebook->records().family.measures;
    m_behind->setText(
        totals->days == 1
            ? tr("%1 of stock on the one day with an entry.")
                  .arg(quantity::printVolume(totals->stock, measures))
            : tr("%1 of stock a day, over the %2 days with an entry. Sodium and protein are "
                 "estimates from what went into the pots, with their range.")
                  .arg(quantity::printVolume(totals->stock, measures))
                  .arg(totals->days));
    const auto reference = people::dietaryReferenceFor(standing->member.birth, today,
                                                       people::intakeCondition(standing->cautions));
    if (!reference) {
        addLine(tr("Reference"), tr("There is no reference intake for this age."));
        return;
    }
    QStringList sources;
    for (const intake::TotalBesideReference& line :
         intake::besideReferences(*totals, *reference, measures)) {
        addLine(titleOf(line.what), line.text);
        sources.append(line.source);
    }
    sources.removeDuplicates();
    m_lines->addWidget(wrapped(tr("References: %1").arg(sources.join(QStringLiteral("; "))), true));
}

QWidget* TotalsPage::firstField() const {
    return m_span;
}

} // namespace ladlework::ui
