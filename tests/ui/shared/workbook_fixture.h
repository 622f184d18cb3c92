#pragma once

#include "ui/shared/screen_context.h"
#include "ui/shared/scripted_desk.h"

#include <QApplication>
#include <QDeadlineTimer>
#include <QSettings>
#include <QTemporaryDir>

#include <gtest/gtest.h>
#include <memory>

namespace ladlework::ui {

/// A workbook in a folder of its own, a clock that stands on Wednesday 4 November 2026 in the
/// afternoon (UTC), a desk with answers, and settings that touch nothing of the computer.
class WorkbookFixture : public ::testing::Test {
protected:
    void SetUp() override {
        QSettings::setPath(QSettings::IniFormat, QSettings::UserScope, m_folder.path());
        Result<kitchen::Catalogue> catalogue = kitchen::Catalogue::load();
        ASSERT_TRUE(catalogue) << toLine(catalogue.error()).toStdString();
        m_catalogue = std::make_unique<kitchen::Catalogue>(*std::move(catalogue));
        auto workbook = store::Workbook::create(path(), m_clock);
        ASSERT_TRUE(workbook) << toLine(workbook.error()).toStdString();
        m_workbook = *std::move(workbook);
        m_context.reset(new ScreenContext{*m_workbook, *m_catalogue, m_clock, m_desk});
    }

    [[nodiscard]] QString path() const {
        return m_folder.filePath(QStringLiteral("Test practice.ladlework"));
    }

    FamilyId addFamily(const QString& name,
                       people::Family::Status status = people::Family::Status::Active,
                       QDate reviewOn = {}) {
        people::Family family;
        family.name = name;
        family.status = status;
        family.since = m_today.addDays(-30);
        family.reviewOn = reviewOn;
        FamilyId made;
        act([&](store::Action& action) {
            return m_workbook->families().addFamily(action, family).map([&](FamilyId id) {
                made = id;
            });
        });
        return made;
    }

    MemberId addMember(FamilyId family, const QString& name, QDate birth = QDate(1990, 5, 1)) {
        people::Member member;
        member.family = family;
        member.name = name;
        member.birth = birth;
        MemberId made;
        act([&](store::Action& action) {
            return m_workbook->families().addMember(action, member).map([&](MemberId id) {
                made = id;
            });
        });
        return made;
    }

    /// A ladder of 1, 2, 3 cups from ten days ago.
    void addLadder(MemberId member) {
        intake::Ladder ladder;
        ladder.member = member;
        ladder.from = m_today.addDays(-10);
        for (const double cups : {1.0, 2.0, 3.0})
            ladder.rungs << quantity::Volume::fromCups(cups);
        act([&](store::Action& action) {
            return m_workbook->climbs().addLadder(action, ladder).map([](LadderId) {});
        });
    }

    void drink(MemberId member, QDate day, quantity::Volume volume) {
        intake::IntakeEntry entry;
        entry.member = member;
        entry.day = day;
        entry.drunk = volume;
        entry.enteredUtc = m_clock.nowUtc();
        act([&](store::Action& action) {
            return m_workbook->log().addEntry(action, entry).map([](IntakeId) {});
        });
    }

    void act(const std::function<Outcome(store::Action&)>& work) {
        const Outcome outcome = m_workbook->act(QStringLiteral("Prepared the test"), work);
        ASSERT_TRUE(outcome) << toLine(outcome.error()).toStdString();
    }

    /// Lets the window work until the condition holds; false after two seconds.
    static bool waitFor(const std::function<bool()>& condition) {
        const QDeadlineTimer deadline(2000);
        while (!condition()) {
            if (deadline.hasExpired())
                return false;
            QApplication::processEvents(QEventLoop::AllEvents, 20);
        }
        return true;
    }

    const QDate m_today{2026, 11, 4};
    QTemporaryDir m_folder;
    FixedClock m_clock{QDateTime(m_today, QTime(15, 0), Qt::UTC)};
    ScriptedDesk m_desk;
    std::unique_ptr<kitchen::Catalogue> m_catalogue;
    std::unique_ptr<store::Workbook> m_workbook;
    std::unique_ptr<ScreenContext> m_context;
};

} // namespace ladlework::ui
