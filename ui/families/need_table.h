#pragma once

#include "ui/families/need_model.h"

#include <QTableView>

namespace ladlework::ui {

/// A table of needs; Enter or a click leads to the family and screen that deals with one.
class NeedTable final : public QTableView {
    Q_OBJECT
public:
    NeedTable(const QString& name, QWidget* parent);
    void setNeeds(const QList<Need>& needs);
    /// As high as its rows; it scrolls where there is less room.
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

Q_SIGNALS:
    void wanted(FamilyId family, const QString& screen);

protected:
    void resizeEvent(QResizeEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    void fitColumns();
    void choose(const QModelIndex& index);
    NeedModel* m_model;
};

} // namespace ladlework::ui
