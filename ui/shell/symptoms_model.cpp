#include "ui/shell/symptoms_model.h"

#include <algorithm>

namespace ladlework::ui {

using intake::Symptom;

SymptomsModel::SymptomsModel(const ScreenContext& context, QObject* parent)
    : QAbstractTableModel(parent), m_context(context),
      m_symptoms(context.workbook.practice().symptoms()) {}

int SymptomsModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_symptoms.size());
}

int SymptomsModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(ColumnCount);
}

QVariant SymptomsModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    const Symptom& symptom = m_symptoms.at(index.row());
    if (index.column() == NameColumn)
        return role == Qt::DisplayRole || role == Qt::EditRole ? QVariant(symptom.name)
                                                               : QVariant();
    if (role == Qt::CheckStateRole)
        return static_cast<int>(symptom.redFlag ? Qt::Checked : Qt::Unchecked);
    if (role == Qt::AccessibleTextRole)
        return tr("%1, stops the ladder").arg(symptom.name);
    return {};
}

bool SymptomsModel::setData(const QModelIndex& index, const QVariant& value, int role) {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return false;
    Symptom symptom = m_symptoms.at(index.row());
    if (index.column() == NameColumn && role == Qt::EditRole) {
        const QString name = value.toString().trimmed();
        if (name == symptom.name)
            return false;
        const QString sentence = tr("Renamed the reaction %1 to %2").arg(symptom.name, name);
        symptom.name = name;
        return change(symptom, sentence);
    }
    if (index.column() != RedFlagColumn || role != Qt::CheckStateRole)
        return false;
    symptom.redFlag = value.toInt() == Qt::Checked;
    return change(symptom,
                  symptom.redFlag
                      ? tr("Made the reaction %1 stop the ladder").arg(symptom.name)
                      : tr("Let the reaction %1 no longer stop the ladder").arg(symptom.name));
}

Qt::ItemFlags SymptomsModel::flags(const QModelIndex& index) const {
    if (!index.isValid())
        return Qt::NoItemFlags;
    const Qt::ItemFlags common = Qt::ItemIsEnabled | Qt::ItemIsSelectable;
    return common | (index.column() == NameColumn ? Qt::ItemIsEditable : Qt::ItemIsUserCheckable);
}

QVariant SymptomsModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole)
        return {};
    return section == NameColumn ? tr("Reaction") : tr("Red flag: stops the ladder");
}

bool SymptomsModel::act(const QString& sentence,
                        const std::function<Outcome(store::Action&)>& work) {
    const Outcome outcome = m_context.workbook.act(sentence, work);
    Q_EMIT said(outcome ? QString() : outcome.error().sentence);
    return outcome.has_value();
}

bool SymptomsModel::change(const Symptom& symptom, const QString& sentence) {
    return act(sentence, [&](store::Action& action) {
        return m_context.workbook.practice().changeSymptom(action, symptom);
    });
}

void SymptomsModel::refresh() {
    const QList<Symptom> symptoms = m_context.workbook.practice().symptoms();
    if (std::ranges::equal(symptoms, m_symptoms, {}, &Symptom::id, &Symptom::id)) {
        m_symptoms = symptoms;
        if (!m_symptoms.isEmpty())
            Q_EMIT dataChanged(index(0, 0), index(rowCount() - 1, ColumnCount - 1));
        return;
    }
    beginResetModel();
    m_symptoms = symptoms;
    endResetModel();
}

bool SymptomsModel::addSymptom(const QString& name) {
    Symptom symptom;
    symptom.name = name.trimmed();
    symptom.position = m_symptoms.isEmpty() ? 0 : m_symptoms.last().position + 1;
    return act(tr("Added the reaction %1").arg(symptom.name),
               [&](store::Action& action) -> Outcome {
                   const auto id = m_context.workbook.practice().addSymptom(action, symptom);
                   return id ? Outcome{} : Outcome(passOn(id));
               });
}

void SymptomsModel::removeSymptom(int row) {
    if (row < 0 || row >= rowCount())
        return;
    const Symptom symptom = m_symptoms.at(row);
    act(tr("Took the reaction %1 off the list").arg(symptom.name), [&](store::Action& action) {
        return m_context.workbook.practice().removeSymptom(action, symptom.id);
    });
}

int SymptomsModel::moveSymptom(int row, int way) {
    const int other = row + way;
    if (row < 0 || other < 0 || row >= rowCount() || other >= rowCount())
        return -1;
    Symptom moved = m_symptoms.at(row);
    Symptom passed = m_symptoms.at(other);
    std::swap(moved.position, passed.position);
    const bool done =
        act(tr("Moved the reaction %1").arg(moved.name), [&](store::Action& action) -> Outcome {
            auto& practice = m_context.workbook.practice();
            return practice.changeSymptom(action, moved).and_then([&] {
                return practice.changeSymptom(action, passed);
            });
        });
    return done ? other : -1;
}

} // namespace ladlework::ui
