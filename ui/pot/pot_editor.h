#pragma once

#include "casebook/casebook.h"
#include "ui/shared/amount_edit.h"

#include <QWidget>
#include <optional>

class QComboBox;

namespace ladlework::ui {

class NoteEdit;
class PotIngredients;
class SaltEdit;
class TextField;

/// The fields of one pot. Each keystroke gives a new draft to reckon with; what the person is done
/// with is handed over to be kept.
class PotEditor final : public QWidget {
    Q_OBJECT
public:
    PotEditor(const kitchen::Catalogue& catalogue, QWidget* parent);
    void show(const kitchen::Pot& pot, const casebook::Casebook& book);
    using QWidget::show;
    /// The water as the drawing sets it.
    void setWater(quantity::Volume water);
    /// The pot with all that is typed so far.
    [[nodiscard]] kitchen::Pot draft() const;
    [[nodiscard]] QWidget* field(const QString& name) const;
    /// Takes the focus to the name, ready to be typed over.
    void editName();

Q_SIGNALS:
    void draftChanged();
    void committed();
    /// A price was written: per kilogram, or nothing to take it away.
    void priced(const QString& item, std::optional<double> perKilogram);
    /// What was typed could not be read.
    void refused(const QString& sentence);

private:
    void connectEdits();
    void showVessels(const casebook::Casebook& book);

    kitchen::Pot m_pot;
    quantity::MeasureSystem m_measures = quantity::MeasureSystem::UsCustomary;
    // Made in this order, which is the order of the Tab key.
    TextField* m_name;
    VolumeEdit* m_water;
    DurationEdit* m_simmer;
    SaltEdit* m_salt;
    QComboBox* m_brew;
    QComboBox* m_vessel;
    PotIngredients* m_ingredients;
    NoteEdit* m_note;
};

} // namespace ladlework::ui
