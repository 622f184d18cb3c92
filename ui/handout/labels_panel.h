#pragma once

#include "handout/family_handout.h"
#include "ui/handout/kept_choice.h"
#include "ui/shared/amount_edit.h"

#include <QWidget>

class QCheckBox;
class QLabel;
class QSpinBox;

namespace ladlework::ui {

class MillimetreEdit;
class ProblemLine;

/// Which jars get a label, and the measures of the sheets that they are printed on. The measures of
/// a sheet that is kept under a name are changed in the workbook at once; the usual one is as it
/// is.
class LabelsPanel final : public QWidget {
    Q_OBJECT
public:
    explicit LabelsPanel(QWidget* parent = nullptr);

    /// Shows a choice among what the practice keeps. Says nothing.
    void show(const handout::JarLabelChoice& choice, const casebook::FamilyRecords& records,
              bool mayChange);
    using QWidget::show;
    [[nodiscard]] handout::JarLabelChoice choice() const;
    [[nodiscard]] KeptChoice* kept() const { return m_kept; }
    /// What there is to say of the sheets shown: how many, what does not fit.
    void remark(const QString& words);
    /// Why the measures were not kept; empty: they were.
    void sayProblem(const QString& sentence);

Q_SIGNALS:
    void choiceChanged();
    /// The measures of a kept sheet, edited.
    void stockEdited(const casebook::LabelStock& stock);

private:
    QWidget* makeWhat();
    QWidget* makeMeasures();
    MillimetreEdit* makeMeasure(const QString& name, double casebook::LabelStock::*field);
    void showStock(const casebook::LabelStock& stock);
    void takeStock();

    KeptChoice* m_kept;
    QCheckBox* m_planned;
    QCheckBox* m_onHand;
    VolumeEdit* m_jar;
    QSpinBox* m_used;
    QSpinBox* m_columns;
    QSpinBox* m_rows;
    struct Measure {
        MillimetreEdit* edit;
        double casebook::LabelStock::*field;
    };
    QList<Measure> m_measures;
    QLabel* m_remark;
    QLabel* m_usual;
    ProblemLine* m_problem;
    casebook::LabelStock m_stock;
    QList<casebook::LabelStock> m_stocks;
    bool m_mayChange = true;
};

} // namespace ladlework::ui
