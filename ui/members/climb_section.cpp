#include "ui/members/climb_section.h"

#include "ui/members/ladder_form.h"
#include "ui/members/target_form.h"
#include "ui/paint/theme.h"
#include "ui/shared/section.h"

#include <QLabel>
#include <QVBoxLayout>

namespace ladlework::ui {

ClimbSection::ClimbSection(const ScreenContext& context, QWidget* parent)
    : QWidget(parent), m_targetSection(new Section(tr("Target"), this)),
      m_refer(new QLabel(tr("Under 6 months there is no target and no ladder. Refer to the child's "
                            "own clinician."),
                         this)),
      m_target(new TargetForm(context, this)), m_ladderSection(new Section(tr("Ladder"), this)),
      m_ladder(new LadderForm(context, this)) {
    m_refer->setWordWrap(true);
    m_targetSection->body()->addWidget(m_refer);
    m_targetSection->body()->addWidget(m_target);
    m_ladderSection->body()->addWidget(m_ladder);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(step(*this));
    layout->addWidget(m_targetSection);
    layout->addWidget(m_ladderSection);
}

void ClimbSection::show(const casebook::Casebook& book, const casebook::Standing& standing) {
    const bool infant = standing.band == AgeBand::InfantUnderSixMonths;
    m_refer->setVisible(infant);
    m_target->setVisible(!infant);
    m_ladderSection->setVisible(!infant);
    if (infant)
        return;
    m_target->show(book, standing);
    m_ladder->show(book, standing);
}

QWidget* ClimbSection::field(const QString& name) const {
    QWidget* field = m_target->field(name);
    return field ? field : m_ladder->field(name);
}

} // namespace ladlework::ui
