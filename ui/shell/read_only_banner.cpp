#include "ui/shell/read_only_banner.h"

#include "ui/paint/theme.h"
#include "ui/shared/finding_line.h"

#include <QHBoxLayout>
#include <QLabel>

namespace ladlework::ui {

ReadOnlyBanner::ReadOnlyBanner(const QString& reason, QWidget* parent) : QFrame(parent) {
    const int gap = step(*this);
    auto* word = new QLabel(tr("Read only"));
    QFont bold = font();
    bold.setWeight(QFont::DemiBold);
    word->setFont(bold);
    auto* sentence = new QLabel(reason);
    sentence->setWordWrap(true);
    sentence->setTextFormat(Qt::PlainText);
    sentence->setTextInteractionFlags(Qt::TextSelectableByMouse);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(gap, gap / 2, gap, gap / 2);
    row->setSpacing(gap);
    row->addWidget(new FindingMark(Finding::Severity::Caution));
    row->addWidget(word);
    row->addWidget(sentence, 1);
    setAutoFillBackground(true);
    setBackgroundRole(QPalette::Base);
    setAccessibleName(tr("Read only: %1").arg(reason));
}

} // namespace ladlework::ui
