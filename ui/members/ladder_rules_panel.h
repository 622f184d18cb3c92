#pragma once

#include "intake/ladder.h"

#include <QWidget>

class QFormLayout;
class QSpinBox;

namespace ladlework::ui {

class SideBySide;

/// The rules of one ladder as numbers to set.
class LadderRulesPanel final : public QWidget {
    Q_OBJECT
public:
    explicit LadderRulesPanel(QWidget* parent);
    void setRules(const intake::LadderRules& rules);
    [[nodiscard]] intake::LadderRules rules() const;

Q_SIGNALS:
    void committed();

private:
    static QFormLayout* addColumn(SideBySide& columns);
    QSpinBox* addBox(QFormLayout& column, const QString& words, const QString& tip, int least,
                     int most);
    void commit();

    intake::LadderRules m_rules;
    QSpinBox* m_goodPercent;
    QSpinBox* m_daysToAdvance;
    QSpinBox* m_holdDays;
    QSpinBox* m_staleDays;
    QSpinBox* m_rungsBack;
    QSpinBox* m_moderateWindow;
    QSpinBox* m_mildTo;
    QSpinBox* m_moderateTo;
    QSpinBox* m_strongTo;
};

} // namespace ladlework::ui
