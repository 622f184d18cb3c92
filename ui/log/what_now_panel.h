#pragma once

#include "casebook/casebook.h"

#include <QFrame>

class QLabel;
class QPushButton;
class QVBoxLayout;

namespace ladlework::ui {

/// What to do now that a red flag is in the log: whom to call first, what to do for what was felt,
/// the published signs of a severe allergic reaction, those of an infant or child drying out, and
/// that the ladder is stopped. Visible while the shown day has a red flag; it can be folded.
class WhatNowPanel final : public QFrame {
    Q_OBJECT
public:
    explicit WhatNowPanel(QWidget* parent);
    /// Unfolds when a red flag is there that was not there before.
    void show(const casebook::Casebook& book, QDate day);
    using QWidget::show;

Q_SIGNALS:
    /// The person wants to record the decision that lets a stopped ladder go on.
    void decisionWanted();

protected:
    void paintEvent(QPaintEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void fold(bool folded);
    void fill(const casebook::Casebook& book, const QList<intake::Reaction>& flags);
    QLabel* addWords(const QString& text, bool quiet);

    QLabel* m_title;
    QPushButton* m_fold;
    QPushButton* m_decision;
    QLabel* m_call;
    QWidget* m_body;
    QVBoxLayout* m_lines;
    QList<ReactionId> m_shown;
};

} // namespace ladlework::ui
