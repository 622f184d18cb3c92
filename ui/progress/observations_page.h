#pragma once

#include "casebook/casebook.h"
#include "ui/shared/screen_context.h"

#include <QWidget>
#include <memory>

class QComboBox;
class QLabel;
class QLineEdit;
class QTableView;

namespace ladlework::ui {

class DayEdit;
class ObservationsModel;
class ProblemLine;
class SeriesChart;

/// The series that the practitioner keeps of one member: the weight, or whatever she names. A line
/// to add to it, a drawing, and every value in a list.
class ObservationsPage final : public QWidget {
    Q_OBJECT
public:
    ObservationsPage(const ScreenContext& context, QWidget* parent);
    void show(std::shared_ptr<const casebook::Casebook> casebook,
              const casebook::Standing& standing);
    using QWidget::show;
    [[nodiscard]] QWidget* firstField() const;

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    QWidget* makeLine();
    void connectParts();
    void showKinds();
    void showSeries();
    void add();
    void change(const people::Observation& observation);
    void removeChosen();
    [[nodiscard]] QString kind() const;

    const ScreenContext& m_context;
    std::shared_ptr<const casebook::Casebook> m_casebook;
    people::Member m_member;
    QList<people::Observation> m_own;
    QComboBox* m_kind;
    DayEdit* m_day;
    QLineEdit* m_value;
    QLineEdit* m_unit;
    QLineEdit* m_note;
    ProblemLine* m_problem;
    SeriesChart* m_chart;
    ObservationsModel* m_model;
    QTableView* m_table;
    QLabel* m_empty;
};

} // namespace ladlework::ui
