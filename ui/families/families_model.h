#pragma once

#include "ui/families/attention_reader.h"

#include <QAbstractListModel>

namespace ladlework::ui {

/// The families as the list shows them: active ones by what needs attention, then by name; resting
/// and finished ones folded at the end under one row. A search looks through all of them.
class FamiliesModel final : public QAbstractListModel {
    Q_OBJECT
public:
    enum Role {
        FamilyRole = Qt::UserRole, ///< qint64: the id; 0 for the fold
        WordsRole,                 ///< the second line
        SeverityRole,              ///< int of Finding::Severity; invalid when all is well
        IsFoldRole,
        IsOpenRole, ///< of the fold
        IsActiveRole,
    };

    FamiliesModel(const AttentionReader& reader, QObject* parent);

    int rowCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    Qt::ItemFlags flags(const QModelIndex& index) const override;

    /// Only families whose name holds every word of the text.
    void setSearch(const QString& text);
    /// Opens or folds the resting and finished ones.
    void setOpen(bool open);
    [[nodiscard]] bool isOpen() const { return m_open; }
    /// An invalid index when the family is not shown.
    [[nodiscard]] QModelIndex indexOf(FamilyId family) const;
    [[nodiscard]] FamilyId familyAt(const QModelIndex& index) const;

private:
    void rearrange();
    void moveTo(const QList<FamilyId>& wanted);
    [[nodiscard]] QList<FamilyId> wantedRows() const;
    [[nodiscard]] bool matches(const QString& name) const;
    [[nodiscard]] QVariant foldData(int role) const;
    [[nodiscard]] qsizetype asideCount() const;

    const AttentionReader& m_reader;
    QList<FamilyId> m_rows; ///< the fold is the id 0
    QStringList m_search;
    bool m_open = false;
};

/// The few words of a family's second line: the worst finding, "Resting", or nothing.
QString shortWords(const FamilySummary& summary);

} // namespace ladlework::ui
