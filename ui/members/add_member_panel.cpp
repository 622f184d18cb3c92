#include "ui/members/add_member_panel.h"

#include "ui/shared/day_edit.h"
#include "ui/shared/day_text.h"
#include "ui/shared/problem_line.h"
#include "ui/shared/text_field.h"

#include <QFormLayout>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLocale>
#include <QPushButton>
#include <QVBoxLayout>

namespace ladlework::ui {

AddMemberPanel::AddMemberPanel(const ScreenContext& context, QWidget* parent)
    : QWidget(parent), m_context(context), m_words(new QLabel(this)),
      m_cancel(new QPushButton(tr("Not now"), this)), m_name(new TextField(this)),
      m_birth(new DayEdit(this)), m_problem(new ProblemLine(this)) {
    auto* section = new Section(tr("Add a member"), this);
    m_words->setWordWrap(true);
    m_words->setForegroundRole(QPalette::PlaceholderText);
    section->body()->addWidget(m_words);
    auto* form = new QFormLayout;
    form->addRow(tr("&Name"), m_name);
    form->addRow(tr("&Born on"), m_birth);
    m_name->setAccessibleName(tr("Name of the new member"));
    m_birth->setAccessibleName(tr("Birth date of the new member"));
    m_birth->setMayBeEmpty(true);
    m_birth->setPlaceholderText(tr("such as %1").arg(printDay(QDate(1984, 5, 17), QLocale())));
    section->body()->addLayout(form);
    section->body()->addWidget(m_problem);
    auto* add = new QPushButton(tr("Add member"), this);
    add->setProperty("primary", true);
    auto* row = new QHBoxLayout;
    row->addWidget(add);
    row->addWidget(m_cancel);
    row->addStretch();
    section->body()->addLayout(row);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(section);
    layout->addStretch(1);
    connect(add, &QPushButton::clicked, this, &AddMemberPanel::add);
    connect(m_cancel, &QPushButton::clicked, this, &AddMemberPanel::leave);
    connect(m_name, &QLineEdit::returnPressed, m_birth, qOverload<>(&QWidget::setFocus));
    connect(m_birth, &QLineEdit::returnPressed, add, &QPushButton::click);
}

void AddMemberPanel::setFamily(FamilyId family, QDate today, bool first) {
    m_family = family;
    m_words->setText(first ? tr("Nobody is in this family yet. Begin with the person who asked for "
                                "help; the birth date decides the age band, and with it the usual "
                                "target.")
                           : tr("The birth date decides the age band, and with it the usual "
                                "target."));
    m_cancel->setVisible(!first);
    m_birth->setToday(today);
    m_birth->setRange({}, today);
}

void AddMemberPanel::start() {
    m_problem->clear();
    m_name->setStored({});
    m_name->clear();
    m_birth->setDay({});
    m_name->setFocus();
}

bool AddMemberPanel::isInUse() const {
    return !m_name->trimmed().isEmpty() || m_birth->day().isValid() || m_name->hasFocus() ||
           m_birth->hasFocus();
}

QWidget* AddMemberPanel::firstField() const {
    return m_name;
}

void AddMemberPanel::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape && m_cancel->isVisible())
        Q_EMIT leave();
    else
        QWidget::keyPressEvent(event);
}

void AddMemberPanel::add() {
    people::Member member;
    member.family = m_family;
    member.name = m_name->trimmed();
    member.birth = m_birth->day();
    MemberId id;
    const Outcome outcome = m_context.workbook.act(
        tr("Added %1").arg(member.name), [&](store::Action& action) -> Outcome {
            const Result<MemberId> result = m_context.workbook.families().addMember(action, member);
            if (!result)
                return passOn(result);
            id = *result;
            return {};
        });
    if (!m_problem->take(outcome)) {
        (outcome.error().place == u"name" ? static_cast<QWidget*>(m_name) : m_birth)->setFocus();
        return;
    }
    m_name->clear();
    m_birth->setDay({});
    Q_EMIT added(id);
}

} // namespace ladlework::ui
