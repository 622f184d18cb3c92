#pragma once

#include "foundation/finding.h"
#include "quantity/measure.h"

#include <QWidget>

class QLabel;
class QToolButton;

namespace ladlework::ui {

/// The mark of a severity as a small widget; its accessible name is the word.
class FindingMark final : public QWidget {
    Q_OBJECT
public:
    explicit FindingMark(Finding::Severity severity, QWidget* parent = nullptr);
    [[nodiscard]] QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    Finding::Severity m_severity;
};

/// One finding: mark, word, sentence, the number against its limit; why and source on request; a
/// way to the input that causes it.
class FindingLine final : public QWidget {
    Q_OBJECT
public:
    FindingLine(const Finding& finding, quantity::MeasureSystem measures,
                QWidget* parent = nullptr);

Q_SIGNALS:
    void fieldWanted(const QString& field);
    /// Why and source were shown or folded: the line has another height.
    void heightChanged();

private:
    QLabel* makeDetails(const Finding& finding);
};

/// "2,140 mL/kg, limit 2,086 mL/kg"; volumes and masses as the kitchen measures them, unless that
/// would make the two look alike. Empty when the finding lacks either.
QString numberAgainstLimit(const Finding& finding, quantity::MeasureSystem measures);

} // namespace ladlework::ui
