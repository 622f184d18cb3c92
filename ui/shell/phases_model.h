#pragma once

#include "ui/shared/screen_context.h"

#include <QAbstractTableModel>

namespace ladlework::ui {

/// The practice's phases in order, with their rules as boxes to tick. Every change is an action.
class PhasesModel final : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Column {
        NameColumn,
        StrainHerbsColumn,
        StrainVegetablesColumn,
        StrainPeppercornsColumn,
        GroundPepperColumn,
        BoneBrothColumn,
        ColumnCount,
    };

    PhasesModel(const ScreenContext& context, QObject* parent);

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    bool setData(const QModelIndex& index, const QVariant& value, int role) override;
    Qt::ItemFlags flags(const QModelIndex& index) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

    /// Reads the phases again.
    void refresh();
    void addPhase();
    void removePhase(int row);
    /// Moves a phase up (-1) or down (1).
    void movePhase(int row, int way);

Q_SIGNALS:
    /// What was not kept, in a sentence; empty once something was.
    void said(const QString& sentence);

private:
    bool act(const QString& sentence, const std::function<Outcome(store::Action&)>& work);
    bool change(const people::Phase& phase, const QString& sentence);
    static bool* ruleAt(kitchen::PhaseRules& rules, int column);

    const ScreenContext& m_context;
    QList<people::Phase> m_phases;
};

} // namespace ladlework::ui
