#pragma once

#include "week/week_plan.h"

#include <QAbstractTableModel>
#include <QHash>
#include <QStringList>
#include <optional>

namespace ladlework::ui {

/// What the board says of a pot.
struct BoardPot {
    QString name;
    QString yield; ///< "makes 2¾ quarts"
};

/// What is dragged over the board, and to which day.
struct BoardDrop {
    qsizetype placement = -1; ///< of the plan; -1 for a pot from the list
    PotId pot;                ///< of the list
    QDate day;
    friend bool operator==(const BoardDrop&, const BoardDrop&) = default;
};

/// A week of placements: a column a day, the pots of a day below one another in the order they are
/// cooked, and at least one empty place below. The model changes nothing itself: what a person
/// asks for comes out as a signal, and the changed plan comes back through setPlan().
class BoardModel final : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Role { PlacementRole = Qt::UserRole, PotNameRole, YieldRole, StartRole, ProposedRole };
    /// Of the heads of the days.
    enum HeaderRole { HoursRole = Qt::UserRole + 100, LockedRole, TodayRole };
    static constexpr int leastRows = 2;

    using QAbstractTableModel::QAbstractTableModel;

    void setPlan(const week::WeekPlan& plan, const QHash<PotId, BoardPot>& pots, QDate today);
    /// What the heads say of the free hours, by day; an empty one says nothing.
    void setHours(const QStringList& inShort, const QStringList& inWords);
    /// The plan is only proposed: its new cookings are drawn so.
    void setProposed(bool proposed, const week::WeekPlan& kept);
    [[nodiscard]] const week::WeekPlan& plan() const { return m_plan; }
    [[nodiscard]] QDate dayOf(int column) const { return m_plan.start.addDays(column); }
    /// The place of a placement in the plan; -1 for an empty cell.
    [[nodiscard]] qsizetype placementAt(const QModelIndex& index) const;
    /// Where a placement stands; invalid when it is not there.
    [[nodiscard]] QModelIndex indexOf(qsizetype placement) const;
    /// The first empty place of a day.
    [[nodiscard]] QModelIndex firstEmpty(int column) const;
    /// Rows above this one hold a pot on some day.
    [[nodiscard]] int filledRows() const;
    /// What a drag holds, when dropped on a cell; nothing when it is none of the board's.
    [[nodiscard]] std::optional<BoardDrop> dropOf(const QMimeData* data,
                                                  const QModelIndex& over) const;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                      int role) const override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;
    bool setData(const QModelIndex& index, const QVariant& value, int role) override;
    [[nodiscard]] QStringList mimeTypes() const override;
    [[nodiscard]] QMimeData* mimeData(const QModelIndexList& indexes) const override;
    [[nodiscard]] Qt::DropActions supportedDropActions() const override;
    [[nodiscard]] bool canDropMimeData(const QMimeData* data, Qt::DropAction action, int row,
                                       int column, const QModelIndex& parent) const override;
    bool dropMimeData(const QMimeData* data, Qt::DropAction action, int row, int column,
                      const QModelIndex& parent) override;

Q_SIGNALS:
    void putWanted(ladlework::PotId pot, QDate day);
    void moveWanted(qsizetype placement, QDate day);
    void startWanted(qsizetype placement, QTime start);
    /// What was typed is no time of day: the sentence.
    void startNotUnderstood(const QString& sentence);

private:
    [[nodiscard]] QString spoken(const QModelIndex& index) const;
    [[nodiscard]] QDate dropDay(int column, const QModelIndex& parent) const;

    week::WeekPlan m_plan;
    QHash<PotId, BoardPot> m_pots;
    QDate m_today;
    QList<QList<qsizetype>> m_days;
    int m_rows = leastRows;
    QStringList m_hoursInShort;
    QStringList m_hoursInWords;
    bool m_proposed = false;
    QList<week::Placement> m_kept; ///< of a proposal: what stands in the plan already
};

/// The pot as drag data, for the list of pots.
QMimeData* potMimeData(PotId pot);
/// The kind of data potMimeData() makes.
QString potMimeType();

} // namespace ladlework::ui
