#pragma once

#include "intake/log.h"

#include <QAbstractTableModel>

namespace ladlework::ui {

/// All reactions of one kind.
struct ReactionKind {
    QString symptom;
    int times = 0;
    int strongest = 0;
    bool redFlag = false;
    QDate first;
    QDate last;
};

/// One for each symptom (upper and lower case are one), the most frequent first, then the one felt
/// last. The reactions are those of one member.
QList<ReactionKind> reactionKinds(const QList<intake::Reaction>& reactions);

/// The kinds of reactions of a member as a table.
class ReactionKindsModel final : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Column {
        SymptomColumn,
        TimesColumn,
        StrongestColumn,
        FirstColumn,
        LastColumn,
        ColumnCount
    };

    using QAbstractTableModel::QAbstractTableModel;
    void setKinds(QList<ReactionKind> kinds);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                      int role) const override;

private:
    QList<ReactionKind> m_kinds;
};

} // namespace ladlework::ui
