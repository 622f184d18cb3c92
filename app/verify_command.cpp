#include "app/command.h"
#include "casebook/casebook.h"
#include "store/workbook.h"

#include <QCoreApplication>
#include <QJsonArray>
#include <stdexcept>

namespace ladlework::app {

namespace {

QString say(const char* sentence) {
    return QCoreApplication::translate("CommandLine", sentence);
}

/// Derives everything that is derived of every family: what cannot be is a finding.
Findings deriveAll(store::Workbook& workbook, const kitchen::Catalogue& catalogue,
                   const Outside& outside) {
    Findings findings;
    for (const people::Family& family : workbook.families().families()) {
        try {
            const auto records = workbook.records(family.id);
            if (!records)
                throw std::runtime_error(toLine(records.error()).toStdString());
            const casebook::Casebook casebook(*records, catalogue,
                                              outside.clock.today(family.zone));
            static_cast<void>(casebook.stockOnHand());
        } catch (const std::exception& broken) {
            Finding finding;
            finding.severity = Finding::Severity::Stop;
            finding.code = QStringLiteral("cannot-derive");
            finding.text = say("What follows from the records of \"%1\" cannot be worked out: %2.")
                               .arg(family.name, QString::fromUtf8(broken.what()));
            findings.append(finding);
        }
    }
    return findings;
}

QJsonValue numberOrNull(const std::optional<double>& number) {
    return number ? QJsonValue(*number) : QJsonValue();
}

QJsonArray toJson(const Findings& findings) {
    QJsonArray list;
    for (const Finding& finding : findings)
        list.append(QJsonObject{{QStringLiteral("severity"), severityId(finding.severity)},
                                {QStringLiteral("code"), finding.code},
                                {QStringLiteral("text"), finding.text},
                                {QStringLiteral("value"), numberOrNull(finding.value)},
                                {QStringLiteral("limit"), numberOrNull(finding.limit)},
                                {QStringLiteral("unit"), finding.unit},
                                {QStringLiteral("source"), finding.source}});
    return list;
}

} // namespace

Result<Answer> runVerify(const Words& words, const Outside& outside) {
    const QString path = words.at(0);
    const Result<kitchen::Catalogue> catalogue = kitchen::Catalogue::load();
    if (!catalogue)
        throw std::runtime_error(toLine(catalogue.error()).toStdString());
    const auto workbook = openWorkbook(path, outside);
    if (!workbook)
        return passOn(workbook);
    Findings findings = (*workbook)->verify();
    if (findings.isEmpty())
        findings = deriveAll(**workbook, *catalogue, outside);

    Answer answer;
    answer.json = QJsonObject{{QStringLiteral("workbook"), path},
                              {QStringLiteral("findings"), toJson(findings)}};
    if (!findings.isEmpty())
        answer.problem = Problem{Problem::Kind::Damaged, findings.first().text, {}, path};
    return answer;
}

} // namespace ladlework::app
