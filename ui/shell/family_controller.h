#pragma once

#include "casebook/casebook.h"
#include "ui/shared/screen_context.h"

#include <QObject>
#include <QTimer>
#include <memory>

namespace ladlework::ui {

/// The family on screen: keeps its casebook up to date with the workbook and with the calendar.
/// When the records cannot be read or worked out the last casebook stays and broke() says why.
class FamilyController final : public QObject {
    Q_OBJECT
public:
    FamilyController(const ScreenContext& context, QObject* parent);

    /// Chooses a family; an id of 0 or one that is not there chooses none.
    void setCurrent(FamilyId family);
    [[nodiscard]] FamilyId current() const { return m_current; }
    /// nullptr while no family is chosen.
    [[nodiscard]] std::shared_ptr<const casebook::Casebook> casebook() const { return m_casebook; }

    /// Reads the family again.
    void reload();
    /// Compares the calendar with what is shown; called every half minute.
    void checkDay();

Q_SIGNALS:
    /// Another family, or none.
    void currentChanged();
    /// A new casebook of the family on screen.
    void casebookChanged();
    /// The day changed in the family's or the practice's time zone.
    void dayChanged();
    void broke(const QString& sentence);

private:
    /// False when there is nothing new to show; what breaks is told, never thrown.
    bool read();
    bool readRecords();

    const ScreenContext& m_context;
    FamilyId m_current;
    std::shared_ptr<const casebook::Casebook> m_casebook;
    QDate m_practiceDay;
    QTimer m_dayTimer;
};

} // namespace ladlework::ui
