#include "ui/shell/phases_model.h"

namespace ladlework::ui {

PhasesModel::PhasesModel(const ScreenContext& context, QObject* parent)
    : QAbstractTableModel(parent), m_context(context),
      m_phases(context.workbook.practice().phases()) {}

int PhasesModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_phases.size());
}

int PhasesModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(ColumnCount);
}

bool* PhasesModel::ruleAt(kitchen::PhaseRules& rules, int column) {
    switch (column) {
    case StrainHerbsColumn:
        return &rules.strainHerbs;
    case StrainVegetablesColumn:
        return &rules.strainVegetables;
    case StrainPeppercornsColumn:
        return &rules.strainPeppercorns;
    case GroundPepperColumn:
        return &rules.groundPepper;
    case BoneBrothColumn:
        return &rules.boneBroth;
    default:
        return nullptr;
    }
}

QVariant PhasesModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    const people::Phase& phase = m_phases[index.row()];
    if (index.column() == NameColumn)
        return role == Qt::DisplayRole || role == Qt::EditRole ? QVariant(phase.name) : QVariant();
    kitchen::PhaseRules rules = phase.rules;
    const bool* rule = ruleAt(rules, index.column());
    if (role == Qt::CheckStateRole)
        return static_cast<int>(*rule ? Qt::Checked : Qt::Unchecked);
    if (role == Qt::AccessibleTextRole)
        return tr("%1, %2").arg(phase.name,
                                headerData(index.column(), Qt::Horizontal, Qt::DisplayRole)
                                    .toString()
                                    .replace(u'\n', u' '));
    return {};
}

bool PhasesModel::setData(const QModelIndex& index, const QVariant& value, int role) {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return false;
    people::Phase phase = m_phases[index.row()];
    if (index.column() == NameColumn && role == Qt::EditRole) {
        const QString name = value.toString().trimmed();
        if (name == phase.name)
            return false;
        const QString sentence = tr("Renamed the phase %1 to %2").arg(phase.name, name);
        phase.name = name;
        return change(phase, sentence);
    }
    bool* rule = role == Qt::CheckStateRole ? ruleAt(phase.rules, index.column()) : nullptr;
    if (rule == nullptr)
        return false;
    *rule = value.toInt() == Qt::Checked;
    return change(phase, tr("Changed the rules of the phase %1").arg(phase.name));
}

bool PhasesModel::act(const QString& sentence, const std::function<Outcome(store::Action&)>& work) {
    const Outcome outcome = m_context.workbook.act(sentence, work);
    Q_EMIT said(outcome ? QString() : outcome.error().sentence);
    return outcome.has_value();
}

bool PhasesModel::change(const people::Phase& phase, const QString& sentence) {
    return act(sentence, [&](store::Action& action) {
        return m_context.workbook.practice().changePhase(action, phase);
    });
}

Qt::ItemFlags PhasesModel::flags(const QModelIndex& index) const {
    if (!index.isValid())
        return Qt::NoItemFlags;
    const Qt::ItemFlags common = Qt::ItemIsEnabled | Qt::ItemIsSelectable;
    return common | (index.column() == NameColumn ? Qt::ItemIsEditable : Qt::ItemIsUserCheckable);
}

QVariant PhasesModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole)
        return {};
    switch (section) {
    case NameColumn:
        return tr("Phase");
    case StrainHerbsColumn:
        return tr("Strain\nherbs");
    case StrainVegetablesColumn:
        return tr("Strain\nvegetables");
    case StrainPeppercornsColumn:
        return tr("Strain\npeppercorns");
    case GroundPepperColumn:
        return tr("Ground pepper\nmay be used");
    case BoneBrothColumn:
        return tr("Bone broth\nmay be drunk");
    default:
        return {};
    }
}

void PhasesModel::refresh() {
    const QList<people::Phase> phases = m_context.workbook.practice().phases();
    if (phases.size() == m_phases.size()) {
        m_phases = phases;
        if (!m_phases.isEmpty())
            Q_EMIT dataChanged(index(0, 0), index(rowCount() - 1, ColumnCount - 1));
        return;
    }
    beginResetModel();
    m_phases = phases;
    endResetModel();
}

void PhasesModel::addPhase() {
    people::Phase phase;
    phase.name = tr("New phase");
    phase.position = m_phases.isEmpty() ? 0 : m_phases.last().position + 1;
    if (!m_phases.isEmpty())
        phase.rules = m_phases.last().rules;
    act(tr("Added a phase"), [&](store::Action& action) -> Outcome {
        const Result<PhaseId> id = m_context.workbook.practice().addPhase(action, phase);
        if (!id)
            return passOn(id);
        return {};
    });
}

void PhasesModel::removePhase(int row) {
    const people::Phase phase = m_phases.value(row);
    act(tr("Removed the phase %1").arg(phase.name), [&](store::Action& action) {
        return m_context.workbook.practice().removePhase(action, phase.id);
    });
}

void PhasesModel::movePhase(int row, int way) {
    const int other = row + way;
    if (row < 0 || other < 0 || row >= rowCount() || other >= rowCount())
        return;
    people::Phase moved = m_phases[row];
    people::Phase passed = m_phases[other];
    std::swap(moved.position, passed.position);
    act(tr("Moved the phase %1").arg(moved.name), [&](store::Action& action) -> Outcome {
        auto& practice = m_context.workbook.practice();
        return practice.changePhase(action, moved).and_then([&] {
            return practice.changePhase(action, passed);
        });
    });
}

} // namespace ladlework::ui
