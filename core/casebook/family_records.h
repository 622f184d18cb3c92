#pragma once

#include "casebook/handout_template.h"
#include "casebook/visit_note.h"
#include "intake/ladder.h"
#include "intake/ladder_template.h"
#include "intake/log.h"
#include "intake/symptom.h"
#include "intake/target.h"
#include "kitchen/batch.h"
#include "kitchen/container.h"
#include "kitchen/pot.h"
#include "people/caution.h"
#include "people/family.h"
#include "people/member.h"
#include "people/observation.h"
#include "people/phase.h"
#include "people/practice.h"
#include "people/retry_plan.h"
#include "people/tolerance.h"
#include "week/free_hours.h"
#include "week/week_plan.h"
#include "week/week_template.h"

#include <QHash>
#include <QList>

namespace ladlework::casebook {

/// Everything the workbook holds of one family, as it was read: the input of all that is derived.
struct FamilyRecords {
    people::Practice practice;
    QList<people::Phase> phases;    ///< in order of position
    intake::LadderRules houseRules; ///< what a new ladder of this practice starts with
    QList<intake::LadderTemplate> ladderTemplates; ///< by name
    QList<intake::Symptom> symptoms;               ///< the practice's list, in order of position
    QHash<QString, double> prices; ///< per kilogram, by cut or extra id, in the practice's currency
    QList<HandoutTemplate> handoutTemplates; ///< the practice's, by name
    QList<LabelStock> labelStocks;           ///< the practice's, by name
    people::Family family;
    QList<week::UsualHours> usualHours; ///< as they were entered
    QList<people::Member> members;      ///< eldest first
    QList<people::ToleranceNote> tolerances;
    QList<people::Caution> cautions;
    QList<people::RetryPlan> retryPlans;
    QList<people::Observation> observations; ///< by day
    QList<intake::Target> targets;
    QList<intake::Ladder> ladders;
    QList<intake::Decision> decisions;
    QList<intake::IntakeEntry> entries;
    QList<intake::Reaction> reactions;
    QList<kitchen::Vessel> vessels;
    QList<kitchen::Container> containers;
    QList<kitchen::Pot> pots; ///< the family's own and the practice's
    QList<kitchen::Batch> batches;
    QList<kitchen::Lot> lots;
    QList<week::WeekPlan> weeks;
    QList<week::WeekTemplate> weekTemplates; ///< by name
    QList<VisitNote> notes;                  ///< newest first
    QList<HandoutRecord> handouts;           ///< newest first, without the pages
};

} // namespace ladlework::casebook
