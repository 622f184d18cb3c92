#include "store/handout_repository.h"

#include "store/belonging.h"
#include "store/records.h"
#include "store/rows.h"

#include <QCoreApplication>

namespace ladlework::store {

using namespace Qt::Literals::StringLiterals;

namespace {
struct Words {
    Q_DECLARE_TR_FUNCTIONS(HandoutRepository)
};

casebook::HandoutRecord readHandout(const Statement& row) {
    casebook::HandoutRecord record;
    record.id = row.id<HandoutId>("id"_L1);
    record.family = row.id<FamilyId>("family_id"_L1);
    record.week = row.day("week_start"_L1);
    record.madeUtc = row.momentUtc("made_at_utc"_L1);
    record.title = row.text("title"_L1);
    return record;
}
} // namespace

QList<casebook::HandoutRecord> HandoutRepository::handouts(FamilyId family) const {
    return readAll(m_database,
                   QStringLiteral("SELECT id, family_id, week_start, made_at_utc, title "
                                  "FROM handout WHERE family_id = ? "
                                  "ORDER BY made_at_utc DESC, id DESC"),
                   readHandout, family);
}

QByteArray HandoutRepository::pdf(HandoutId handout) const {
    Statement find = m_database.statement(QStringLiteral("SELECT pdf FROM handout WHERE id = ?"));
    return find.with(handout).next() ? find.bytes("pdf"_L1) : QByteArray();
}

QByteArray HandoutRepository::documentJson(HandoutId handout) const {
    Statement find =
        m_database.statement(QStringLiteral("SELECT document_json FROM handout WHERE id = ?"));
    return find.with(handout).next() ? find.text("document_json"_L1).toUtf8() : QByteArray();
}

Result<HandoutId> HandoutRepository::addHandout(Action&, const casebook::HandoutRecord& record,
                                                const QByteArray& pdf,
                                                const QByteArray& documentJson) {
    const Result<QDate> today = Belonging(m_database).todayOf(record.family, m_clock);
    if (!today)
        return passOn(today);
    if (const Outcome day =
            requireDay(record.week, Words::tr("A handout needs the week it is made for."),
                       QStringLiteral("week"));
        !day)
        return passOn(day);
    if (pdf.isEmpty())
        return problem(Problem::Kind::BadInput,
                       Words::tr("The handout has no pages; make it again."),
                       QStringLiteral("pdf"));
    const QDateTime made = record.madeUtc.isValid() ? record.madeUtc : m_clock.nowUtc();
    return HandoutId{insertRow(m_database, "handout"_L1,
                               {{"family_id"_L1, record.family},
                                {"week_start"_L1, record.week},
                                {"made_at_utc"_L1, made},
                                {"title"_L1, record.title},
                                {"document_json"_L1, QString::fromUtf8(documentJson)},
                                {"pdf"_L1, pdf}})};
}

Outcome HandoutRepository::removeHandout(Action&, HandoutId handout) {
    if (!deleteRow(m_database, "handout"_L1, handout.value))
        return noSuchRecord();
    return {};
}

} // namespace ladlework::store
