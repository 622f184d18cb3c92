#pragma once

#include "foundation/finding.h"
#include "quantity/measure.h"

#include <QFrame>

class QLabel;
class QScrollArea;
class QToolButton;
class QVBoxLayout;

namespace ladlework::ui {

/// The findings of what is on screen: mark, word, sentence, number against limit, and the source
/// on request. Folds away when there is nothing to say. Scrolls when there is much, before it takes
/// more than its part of the window.
class FindingsStrip final : public QFrame {
    Q_OBJECT
public:
    explicit FindingsStrip(QWidget* parent = nullptr);
    void setFindings(const Findings& findings);
    /// How numbers are printed; from the next findings on.
    void setMeasures(quantity::MeasureSystem measures) { m_measures = measures; }

Q_SIGNALS:
    /// The person asked to be taken to the input that causes a finding.
    void fieldWanted(const QString& field);

protected:
    void resizeEvent(QResizeEvent* event) override;
    void showEvent(QShowEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void fill();
    void fitHeight();

    Findings m_findings;
    quantity::MeasureSystem m_measures = quantity::MeasureSystem::UsCustomary;
    QLabel* m_summary;
    QToolButton* m_fold;
    QScrollArea* m_area;
    QVBoxLayout* m_lines;
};

} // namespace ladlework::ui
