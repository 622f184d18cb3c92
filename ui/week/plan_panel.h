#pragma once

#include "ui/week/plan_words.h"

#include <QFrame>

class QLabel;
class QProgressBar;
class QPushButton;
class QToolButton;
class QVBoxLayout;

namespace ladlework::ui {

/// What is going on with planning the week: a line while it works, with a way to stop it; then what
/// was proven, or what is in the way and what would help. Hidden while there is nothing to say.
class PlanPanel final : public QFrame {
    Q_OBJECT
public:
    explicit PlanPanel(QWidget* parent = nullptr);

    /// `level` of `levels` are done; 0 of 0 while that is not known.
    void showWorking(const QString& words, int level, int levels);
    /// `searching`: what would help is still looked for.
    void showResult(const QString& words, const QList<PlanHint>& hints, bool searching = false);
    void clear();

    /// Its height is fixed to what its words need at its width, so that a screen with it does not
    /// take its own height from its width.
    [[nodiscard]] bool hasHeightForWidth() const override { return false; }
    [[nodiscard]] QString words() const;
    [[nodiscard]] const QList<PlanHint>& hints() const { return m_hints; }
    [[nodiscard]] bool isWorking() const;
    [[nodiscard]] QPushButton* cancelButton() const { return m_cancel; }

Q_SIGNALS:
    void cancelWanted();
    /// "members", "pots", "hours".
    void screenWanted(const QString& screen);

protected:
    void resizeEvent(QResizeEvent* event) override;
    bool event(QEvent* event) override;

private:
    void fitHeight();
    void fillHints();
    QWidget* makeHint(const PlanHint& hint);
    QWidget* makeMore();
    void tell(const QString& words);

    QList<PlanHint> m_hints;
    bool m_all = false; ///< all hints are shown, not only the first ones
    QLabel* m_words;
    QProgressBar* m_bar;
    QPushButton* m_cancel;
    QToolButton* m_close;
    QWidget* m_list;
    QVBoxLayout* m_lines;
};

} // namespace ladlework::ui
