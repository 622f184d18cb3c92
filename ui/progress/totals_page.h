#pragma once

#include "casebook/casebook.h"

#include <QWidget>
#include <memory>

class QComboBox;
class QLabel;
class QVBoxLayout;

namespace ladlework::ui {

/// What one member takes with stock on a mean day, beside the published reference intakes: as
/// information, without a judgement.
class TotalsPage final : public QWidget {
    Q_OBJECT
public:
    explicit TotalsPage(QWidget* parent);
    void show(std::shared_ptr<const casebook::Casebook> casebook,
              const casebook::Standing& standing);
    using QWidget::show;
    [[nodiscard]] QWidget* firstField() const;

private:
    void fill();
    void addLine(const QString& title, const QString& text);

    std::shared_ptr<const casebook::Casebook> m_casebook;
    MemberId m_member;
    QComboBox* m_span;
    QLabel* m_behind;
    QVBoxLayout* m_lines;
};

} // namespace ladlework::ui
