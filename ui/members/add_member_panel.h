#pragma once

#include "people/member.h"
#include "ui/shared/screen_context.h"
#include "ui/shared/section.h"

class QLabel;
class QPushButton;

namespace ladlework::ui {

class DayEdit;
class ProblemLine;
class TextField;

/// Takes a member into a family: a name, a birth date, Enter.
class AddMemberPanel final : public QWidget {
    Q_OBJECT
public:
    AddMemberPanel(const ScreenContext& context, QWidget* parent);
    /// `first`: the family has no members yet, which is said.
    void setFamily(FamilyId family, QDate today, bool first);
    /// Empties the fields and takes the focus.
    void start();
    /// Something is typed, or the hand is on it.
    [[nodiscard]] bool isInUse() const;
    [[nodiscard]] QWidget* firstField() const;

Q_SIGNALS:
    void added(ladlework::MemberId member);
    void leave();

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    void add();
    const ScreenContext& m_context;
    FamilyId m_family;
    QLabel* m_words;
    QPushButton* m_cancel;
    TextField* m_name;
    DayEdit* m_birth;
    ProblemLine* m_problem;
};

} // namespace ladlework::ui
