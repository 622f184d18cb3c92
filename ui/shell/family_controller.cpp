#include "ui/shell/family_controller.h"

#include "ui/shell/barrier_application.h"

namespace ladlework::ui {

namespace {
constexpr int dayCheckMs = 30'000;
}

FamilyController::FamilyController(const ScreenContext& context, QObject* parent)
    : QObject(parent), m_context(context),
      m_practiceDay(context.clock.today(context.workbook.practice().practice().zone)) {
    connect(&context.workbook, &store::Workbook::changed, this, &FamilyController::reload);
    connect(&m_dayTimer, &QTimer::timeout, this, &FamilyController::checkDay);
    m_dayTimer.start(dayCheckMs);
}

void FamilyController::setCurrent(FamilyId family) {
    if (family == m_current)
        return;
    m_current = family;
    m_casebook.reset();
    if (family.isStored() && !read())
        m_current = {};
    Q_EMIT currentChanged();
    if (m_casebook != nullptr)
        Q_EMIT casebookChanged();
}

void FamilyController::reload() {
    if (!m_current.isStored())
        return;
    if (read()) {
        Q_EMIT casebookChanged();
    } else if (m_casebook == nullptr) {
        m_current = {};
        Q_EMIT currentChanged();
    }
}

bool FamilyController::read() {
    bool there = false;
    const QString sentence = sentenceIfBroken([&] { there = readRecords(); });
    if (!sentence.isEmpty())
        Q_EMIT broke(sentence);
    return there;
}

bool FamilyController::readRecords() {
    Result<casebook::FamilyRecords> records = m_context.workbook.records(m_current);
    if (!records) {
        // The family is gone: an action on it was taken back, or it was removed.
        m_casebook.reset();
        return false;
    }
    const QDate today = m_context.clock.today(records->family.zone);
    m_casebook =
        std::make_shared<const casebook::Casebook>(*std::move(records), m_context.catalogue, today);
    return true;
}

void FamilyController::checkDay() {
    const QDate practiceDay = m_context.clock.today(m_context.workbook.practice().practice().zone);
    bool changed = practiceDay != m_practiceDay;
    m_practiceDay = practiceDay;
    if (m_casebook != nullptr) {
        const QDate day = m_context.clock.today(m_casebook->records().family.zone);
        if (day != m_casebook->today()) {
            changed = true;
            reload();
        }
    }
    if (changed)
        Q_EMIT dayChanged();
}

} // namespace ladlework::ui
