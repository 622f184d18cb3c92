#pragma once

#include "casebook/casebook.h"

#include <QWidget>

class QLabel;
class QSpinBox;
class QTableView;

namespace ladlework::ui {

class PatternsModel;
class ReactionKindsModel;
class Section;

/// What one member felt: by kind, and against what was in the stock.
class ReactionsPage final : public QWidget {
    Q_OBJECT
public:
    ReactionsPage(const kitchen::Catalogue& catalogue, QWidget* parent);
    void show(std::shared_ptr<const casebook::Casebook> casebook,
              const casebook::Standing& standing);
    using QWidget::show;
    [[nodiscard]] QWidget* firstField() const;

private:
    Section* makeKinds();
    Section* makePatterns(const kitchen::Catalogue& catalogue);
    QSpinBox* makeBox(const QString& name, int least, int most, int value);
    void showPatterns();

    std::shared_ptr<const casebook::Casebook> m_casebook;
    MemberId m_member;
    ReactionKindsModel* m_kinds = nullptr;
    QTableView* m_kindsTable = nullptr;
    QLabel* m_noKinds = nullptr;
    PatternsModel* m_patterns = nullptr;
    QTableView* m_patternsTable = nullptr;
    QLabel* m_noPatterns = nullptr;
    QSpinBox* m_window = nullptr;
    QSpinBox* m_strength = nullptr;
};

} // namespace ladlework::ui
