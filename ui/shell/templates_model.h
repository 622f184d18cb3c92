#pragma once

#include "ui/shared/screen_context.h"

#include <QAbstractTableModel>

namespace ladlework::ui {

/// The ladder templates that the practice keeps: name and rungs, both to be typed over. Every
/// change is an action.
class TemplatesModel final : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Column { NameColumn, RungsColumn, ColumnCount };

    TemplatesModel(const ScreenContext& context, QObject* parent);

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    bool setData(const QModelIndex& index, const QVariant& value, int role) override;
    Qt::ItemFlags flags(const QModelIndex& index) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

    void refresh();
    void removeTemplate(int row);

Q_SIGNALS:
    /// What was not kept, in a sentence; empty once something was.
    void said(const QString& sentence);

private:
    bool act(const QString& sentence, const std::function<Outcome(store::Action&)>& work);
    [[nodiscard]] QString rungsText(const intake::LadderTemplate& kept) const;
    [[nodiscard]] Outcome readRungs(const QString& text, intake::LadderTemplate& kept) const;

    const ScreenContext& m_context;
    QList<intake::LadderTemplate> m_templates;
    quantity::MeasureSystem m_measures = quantity::MeasureSystem::UsCustomary;
};

} // namespace ladlework::ui
