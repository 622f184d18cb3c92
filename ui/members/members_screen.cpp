#include "ui/members/members_screen.h"

#include "ui/members/add_member_panel.h"
#include "ui/members/caution_section.h"
#include "ui/members/climb_section.h"
#include "ui/members/containers_section.h"
#include "ui/members/family_section.h"
#include "ui/members/hours_section.h"
#include "ui/members/member_list_model.h"
#include "ui/members/person_section.h"
#include "ui/members/retry_section.h"
#include "ui/members/tolerance_section.h"
#include "ui/members/vessels_section.h"
#include "ui/paint/theme.h"
#include "ui/shared/character_width.h"
#include "ui/shared/page_scroll.h"

#include <QAction>
#include <QHBoxLayout>
#include <QListView>
#include <QPushButton>
#include <QScrollArea>
#include <QStackedWidget>
#include <QVBoxLayout>

namespace ladlework::ui {

namespace {

QScrollArea* scrolled(QWidget* parent, std::initializer_list<QWidget*> sections) {
    auto* page = new QWidget(parent);
    auto* layout = new QVBoxLayout(page);
    layout->setContentsMargins(0, 0, step(*parent), 0);
    layout->setSpacing(step(*parent));
    for (QWidget* section : sections)
        layout->addWidget(section);
    layout->addStretch(1);
    auto* area = new PageScroll(page, parent);
    area->setMinimumWidth(1); // narrower than its page it scrolls sideways too
    return area;
}

} // namespace

MembersScreen::MembersScreen(const ScreenContext& context, QWidget* parent)
    : FamilyScreen(context, parent), m_model(new MemberListModel(this)),
      m_list(new QListView(this)), m_pages(new QStackedWidget(this)) {
    m_list->setModel(m_model);
    m_list->setAccessibleName(tr("Members of the family"));
    m_list->setSpacing(1);
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_list->setTextElideMode(Qt::ElideRight);
    constexpr int charactersWide = 30;
    CharacterWidth::hold(*m_list, charactersWide);
    auto* addButton = new QPushButton(tr("Add a member"), this);
    auto* left = new QVBoxLayout;
    left->addWidget(m_list, 1);
    left->addWidget(addButton);
    auto* layout = new QHBoxLayout(this);
    layout->setSpacing(2 * step(*this));
    layout->addLayout(left);
    layout->addWidget(m_pages, 1);
    makePages();
    makeActions();
    connect(addButton, &QPushButton::clicked, this, &MembersScreen::addMember);
    connect(m_list->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            [this](const QModelIndex& current) { showRow(current.row()); });
}

void MembersScreen::makePages() {
    m_person = new PersonSection(context(), this);
    m_climb = new ClimbSection(context(), this);
    m_tolerance = new ToleranceSection(context(), this);
    m_retry = new RetrySection(context(), this);
    m_caution = new CautionSection(context(), this);
    m_family = new FamilySection(context(), this);
    m_hours = new HoursSection(context(), this);
    m_vessels = new VesselsSection(context(), this);
    m_containers = new ContainersSection(context(), this);
    m_add = new AddMemberPanel(context(), this);
    m_memberPage = scrolled(this, {m_person, m_climb, m_tolerance, m_retry, m_caution});
    m_familyPage = scrolled(this, {m_family, m_hours, m_vessels, m_containers});
    for (QWidget* page : std::initializer_list<QWidget*>{m_memberPage, m_familyPage, m_add})
        m_pages->addWidget(page);
    connect(m_tolerance, &ToleranceSection::retryWanted, this,
            [this](const people::Subject& subject) {
                m_retry->plan(subject);
                m_memberPage->ensureWidgetVisible(m_retry);
            });
    connect(m_add, &AddMemberPanel::added, this, [this](MemberId member) {
        m_list->setCurrentIndex(m_model->index(m_model->rowOf(member)));
        showRow(m_model->rowOf(member));
        showField(QStringLiteral("target")); // what comes next for a new member
    });
    connect(m_add, &AddMemberPanel::leave, this, [this] {
        showRow(m_list->currentIndex().row());
        m_list->setFocus();
    });
}

void MembersScreen::makeActions() {
    auto* add = new QAction(tr("Add a member"), this);
    add->setShortcut(QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_A));
    add->setStatusTip(tr("Takes another person into this family"));
    connect(add, &QAction::triggered, this, &MembersScreen::addMember);
    auto* remove = new QAction(tr("Remove the chosen member"), this);
    remove->setStatusTip(tr("Removes a member with notes, ladder and log; Undo brings it back"));
    connect(remove, &QAction::triggered, this, &MembersScreen::removeMember);
    auto* tolerance = new QAction(tr("Write a tolerance note"), this);
    tolerance->setShortcut(QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_T));
    tolerance->setStatusTip(
        tr("Goes to the line that takes a note on an animal, cut or ingredient"));
    connect(tolerance, &QAction::triggered, this,
            [this] { showField(QStringLiteral("tolerances")); });
    auto* kitchen = new QAction(tr("Go to the family and its kitchen"), this);
    kitchen->setShortcut(QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_K));
    kitchen->setStatusTip(
        tr("Contact, review day, measures, free hours, altitude and the vessels"));
    connect(kitchen, &QAction::triggered, this, [this] {
        showFamilyRow();
        m_list->setFocus();
    });
    addActions({add, remove, tolerance, kitchen});
}

void MembersScreen::refresh(bool sameFamily) {
    const MemberId before = sameFamily ? chosen() : MemberId{};
    const bool familyRow = sameFamily && m_list->currentIndex().isValid() && !before.isStored();
    m_model->setCasebook(sharedBook());
    const int row = familyRow ? m_model->rowCount() - 1 : m_model->rowOf(before);
    m_list->setCurrentIndex(m_model->index(row));
    if (sameFamily && m_pages->currentWidget() == m_add && m_add->isInUse())
        return;
    if (book().standings().empty() && !familyRow)
        showAddPanel(); // without taking the focus: nobody asked for it yet
    else
        showRow(row);
}

MemberId MembersScreen::chosen() const {
    return m_model->memberAt(m_list->currentIndex().row());
}

void MembersScreen::showRow(int row) {
    if (const casebook::Standing* standing = book().standing(m_model->memberAt(row))) {
        showMember(*standing);
        return;
    }
    m_family->show(book());
    m_hours->show(book());
    m_vessels->show(book());
    m_containers->show(book());
    m_pages->setCurrentWidget(m_familyPage);
    setFindings({});
}

void MembersScreen::showMember(const casebook::Standing& standing) {
    m_person->show(sharedBook(), standing);
    m_climb->show(book(), standing);
    m_tolerance->show(book(), standing);
    m_retry->show(sharedBook(), standing);
    m_caution->show(book(), standing);
    m_pages->setCurrentWidget(m_memberPage);
    setFindings(standing.findings);
}

void MembersScreen::showAddPanel() {
    m_add->setFamily(book().records().family.id, book().today(), book().standings().empty());
    m_pages->setCurrentWidget(m_add);
    setFindings({});
}

void MembersScreen::addMember() {
    showAddPanel();
    m_add->start();
}

void MembersScreen::showFamilyRow() {
    m_list->setCurrentIndex(m_model->index(m_model->rowCount() - 1));
    showRow(m_model->rowCount() - 1);
}

void MembersScreen::removeMember() {
    const casebook::Standing* standing = book().standing(chosen());
    if (!standing)
        return;
    context().act(this, tr("Removed %1").arg(standing->member.name), [&](store::Action& action) {
        return context().workbook.families().removeMember(action, standing->member.id);
    });
}

void MembersScreen::showField(const QString& field) {
    if (field == u"decision" || field == u"value") {
        Q_EMIT screenWanted(QStringLiteral("progress"));
        return;
    }
    QWidget* family = field == u"vessel"       ? m_vessels->firstField()
                      : field == u"usualHours" ? m_hours->firstField()
                                               : m_family->field(field);
    if (family) {
        showFamilyRow();
        focusOn(*m_familyPage, *family);
        return;
    }
    QWidget* widget = m_person->field(field);
    if (!widget)
        widget = m_climb->field(field);
    if (!widget && field == u"tolerances")
        widget = m_tolerance->firstField();
    if (!widget && field == u"retryPlans")
        widget = m_retry->firstField();
    if (!widget && field == u"cautions")
        widget = m_caution->firstField();
    if (!widget)
        return;
    if (m_pages->currentWidget() != m_memberPage && !book().standings().empty()) {
        m_list->setCurrentIndex(m_model->index(0));
        showRow(0);
    }
    if (!widget->isVisibleTo(m_memberPage)) // an infant has no target
        widget = m_person->field(QStringLiteral("name"));
    focusOn(*m_memberPage, *widget);
}

void MembersScreen::focusOn(QScrollArea& page, QWidget& field) {
    page.ensureWidgetVisible(&field);
    field.setFocus(Qt::OtherFocusReason);
}

QWidget* MembersScreen::firstField() {
    return m_pages->currentWidget() == m_add ? m_add->firstField() : m_list;
}

} // namespace ladlework::ui
