#include "intake/red_flags.h"

#include "foundation/reference_table.h"

#include <QCoreApplication>
#include <QRegularExpression>
#include <algorithm>

namespace ladlework::intake {

namespace {
struct Words {
    Q_DECLARE_TR_FUNCTIONS(RedFlags)
};

/// A row with the columns that only the findings need.
struct Sign {
    SymptomKind kind;
    QString group; ///< "anaphylaxis", "dehydration", "other", "ordinary"
};

/// Lower-case words with one space around each, without marks and without the small words that
/// people put between the telling ones ("swelling of the tongue", "her lips are swollen").
QString plainWords(const QString& text) {
    static const QRegularExpression marks(QStringLiteral("[^\\p{L}\\p{N}']+"));
    static const QStringList small{
        QStringLiteral("a"),   QStringLiteral("an"),   QStringLiteral("the"),
        QStringLiteral("of"),  QStringLiteral("is"),   QStringLiteral("are"),
        QStringLiteral("was"), QStringLiteral("were"), QStringLiteral("my"),
        QStringLiteral("his"), QStringLiteral("her"),  QStringLiteral("their"),
        QStringLiteral("our"), QStringLiteral("some"), QStringLiteral("very"),
        QStringLiteral("got"), QStringLiteral("your")};
    QString typed = text.toLower();
    typed.replace(QChar(0x2019), u'\''); // the curly apostrophe of a phone's keyboard
    QString words = QStringLiteral(" ");
    for (const QString& word : typed.split(marks, Qt::SkipEmptyParts))
        if (!small.contains(word))
            words.append(word).append(u' ');
    return words;
}

std::vector<Sign> loadSigns() {
    const ReferenceTable table = valueOrThrow(ReferenceTable::load(QStringLiteral("symptoms")));
    std::vector<Sign> signs;
    for (qsizetype i = 0; i < table.size(); ++i) {
        const ReferenceTable::Row row = table.row(i);
        const QString source = row.cited();
        signs.push_back({{row.text(QStringLiteral("id")), row.text(QStringLiteral("name")),
                          row.flag(QStringLiteral("red_flag")), row.text(QStringLiteral("advice")),
                          source, row.text(QStringLiteral("also")).split(u';', Qt::SkipEmptyParts)},
                         row.text(QStringLiteral("group"))});
    }
    return signs;
}

const std::vector<Sign>& allSigns() {
    static const std::vector<Sign> signs = loadSigns();
    return signs;
}

std::vector<SymptomKind> kindsOf(const std::vector<Sign>& signs) {
    std::vector<SymptomKind> kinds;
    kinds.reserve(signs.size());
    for (const Sign& sign : signs)
        kinds.push_back(sign.kind);
    return kinds;
}

/// The forms of every sign as plain words, in the order of the list; none for ordinary ones.
std::vector<QStringList> formsOf(const std::vector<SymptomKind>& kinds) {
    std::vector<QStringList> forms;
    forms.reserve(kinds.size());
    for (const SymptomKind& kind : kinds) {
        QStringList words;
        if (kind.redFlag) {
            words.append(plainWords(kind.name));
            for (const QString& form : kind.also)
                words.append(plainWords(form));
        }
        forms.push_back(words);
    }
    return forms;
}

Finding stop(const QString& code, const QString& text, const QString& source) {
    Finding finding;
    finding.severity = Finding::Severity::Stop;
    finding.code = code;
    finding.text = text;
    finding.source = source;
    finding.field = QStringLiteral("symptom");
    return finding;
}

Finding callFinding(const QString& emergencyNumber) {
    const QString number = emergencyNumber.trimmed();
    const QString whom = number.isEmpty() ? Words::tr("the local emergency number") : number;
    return stop(
        QStringLiteral("red-flag-call"),
        Words::tr("Stop the stock. Call %1 at once when breathing, swallowing or wakefulness is "
                  "affected, when it gets worse, or when in doubt; then call the treating "
                  "clinician.")
            .arg(whom),
        QString());
}

/// One finding that lists a published set of signs.
Finding signsFinding(const QString& group, const QString& sentence) {
    QStringList names;
    QString source;
    for (const Sign& sign : allSigns()) {
        if (sign.group != group)
            continue;
        names.append(sign.kind.name.toLower());
        if (source.isEmpty())
            source = sign.kind.source;
    }
    return stop(QStringLiteral("red-flag-%1").arg(group),
                sentence.arg(names.join(QStringLiteral("; "))), source);
}
} // namespace

const std::vector<SymptomKind>& symptomKinds() {
    static const std::vector<SymptomKind> kinds = kindsOf(allSigns());
    return kinds;
}

const SymptomKind* redFlagIn(const QString& typed) {
    static const std::vector<QStringList> forms = formsOf(symptomKinds());
    const std::vector<SymptomKind>& kinds = symptomKinds();
    const QString words = plainWords(typed);
    for (std::size_t i = 0; i < kinds.size(); ++i) {
        if (!kinds[i].redFlag)
            continue;
        if (kinds[i].id.compare(typed.trimmed(), Qt::CaseInsensitive) == 0 ||
            std::ranges::any_of(forms[i],
                                [&words](const QString& form) { return words.contains(form); }))
            return &kinds[i];
    }
    return nullptr;
}

Findings redFlagFindings(const QString& symptom, AgeBand band, const QString& emergencyNumber) {
    Findings findings{callFinding(emergencyNumber)};
    if (const SymptomKind* known = redFlagIn(symptom))
        findings.append(stop(QStringLiteral("red-flag-do"),
                             Words::tr("%1: %2").arg(known->name, known->advice), known->source));
    findings.append(signsFinding(
        QStringLiteral("anaphylaxis"),
        Words::tr(
            "Signs of a severe allergic reaction, which call for the emergency number: %1.")));
    if (band != AgeBand::Adult)
        findings.append(signsFinding(
            QStringLiteral("dehydration"),
            Words::tr(
                "Signs that an infant or child is drying out, which call for a doctor: %1.")));
    return findings;
}

} // namespace ladlework::intake
