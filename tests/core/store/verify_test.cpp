#include "core/store/sample_records.h"
#include "core/store/store_fixture.h"

namespace ladlework::store {
namespace {

class VerifyTest : public StoreFixture {
protected:
    void SetUp() override {
        StoreFixture::SetUp();
        const auto fill = [](Action& action, Workbook& workbook) -> Outcome {
            const FamilyId family = workbook.families().addFamily(action, sampleFamily()).value();
            const MemberId member =
                workbook.families().addMember(action, sampleMember(family, {})).value();
            const PotId pot = workbook.pots().addPot(action, samplePot(family, {})).value();
            const BatchId batch =
                workbook.pots().addBatch(action, sampleBatch(family, pot)).value();
            EXPECT_TRUE(workbook.pots().addLot(action, sampleLot(batch)));
            EXPECT_TRUE(workbook.climbs().addTarget(action, sampleTarget(member)));
            EXPECT_TRUE(workbook.climbs().addLadder(action, sampleLadder(member)));
            EXPECT_TRUE(workbook.climbs().addDecision(action, sampleDecision(member)));
            EXPECT_TRUE(workbook.log().addReaction(action, sampleReaction(member)));
            EXPECT_TRUE(workbook.families().addTolerance(action, sampleTolerance(member)));
            EXPECT_TRUE(workbook.families().addCaution(action, sampleCaution(member)));
            EXPECT_TRUE(workbook.families().addVessel(action, sampleVessel(family)));
            EXPECT_TRUE(workbook.families().addContainer(action, sampleContainer(family)));
            EXPECT_TRUE(workbook.families().addRetryPlan(action, sampleRetry(member)));
            EXPECT_TRUE(workbook.families().addObservation(action, sampleObservation(member)));
            EXPECT_TRUE(workbook.practice().addLadderTemplate(action, sampleTemplate()));
            EXPECT_TRUE(workbook.practice().setPrice(action, QStringLiteral("onion"), 2.0));
            EXPECT_TRUE(workbook.notes().addNote(action, sampleNote(family)));
            EXPECT_TRUE(workbook.weeks().setPlan(action, samplePlan(family, pot)));
            EXPECT_TRUE(workbook.families().setUsualHours(action, family, {sampleHours().first()}));
            EXPECT_TRUE(workbook.weeks().addTemplate(action, sampleWeekTemplate(family, pot)));
            EXPECT_TRUE(workbook.practice().addHandoutTemplate(action, sampleHandoutTemplate()));
            EXPECT_TRUE(workbook.practice().addLabelStock(action, sampleLabelStock()));
            return outcome(workbook.log().addEntry(action, sampleEntry(member, pot, {})));
        };
        ASSERT_TRUE(Workbook::create(workbookPath(), m_clock, fill));
    }

    /// What verify() says after another program has written into the file.
    Findings after(const QString& sql) {
        {
            Database other(workbookPath(), Database::Access::ReadWrite);
            other.script(QStringLiteral("PRAGMA foreign_keys = OFF"));
            other.script(sql);
        }
        return reopen()->verify();
    }
};

TEST_F(VerifyTest, AllIsWellInWhatTheProgramWrote) {
    for (const Finding& finding : reopen()->verify())
        ADD_FAILURE() << finding.text.toStdString();
}

TEST_F(VerifyTest, EachRecordThatDoesNotPassItsCheckIsNamed) {
    // Values that SQL lets in and that the record's own check does not.
    const QList<std::pair<QString, QString>> wrongs{
        {QStringLiteral("UPDATE practice SET zone = 'No/Where'"), QStringLiteral("practice/1")},
        {QStringLiteral("UPDATE family SET since_day = '2030-01-01'"), QStringLiteral("family/1")},
        {QStringLiteral("UPDATE member SET birth_day = '2030-01-01'"), QStringLiteral("member/1")},
        {QStringLiteral("UPDATE house_rules SET days_to_advance = 9999"),
         QStringLiteral("house_rules/1")},
        {QStringLiteral("DELETE FROM ladder_template_rung"), QStringLiteral("ladder_template/1")},
        {QStringLiteral("UPDATE symptom SET name = char(9) WHERE id = 2"),
         QStringLiteral("symptom/2")},
        {QStringLiteral("UPDATE price SET item = 'moonbeam'"), QStringLiteral("price/moonbeam")},
        {QStringLiteral("UPDATE price SET per_kg = 2e6"), QStringLiteral("price/onion")},
        {QStringLiteral("UPDATE vessel SET diameter_cm = 500"), QStringLiteral("vessel/1")},
        {QStringLiteral("UPDATE container SET height_cm = 500"), QStringLiteral("container/1")},
        {QStringLiteral("DELETE FROM retry_step"), QStringLiteral("retry_plan/1")},
        {QStringLiteral("UPDATE observation SET day = '2030-01-01'"),
         QStringLiteral("observation/1")},
        {QStringLiteral("UPDATE target SET ease_every_days = 1000"), QStringLiteral("target/1")},
        {QStringLiteral("UPDATE batch SET simmer_min = 9e9"), QStringLiteral("batch/1")},
        {QStringLiteral("UPDATE tolerance_note SET reason = ''"),
         QStringLiteral("tolerance_note/1")},
        {QStringLiteral("UPDATE caution SET kind = 'ennui'"), QStringLiteral("caution/1")},
        {QStringLiteral("UPDATE target SET high_ml = 99999"), QStringLiteral("target/1")},
        {QStringLiteral("DELETE FROM ladder_rung"), QStringLiteral("ladder/1")},
        {QStringLiteral("UPDATE decision SET day = '2030-01-01'"), QStringLiteral("decision/1")},
        {QStringLiteral("UPDATE pot_cut SET cut = 'griffin'"), QStringLiteral("pot/1")},
        {QStringLiteral("UPDATE batch SET day = '2030-01-01'"), QStringLiteral("batch/1")},
        {QStringLiteral("UPDATE lot SET volume_ml = 9e9"), QStringLiteral("lot/1")},
        {QStringLiteral("UPDATE intake_entry SET drunk_ml = 9e9"),
         QStringLiteral("intake_entry/1")},
        {QStringLiteral("UPDATE reaction SET day = '2030-01-01'"), QStringLiteral("reaction/1")},
        {QStringLiteral("UPDATE week_placement SET day = '2030-01-01'"),
         QStringLiteral("week_plan/1")},
        {QStringLiteral("UPDATE week_extra SET text = char(9)"), QStringLiteral("week_plan/1")},
        {QStringLiteral("UPDATE family SET handout_language = 'tlh'"), QStringLiteral("family/1")},
        {QStringLiteral("UPDATE practice SET logo = x'474946'"), QStringLiteral("practice/1")},
        {QStringLiteral("DELETE FROM week_template_placement"), QStringLiteral("week_template/1")},
        {QStringLiteral("UPDATE handout_template_section SET shown = 0 WHERE part = 'cautions'"),
         QStringLiteral("handout_template/1")},
        {QStringLiteral("UPDATE label_stock SET left_mm = 20"), QStringLiteral("label_stock/1")},
        {QStringLiteral("UPDATE visit_note SET day = '2030-01-01'"),
         QStringLiteral("visit_note/1")},
    };
    const QByteArray clean = bytesOf(workbookPath());
    for (const auto& [sql, field] : wrongs) {
        write(workbookPath(), clean);
        const Findings findings = after(sql);
        ASSERT_EQ(findings.size(), 1) << sql.toStdString();
        EXPECT_EQ(findings.first().code, QStringLiteral("record-not-valid"));
        EXPECT_EQ(findings.first().field, field);
        EXPECT_EQ(findings.first().severity, Finding::Severity::Caution);
    }
}

TEST_F(VerifyTest, ALostReferenceIsNamed) {
    const Findings findings = after(QStringLiteral("DELETE FROM pot_cut; DELETE FROM pot_extra;"
                                                   "DELETE FROM pot"));
    // A batch, two cookings, three of a week that is kept and an intake entry name the pot.
    EXPECT_EQ(findings.size(), 7);
    EXPECT_TRUE(hasCode(findings, u"lost-reference"));
    EXPECT_EQ(worstOf(findings), Finding::Severity::Stop);
}

TEST_F(VerifyTest, AnIndexThatDisagreesWithItsTableIsDamage) {
    // quick_check at opening does not compare indices with tables; verify() does.
    const std::unique_ptr<Workbook> workbook = reopen();
    QByteArray bytes = bytesOf(workbookPath());
    int replaced = 0;
    for (qsizetype at = bytes.indexOf("2024-03-12"); at >= 0;
         at = bytes.indexOf("2024-03-12", at)) {
        if (replaced++ == 0)
            bytes.replace(at, 10, "2024-03-11");
        else
            ++at;
    }
    ASSERT_GT(replaced, 2);
    QFile file(workbookPath());
    ASSERT_TRUE(file.open(QIODevice::ReadWrite));
    ASSERT_EQ(file.write(bytes), bytes.size());
    file.close();
    Result<std::unique_ptr<Workbook>> second = Workbook::open(workbookPath(), m_clock);
    ASSERT_TRUE(second);
    EXPECT_TRUE(hasCode((*second)->verify(), u"file-damaged"));
}

} // namespace
} // namespace ladlework::store
