#include "ui/shared/problem_line.h"

#include "ui/paint/theme.h"
#include "ui/shared/finding_line.h"

#include <QAccessible>
#include <QHBoxLayout>
#include <QLabel>

namespace ladlework::ui {

ProblemLine::ProblemLine(QWidget* parent) : QWidget(parent), m_words(new QLabel(this)) {
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(step(*this));
    row->addWidget(new FindingMark(Finding::Severity::Stop, this), 0, Qt::AlignTop);
    m_words->setWordWrap(true);
    m_words->setTextFormat(Qt::PlainText);
    m_words->setTextInteractionFlags(Qt::TextSelectableByMouse);
    row->addWidget(m_words, 1);
    setAccessibleName(tr("Not kept"));
    hide();
}

void ProblemLine::say(const QString& sentence) {
    m_words->setText(sentence);
    setAccessibleDescription(sentence);
    setVisible(!sentence.isEmpty());
    if (sentence.isEmpty())
        return;
    QAccessibleEvent told(this, QAccessible::Alert);
    QAccessible::updateAccessibility(&told);
}

bool ProblemLine::take(const Outcome& outcome) {
    say(outcome ? QString() : outcome.error().sentence);
    return outcome.has_value();
}

QString ProblemLine::sentence() const {
    return m_words->text();
}

} // namespace ladlework::ui
