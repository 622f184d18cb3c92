#include "ui/progress/patterns_model.h"

#include <QFont>
#include <QLocale>
#include <cmath>

namespace ladlework::ui {

namespace {

QString ofDays(int reacted, int fine) {
    const int days = reacted + fine;
    return days == 1 ? PatternsModel::tr("%1 of 1 day").arg(reacted)
                     : PatternsModel::tr("%1 of %2 days").arg(reacted).arg(days);
}

QString figure(double value) {
    constexpr double tooLarge = 100;
    if (!std::isfinite(value) || value >= tooLarge)
        return PatternsModel::tr("over 100");
    return QLocale().toString(value, 'f', 1);
}

QString ratioWords(const intake::Pattern& pattern) {
    if (!pattern.enough || !pattern.riskRatio)
        return PatternsModel::tr("–");
    return PatternsModel::tr("%1 times (%2 to %3)")
        .arg(figure(*pattern.riskRatio), figure(pattern.riskLow), figure(pattern.riskHigh));
}

/// "p 0.012, corrected 0.2": how often chance alone would do as much.
QString chanceWords(const intake::Pattern& pattern) {
    const QLocale locale;
    return PatternsModel::tr("Fisher's exact test p = %1; corrected for the number of subjects "
                             "(Benjamini-Hochberg) q = %2; the range is a 95 % interval of the "
                             "risk ratio.")
        .arg(locale.toString(pattern.p, 'g', 2), locale.toString(pattern.q, 'g', 2));
}

} // namespace

PatternsModel::PatternsModel(const kitchen::Catalogue& catalogue, QObject* parent)
    : QAbstractTableModel(parent), m_catalogue(catalogue) {}

void PatternsModel::setPatterns(const QList<intake::Pattern>& patterns) {
    beginResetModel();
    m_patterns = patterns;
    endResetModel();
}

int PatternsModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_patterns.size());
}

int PatternsModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(ColumnCount);
}

QString PatternsModel::words(const intake::Pattern& pattern) const {
    if (!pattern.enough)
        return tr("Not enough days to say.");
    return intake::isWorthTalkingAbout(pattern)
               ? tr("Worth talking about; it does not say what the cause is.")
               : tr("Nothing stands out.");
}

QVariant PatternsModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid() || index.row() >= m_patterns.size())
        return {};
    const intake::Pattern& pattern = m_patterns.at(index.row());
    const QString name = m_catalogue.nameOf(pattern.subject);
    if (role == Qt::ToolTipRole || role == Qt::AccessibleDescriptionRole) {
        QString tip = intake::explain(pattern, name);
        if (pattern.enough)
            tip += u' ' + chanceWords(pattern);
        return tip;
    }
    if (role == Qt::FontRole && intake::isWorthTalkingAbout(pattern)) {
        QFont bold;
        bold.setWeight(QFont::DemiBold);
        return bold;
    }
    if (role != Qt::DisplayRole)
        return {};
    switch (index.column()) {
    case SubjectColumn:
        return name;
    case WithColumn:
        return ofDays(pattern.exposedReacted, pattern.exposedFine);
    case WithoutColumn:
        return ofDays(pattern.otherReacted, pattern.otherFine);
    case RatioColumn:
        return ratioWords(pattern);
    default:
        return words(pattern);
    }
}

QVariant PatternsModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole)
        return QAbstractTableModel::headerData(section, orientation, role);
    switch (section) {
    case SubjectColumn:
        return tr("What was in the stock");
    case WithColumn:
        return tr("Felt something with it");
    case WithoutColumn:
        return tr("And without it");
    case RatioColumn:
        return tr("As often");
    default:
        return tr("What can be said");
    }
}

} // namespace ladlework::ui
