#include "app/command.h"
#include "casebook/casebook.h"
#include "foundation/finding_json.h"
#include "store/workbook.h"

#include <QCoreApplication>
#include <QJsonObject>
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

} // namespace

Result<Answer> runVerify(const Words& words, const Outside& outside) {
    const QString path = words.at(0);
    const kitchen::Catalogue catalogue = valueOrThrow(kitchen::Catalogue::load());
    const auto workbook = openWorkbook(path, store::Opening::ToRead, outside);
    if (!workbook)
        return passOn(workbook);
    Findings findings = (*workbook)->verify();
    if (findings.isEmpty())
        findings = deriveAll(**workbook, catalogue, outside);

    Answer answer;
    answer.json = QJsonObject{{QStringLiteral("workbook"), path},
                              {QStringLiteral("findings"), findingsJson(findings)}};
    if (!findings.isEmpty())
        answer.problem = Problem{Problem::Kind::Damaged, findings.first().text, {}, path};
    return answer;
}

} // namespace ladlework::app
