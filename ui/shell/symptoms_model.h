#pragma once

#include "ui/shared/screen_context.h"

#include <QAbstractTableModel>

namespace ladlework::ui {

/// The practice's own list of reactions in order: each with its name and whether it stops the
/// ladder. Every change is an action.
class SymptomsModel final : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Column { NameColumn, RedFlagColumn, ColumnCount };

    SymptomsModel(const ScreenContext& context, QObject* parent);

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    bool setData(const QModelIndex& index, const QVariant& value, int role) override;
    Qt::ItemFlags flags(const QModelIndex& index) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

    /// Reads the list again.
    void refresh();
    /// True when it was added at the end.
    bool addSymptom(const QString& name);
    void removeSymptom(int row);
    /// Moves a line up (-1) or down (1); its new row, or -1 when it stays.
    int moveSymptom(int row, int way);

Q_SIGNALS:
    /// What was not kept, in a sentence; empty once something was.
    void said(const QString& sentence);

private:
    bool act(const QString& sentence, const std::function<Outcome(store::Action&)>& work);
    bool change(const intake::Symptom& symptom, const QString& sentence);

    const ScreenContext& m_context;
    QList<intake::Symptom> m_symptoms;
};

} // namespace ladlework::ui
