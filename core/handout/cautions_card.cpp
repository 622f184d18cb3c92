#include "casebook/retry_steps.h"
#include "casebook/subject_name.h"
#include "handout/cards.h"
#include "intake/red_flags.h"

#include <QCoreApplication>

namespace ladlework::handout {

namespace {
struct Words {
    Q_DECLARE_TR_FUNCTIONS(Handout)
};
using Verdict = people::ToleranceNote::Verdict;

QStringList cautionLines(const PageContext& context) {
    QStringList lines;
    for (const casebook::Standing& standing : context.casebook().standings()) {
        const QString name = context.called(standing);
        if (isTooYoung(standing))
            lines.append(Words::tr("%1 is under 6 months: no stock. Ask the doctor or nurse who "
                                   "looks after the baby.")
                             .arg(name));
        for (const people::Caution& caution : standing.cautions)
            lines.append(people::findingFor(caution, name).text);
    }
    return lines;
}

QStringList subjects(const PageContext& context, const casebook::Standing& standing, bool barred) {
    QStringList names;
    for (const people::ToleranceNote& note : standing.tolerances) {
        const bool wanted = barred ? people::forbids(note) : note.verdict == Verdict::SmallAmounts;
        if (!wanted)
            continue;
        const QString name = casebook::subjectName(note.subject, context.casebook().catalogue());
        const QDate monday = context.options().week;
        const bool tried = casebook::isTriedAgain(context.casebook(), note.member, note.subject,
                                                  monday, monday.addDays(week::daysAWeek - 1));
        if (note.allergy)
            names.append(Words::tr("%1 (allergy)").arg(name));
        else
            names.append(tried ? Words::tr("%1 (but for the new tries)").arg(name) : name);
    }
    return names;
}

QStringList toleranceLines(const PageContext& context) {
    QStringList lines;
    for (const casebook::Standing& standing : context.casebook().standings()) {
        const QString name = context.called(standing);
        const QStringList barred = subjects(context, standing, true);
        if (!barred.isEmpty())
            lines.append(
                Words::tr("%1 does not have: %2.").arg(name, barred.join(QStringLiteral(", "))));
        const QStringList little = subjects(context, standing, false);
        if (!little.isEmpty())
            lines.append(Words::tr("%1 has only a little of: %2.")
                             .arg(name, little.join(QStringLiteral(", "))));
    }
    return lines;
}

/// What the table of reactions says, in the language of the page.
QString inWords(const QString& text) {
    return QCoreApplication::translate("Symptom", text.toUtf8().constData());
}

Table stopSigns() {
    Table table;
    table.header = {Words::tr("Stop sign"), Words::tr("What to do")};
    table.weights = {1.0, 1.4};
    for (const intake::SymptomKind& kind : intake::symptomKinds()) {
        if (kind.redFlag)
            table.rows.append(QList<Cell>{{inWords(kind.name), true, false},
                                          {inWords(kind.advice), false, false}});
    }
    return table;
}
} // namespace

Card cautionsCard(const PageContext& context) {
    Card card;
    card.kind = Card::Kind::Cautions;
    card.title = Words::tr("Take care, and whom to call");
    card.startsPage = true;
    const QStringList cautions = cautionLines(context);
    if (!cautions.isEmpty()) {
        card.blocks.append(Heading{Words::tr("Ask first")});
        card.blocks.append(Lines{Lines::Sign::Dot, cautions});
    }
    const QStringList tolerances = toleranceLines(context);
    if (!tolerances.isEmpty()) {
        card.blocks.append(Heading{Words::tr("Who does not have what")});
        card.blocks.append(Lines{Lines::Sign::Dot, tolerances});
    }
    card.blocks.append(Warning{
        Words::tr("Stop"), Words::tr("When you see one of these signs, give no more stock. Call "
                                     "%1 at once when it is bad or when you are in doubt.")
                               .arg(context.emergencyNumber())});
    card.blocks.append(stopSigns());
    card.blocks.append(Heading{Words::tr("Whom to call")});
    card.blocks.append(context.whomToCall());
    card.blocks.append(
        Paragraph{Words::tr("These pages do not take the place of a doctor's advice. "
                            "Go on with all medicine as your doctor said.")});
    return card;
}

} // namespace ladlework::handout
