#pragma once

#include "casebook/casebook.h"

#include <QAbstractTableModel>

namespace ladlework::ui {

/// The days of a climb in words, the latest first: asked, decided, and why.
class ClimbDaysModel final : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Column { DayColumn, AskedColumn, DecisionColumn, WhyColumn, ColumnCount };

    using QAbstractTableModel::QAbstractTableModel;
    void show(const casebook::Casebook& book, const casebook::Standing& standing);
    void clear();
    /// The row of a day; -1 when it is not there.
    [[nodiscard]] int rowOf(QDate day) const;
    [[nodiscard]] QDate dayAt(int row) const;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                      int role) const override;

private:
    struct Line {
        QDate day;
        QString asked;
        QString decision;
        QString why;
    };
    MemberId m_member;
    QList<Line> m_days;
};

/// "one rung up", "stay", "hold", ... for people.
QString decisionWords(const intake::LadderDay& day);

} // namespace ladlework::ui
