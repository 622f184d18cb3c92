#pragma once

#include "intake/patterns.h"
#include "kitchen/catalogue.h"

#include <QAbstractTableModel>

namespace ladlework::ui {

/// What a member took against what was felt, a row for each animal, cut and ingredient, in sober
/// words.
class PatternsModel final : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Column { SubjectColumn, WithColumn, WithoutColumn, RatioColumn, WordsColumn, ColumnCount };

    PatternsModel(const kitchen::Catalogue& catalogue, QObject* parent);
    void setPatterns(const QList<intake::Pattern>& patterns);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                      int role) const override;

private:
    [[nodiscard]] QString words(const intake::Pattern& pattern) const;
    const kitchen::Catalogue& m_catalogue;
    QList<intake::Pattern> m_patterns;
};

} // namespace ladlework::ui
