#include "ui/today/member_line.h"

#include "casebook/retry_steps.h"
#include "ui/paint/theme.h"
#include "ui/shared/asked_amount.h"
#include "ui/shared/easing_words.h"
#include "ui/today/drunk_bar.h"

#include <QGridLayout>
#include <QLabel>
#include <QLocale>

#include <algorithm>

namespace ladlework::ui {

namespace {

QLabel* quietLabel() {
    auto* label = new QLabel;
    label->setForegroundRole(QPalette::PlaceholderText);
    return label;
}

QString capital(QString text) {
    if (!text.isEmpty())
        text[0] = text[0].toUpper();
    return text;
}

/// "Holding" for a climb, or why there is none.
QString stateWords(const casebook::Standing& standing) {
    if (standing.band == AgeBand::InfantUnderSixMonths)
        return MemberLine::tr("No ladder under 6 months");
    if (!standing.ladder)
        return MemberLine::tr("No ladder yet");
    return capital(climbState(standing));
}

QString yesterdayWords(const casebook::Standing& standing, const casebook::Casebook& book) {
    if (!standing.ladder)
        return {};
    const QDate yesterday = book.today().addDays(-1);
    const auto& days = standing.replay.days;
    const auto found = std::ranges::find(days, yesterday, &intake::LadderDay::day);
    if (found != days.end())
        return MemberLine::tr("Yesterday: %1").arg(whyWords(book, standing, *found));
    return days.isEmpty() ? MemberLine::tr("Nothing has been entered on this ladder yet.")
                          : QString();
}

/// "Rung 3 of 9. Target 4 cups to 6 cups, likely by 12 January."
QString targetWords(const casebook::Standing& standing, quantity::MeasureSystem measures) {
    if (!standing.ladder)
        return {};
    QString words = MemberLine::tr("Rung %1 of %2.")
                        .arg(standing.replay.rung + 1)
                        .arg(standing.ladder->rungs.size());
    if (!standing.target)
        return words;
    const QString range = MemberLine::tr("%1 to %2")
                              .arg(quantity::printVolume(standing.target->low, measures),
                                   quantity::printVolume(standing.target->high, measures));
    const bool onTheWay =
        !standing.easedToday && (standing.replay.state == intake::LadderState::Climbing ||
                                 standing.replay.state == intake::LadderState::Holding);
    if (onTheWay && standing.targetDate)
        words += MemberLine::tr(" Target %1, likely by %2.")
                     .arg(range, QLocale().toString(standing.targetDate->median,
                                                    QStringLiteral("d MMMM")));
    else
        words += MemberLine::tr(" Target %1.").arg(range);
    if (const QString eased = easingWords(*standing.target, *standing.ladder, measures);
        !eased.isEmpty())
        words += u' ' + eased;
    return words;
}

/// "Today a new try: 1 tsp of stock with lamb (step 1 of 4)."
QString retryWords(const casebook::Standing& standing, const casebook::Casebook& book) {
    QStringList words;
    for (const casebook::RetryStep& step : casebook::retrySteps(book, book.today(), book.today()))
        if (step.plan->member == standing.member.id)
            words << MemberLine::tr("Today a new try: %1 of stock with %2 (step %3 of %4).")
                         .arg(quantity::printVolume(step.amount, book.records().family.measures),
                              step.what)
                         .arg(step.step + 1)
                         .arg(step.plan->steps.size());
    return words.join(u' ');
}

} // namespace

std::optional<quantity::Volume> drunkOn(const casebook::FamilyRecords& records, MemberId member,
                                        QDate day) {
    QList<intake::IntakeEntry> entries;
    std::ranges::copy_if(records.entries, std::back_inserter(entries),
                         [&](const intake::IntakeEntry& entry) {
                             return entry.member == member && entry.day == day;
                         });
    if (entries.isEmpty())
        return std::nullopt;
    return intake::logDays(entries, {}, day).first().drunk;
}

MemberLine::MemberLine(QWidget* parent)
    : QWidget(parent), m_name(new QLabel), m_about(quietLabel()), m_state(new QLabel),
      m_asked(new QLabel), m_drunk(quietLabel()), m_bar(new DrunkBar(this)),
      m_yesterday(quietLabel()), m_target(quietLabel()), m_retry(new QLabel) {
    build();
}

void MemberLine::build() {
    const int gap = step(*this);
    QFont bold = font();
    bold.setWeight(QFont::DemiBold);
    m_name->setFont(bold);
    m_name->setTextFormat(Qt::PlainText);
    m_asked->setFont(sectionFont(font()));
    m_yesterday->setWordWrap(true);
    m_target->setWordWrap(true);
    m_retry->setWordWrap(true);
    m_state->setAlignment(Qt::AlignRight);

    auto* head = new QHBoxLayout;
    head->setSpacing(gap);
    head->addWidget(m_name);
    head->addWidget(m_about, 1);
    head->addWidget(m_state);
    auto* amounts = new QHBoxLayout;
    amounts->setSpacing(gap);
    amounts->addWidget(m_asked);
    amounts->addWidget(m_bar, 1);
    amounts->addWidget(m_drunk);
    m_asked->setMinimumWidth(fontMetrics().averageCharWidth() * 16);
    m_drunk->setMinimumWidth(fontMetrics().averageCharWidth() * 24);

    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(gap / 4);
    column->addLayout(head);
    column->addLayout(amounts);
    column->addWidget(m_retry);
    column->addWidget(m_yesterday);
    column->addWidget(m_target);
}

void MemberLine::show(const casebook::Standing& standing, const casebook::Casebook& book) {
    const auto measures = book.records().family.measures;
    m_name->setText(standing.member.name);
    QStringList about{ageBandName(standing.band)};
    if (standing.phase)
        about << standing.phase->name;
    m_about->setText(about.join(QStringLiteral(", ")));
    m_state->setText(stateWords(standing));

    const bool asks = standing.askedToday > quantity::Volume();
    const auto drunk = drunkOn(book.records(), standing.member.id, book.today());
    m_asked->setVisible(asks);
    m_bar->setVisible(asks);
    m_drunk->setVisible(asks || drunk);
    m_asked->setText(quantity::printVolume(standing.askedToday, measures));
    m_asked->setAccessibleName(tr("Asked today: %1").arg(m_asked->text()));
    m_drunk->setText(drunk ? tr("%1 drunk so far").arg(quantity::printVolume(*drunk, measures))
                           : tr("nothing entered yet"));
    m_bar->setShare(asks && drunk ? *drunk / standing.askedToday : 0.0);
    const QString yesterday = yesterdayWords(standing, book);
    m_yesterday->setText(yesterday);
    m_yesterday->setVisible(!yesterday.isEmpty());
    const QString target = targetWords(standing, measures);
    m_target->setText(target);
    m_target->setVisible(!target.isEmpty());
    const QString retry = retryWords(standing, book);
    m_retry->setText(retry);
    m_retry->setVisible(!retry.isEmpty());
}

} // namespace ladlework::ui
