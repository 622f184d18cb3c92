#pragma once

#include "casebook/casebook.h"

#include <QWidget>

class QLabel;

namespace ladlework::ui {

class DrunkBar;

/// One member's day: what is asked, what was drunk so far, how the climb stands and why.
class MemberLine final : public QWidget {
    Q_OBJECT
public:
    explicit MemberLine(QWidget* parent);
    void show(const casebook::Standing& standing, const casebook::Casebook& book);
    using QWidget::show;

private:
    void build();
    QLabel* m_name;
    QLabel* m_about;
    QLabel* m_state;
    QLabel* m_asked;
    QLabel* m_drunk;
    DrunkBar* m_bar;
    QLabel* m_yesterday;
    QLabel* m_target;
    QLabel* m_retry;
};

/// What a member drank on a day, all entries together; nothing when none was made.
std::optional<quantity::Volume> drunkOn(const casebook::FamilyRecords& records, MemberId member,
                                        QDate day);

} // namespace ladlework::ui
