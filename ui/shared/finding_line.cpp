#include "ui/shared/finding_line.h"

#include "ui/paint/finding_mark.h"
#include "ui/paint/theme.h"

#include <QGridLayout>
#include <QLabel>
#include <QLocale>
#include <QPainter>
#include <QToolButton>
#include <QVBoxLayout>

#include <algorithm>
#include <cmath>

namespace ladlework::ui {

namespace {

/// Three significant figures are what a limit is read with; thousands stay whole.
QString shortNumber(double value) {
    const double size = std::abs(value);
    int decimals = 0;
    if (size < 10.0)
        decimals = 2;
    else if (size < 100.0)
        decimals = 1;
    QString text = QLocale().toString(value, 'f', decimals);
    const QString point = QLocale().decimalPoint();
    if (text.contains(point)) {
        while (text.endsWith(u'0'))
            text.chop(1);
        if (text.endsWith(point))
            text.chop(point.size());
    }
    return text;
}

/// So that the sentences of several lines begin below each other.
int widestWord(const QFontMetrics& metrics) {
    int widest = 0;
    for (const Finding::Severity severity :
         {Finding::Severity::Note, Finding::Severity::Caution, Finding::Severity::Stop})
        widest = std::max(widest, metrics.horizontalAdvance(severityWord(severity)));
    return widest;
}

QString withUnit(double value, const QString& unit) {
    const QString number = shortNumber(value);
    return unit.isEmpty() ? number : QString(number + u' ' + unit);
}

QString inKitchenWords(double value, const QString& unit, quantity::MeasureSystem measures) {
    if (unit == u"mL" && value >= 0)
        return quantity::printVolume(quantity::Volume::fromMillilitres(value), measures);
    if (unit == u"g" && value >= 0)
        return quantity::printMass(quantity::Mass::fromGrams(value), measures);
    return withUnit(value, unit);
}

} // namespace

QString numberAgainstLimit(const Finding& finding, quantity::MeasureSystem measures) {
    // Without a limit the sentence has said the number, in the family's own measures.
    if (!finding.value || !finding.limit)
        return {};
    QString value = inKitchenWords(*finding.value, finding.unit, measures);
    QString limit = inKitchenWords(*finding.limit, finding.unit, measures);
    if (value == limit) {
        value = withUnit(*finding.value, finding.unit);
        limit = withUnit(*finding.limit, finding.unit);
    }
    return FindingLine::tr("%1, limit %2").arg(value, limit);
}

FindingMark::FindingMark(Finding::Severity severity, QWidget* parent)
    : QWidget(parent), m_severity(severity) {
    setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
    setAccessibleName(severityWord(severity));
}

QSize FindingMark::sizeHint() const {
    const int side = fontMetrics().height();
    return {side, side};
}

void FindingMark::paintEvent(QPaintEvent* /*event*/) {
    QPainter painter(this);
    const double inset = width() * 0.12;
    drawFindingMark(painter, QRectF(rect()).adjusted(inset, inset, -inset, -inset), m_severity,
                    coloursOf(*this));
}

FindingLine::FindingLine(const Finding& finding, quantity::MeasureSystem measures, QWidget* parent)
    : QWidget(parent) {
    auto* word = new QLabel(severityWord(finding.severity));
    QFont bold = font();
    bold.setWeight(QFont::DemiBold);
    word->setFont(bold);
    word->setProperty("severity", severityId(finding.severity));
    word->setMinimumWidth(widestWord(QFontMetrics(bold)));

    const QString number = numberAgainstLimit(finding, measures);
    auto* sentence = new QLabel(number.isEmpty() ? finding.text
                                                 : QString(finding.text + u"  (" + number + u')'));
    sentence->setWordWrap(true);
    sentence->setTextFormat(Qt::PlainText);
    sentence->setTextInteractionFlags(Qt::TextSelectableByMouse);

    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setHorizontalSpacing(step(*this));
    grid->setVerticalSpacing(step(*this) / 4);
    // The buttons are higher than a line of text: what stands before them is let down to their
    // words.
    QToolButton sample(this);
    sample.setText(tr("Why"));
    sample.ensurePolished();
    const int drop = std::max(0, (sample.sizeHint().height() - fontMetrics().height()) / 2);
    auto* mark = new QVBoxLayout;
    mark->setContentsMargins(0, drop, 0, 0);
    mark->addWidget(new FindingMark(finding.severity));
    mark->addStretch();
    grid->addLayout(mark, 0, 0);
    for (QLabel* label : {word, sentence})
        label->setContentsMargins(0, drop, 0, 0);
    grid->addWidget(word, 0, 1, Qt::AlignTop);
    grid->addWidget(sentence, 0, 2, Qt::AlignTop);
    grid->setColumnStretch(2, 1);

    if (!finding.field.isEmpty()) {
        auto* show = new QToolButton;
        show->setText(tr("Show"));
        show->setToolTip(tr("Go to what causes this"));
        show->setAccessibleName(tr("Show what causes: %1").arg(finding.text));
        connect(show, &QToolButton::clicked, this,
                [this, field = finding.field] { Q_EMIT fieldWanted(field); });
        grid->addWidget(show, 0, 4, Qt::AlignTop);
    }
    if (QLabel* details = makeDetails(finding)) {
        auto* why = new QToolButton;
        why->setText(tr("Why"));
        why->setCheckable(true);
        why->setToolTip(tr("The reason and the source"));
        why->setAccessibleName(tr("Why: %1").arg(finding.text));
        connect(why, &QToolButton::toggled, this, [this, details](bool shown) {
            details->setVisible(shown);
            Q_EMIT heightChanged();
        });
        grid->addWidget(why, 0, 3, Qt::AlignTop);
        grid->addWidget(details, 1, 2);
    }
}

QLabel* FindingLine::makeDetails(const Finding& finding) {
    QStringList lines;
    if (!finding.why.isEmpty())
        lines << finding.why;
    if (!finding.source.isEmpty())
        lines << tr("Source: %1").arg(finding.source);
    if (lines.isEmpty())
        return nullptr;
    auto* details = new QLabel(lines.join(u'\n'), this);
    details->setWordWrap(true);
    details->setTextFormat(Qt::PlainText);
    details->setForegroundRole(QPalette::PlaceholderText);
    details->setTextInteractionFlags(Qt::TextSelectableByMouse);
    details->hide();
    return details;
}

} // namespace ladlework::ui
