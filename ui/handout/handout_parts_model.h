#pragma once

#include "casebook/handout_template.h"

#include <QAbstractListModel>

namespace ladlework::ui {

/// The parts of the pages in their order, each with a box: printed or not. The box of the cautions
/// stays ticked as long as a pot or a ladder is printed.
class HandoutPartsModel final : public QAbstractListModel {
    Q_OBJECT
public:
    using QAbstractListModel::QAbstractListModel;

    void setSections(const QList<casebook::HandoutSection>& sections);
    [[nodiscard]] const QList<casebook::HandoutSection>& sections() const { return m_sections; }

    /// Moves a part by this many places, as far as there are any; gives its new row.
    int move(int row, int places);
    /// A new page of own words below a row; gives its row.
    int addPage(int belowRow);
    /// Only pages of own words can be removed; every other part can be left out.
    [[nodiscard]] bool mayRemove(int row) const;
    void remove(int row);
    /// The words and the title of a row; ignored for a row that is not there.
    void setWords(int row, const QString& words);
    void setTitle(int row, const QString& title);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    bool setData(const QModelIndex& index, const QVariant& value, int role) override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;

Q_SIGNALS:
    /// The person changed something; not said for setSections().
    void edited();

private:
    /// The cautions that cannot be left out now.
    [[nodiscard]] bool isHeld(int row) const;

    QList<casebook::HandoutSection> m_sections;
};

/// "The week at a glance": what a part is called on the screen.
QString partName(const casebook::HandoutSection& section);

} // namespace ladlework::ui
