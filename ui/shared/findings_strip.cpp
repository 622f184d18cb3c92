#include "ui/shared/findings_strip.h"

#include "ui/paint/finding_mark.h"
#include "ui/paint/theme.h"
#include "ui/shared/finding_line.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QScrollArea>
#include <QScrollBar>
#include <QToolButton>
#include <QVBoxLayout>

#include <algorithm>

namespace ladlework::ui {

namespace {

constexpr int mostLines = 3;     ///< shown before the strip scrolls
constexpr int shareOfWindow = 7; ///< it takes no more than this part of the window's height

QString countOf(const Findings& findings, Finding::Severity severity, const QString& one,
                const QString& many) {
    const auto count =
        std::count_if(findings.begin(), findings.end(),
                      [severity](const Finding& f) { return f.severity == severity; });
    if (count == 0)
        return {};
    return count == 1 ? one : many.arg(count);
}

} // namespace

FindingsStrip::FindingsStrip(QWidget* parent)
    : QFrame(parent), m_summary(new QLabel), m_fold(new QToolButton), m_area(new QScrollArea),
      m_lines(nullptr) {
    setAccessibleName(tr("Findings"));
    const int gap = step(*this);

    m_fold->setCheckable(true);
    m_fold->setProperty("fold", true);
    m_fold->setChecked(true);
    m_fold->setArrowType(Qt::DownArrow);
    m_fold->setAccessibleName(tr("Show or fold the findings"));
    m_fold->setToolTip(m_fold->accessibleName());
    connect(m_fold, &QToolButton::toggled, this, [this](bool open) {
        m_fold->setArrowType(open ? Qt::DownArrow : Qt::RightArrow);
        m_area->setVisible(open);
        fitHeight();
    });
    m_summary->setForegroundRole(QPalette::PlaceholderText);

    auto* head = new QHBoxLayout;
    head->setSpacing(gap / 2);
    head->addWidget(m_fold);
    head->addWidget(m_summary);
    head->addStretch();

    auto* content = new QWidget;
    m_lines = new QVBoxLayout(content);
    m_lines->setContentsMargins(0, 0, gap, 0);
    m_lines->setSpacing(gap / 2);
    content->setBackgroundRole(QPalette::Base);
    m_area->setWidget(content);
    m_area->setWidgetResizable(true);
    m_area->setFrameShape(QFrame::NoFrame);
    m_area->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_area->setFocusPolicy(Qt::NoFocus);

    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(gap, gap / 2, gap, gap / 2);
    column->setSpacing(gap / 2);
    column->addLayout(head);
    column->addWidget(m_area);
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
    hide();
}

void FindingsStrip::setFindings(const Findings& findings) {
    if (findings == m_findings)
        return;
    m_findings = findings;
    std::stable_sort(m_findings.begin(), m_findings.end(),
                     [](const Finding& a, const Finding& b) { return a.severity > b.severity; });
    fill();
    m_area->verticalScrollBar()->setValue(0); // the worst is first, and first seen
    setVisible(!m_findings.isEmpty());
    fitHeight();
    m_findings = findings;
}

void FindingsStrip::resizeEvent(QResizeEvent* event) {
    QFrame::resizeEvent(event);
    fitHeight();
}

void FindingsStrip::showEvent(QShowEvent* event) {
    QFrame::showEvent(event);
    if (!isWindow())
        window()->installEventFilter(this); // its height is what the strip may take a part of
    fitHeight();
}

bool FindingsStrip::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::Resize && watched == window())
        fitHeight();
    return QFrame::eventFilter(watched, event);
}

void FindingsStrip::fill() {
    while (QLayoutItem* item = m_lines->takeAt(0)) {
        delete item->widget();
        delete item;
    }
    for (const Finding& finding : m_findings) {
        auto* line = new FindingLine(finding, m_measures);
        connect(line, &FindingLine::fieldWanted, this, &FindingsStrip::fieldWanted);
        connect(line, &FindingLine::heightChanged, this, &FindingsStrip::fitHeight);
        m_lines->addWidget(line);
        line->show(); // counted in the height at once
    }
    m_lines->addStretch();

    QStringList counts{
        countOf(m_findings, Finding::Severity::Stop, tr("1 stop"), tr("%1 stops")),
        countOf(m_findings, Finding::Severity::Caution, tr("1 caution"), tr("%1 cautions")),
        countOf(m_findings, Finding::Severity::Note, tr("1 note"), tr("%1 notes")),
    };
    counts.removeAll(QString());
    m_summary->setText(counts.join(QStringLiteral(", ")));
}

void FindingsStrip::fitHeight() {
    const int lineHeight = fontMetrics().height() + step(*this);
    const int wanted = m_lines->hasHeightForWidth()
                           ? m_lines->heightForWidth(m_area->viewport()->width())
                           : m_lines->sizeHint().height();
    // With large text in a low window one line must do.
    const int most = isWindow() ? mostLines * lineHeight
                                : std::clamp(window()->height() / shareOfWindow, lineHeight,
                                             mostLines * lineHeight);
    m_area->setFixedHeight(std::min(wanted, most));
    updateGeometry();
}

} // namespace ladlework::ui
