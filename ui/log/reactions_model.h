#pragma once

#include "casebook/casebook.h"
#include "ui/log/day_cells.h"

#include <QAbstractTableModel>

namespace ladlework::ui {

/// The reactions of one member on one day; a cell that is changed is handed on as a whole reaction.
class ReactionsModel final : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Column {
        SymptomColumn,
        StrengthColumn,
        BeganColumn,
        LastedColumn,
        NoteColumn,
        ColumnCount
    };

    using QAbstractTableModel::QAbstractTableModel;
    void show(const casebook::FamilyRecords& records, MemberId member, QDate day);
    [[nodiscard]] const intake::Reaction* reactionAt(int row) const;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                      int role) const override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;
    bool setData(const QModelIndex& index, const QVariant& value, int role) override;

Q_SIGNALS:
    void reactionChanged(const ladlework::intake::Reaction& reaction);
    /// What was typed could not be read.
    void refused(const QString& sentence);

private:
    [[nodiscard]] static QString began(const intake::Reaction& reaction);
    [[nodiscard]] bool read(intake::Reaction& reaction, int column, const QString& text);
    QList<intake::Reaction> m_reactions;
    QList<SymptomWord> m_words;
};

} // namespace ladlework::ui
