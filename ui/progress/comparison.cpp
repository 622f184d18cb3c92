#include "ui/progress/comparison.h"

#include "casebook/standing_maker.h"
#include "ui/shared/asked_amount.h"
#include "ui/shared/day_text.h"
#include "ui/shared/easing_words.h"

#include <QLocale>

namespace ladlework::ui {

using quantity::Volume;

namespace {

QString percentWords(double share) {
    constexpr double percent = 100;
    return ClimbComparisonModel::tr("%1 %").arg(QLocale().toString(qRound(share * percent)));
}

QString whenWords(const casebook::Standing& standing) {
    const bool top = standing.replay.rung + 1 == standing.ladder->rungs.size();
    if (standing.replay.state == intake::LadderState::Stopped)
        return ClimbComparisonModel::tr("after your decision");
    if (top || standing.easedToday)
        return standing.replay.daysAtTarget == 1 ? ClimbComparisonModel::tr("reached, 1 good day")
                                                 : ClimbComparisonModel::tr("reached, %1 good days")
                                                       .arg(standing.replay.daysAtTarget);
    if (!standing.targetDate)
        return ClimbComparisonModel::tr("cannot be told yet");
    const QLocale locale;
    return ClimbComparisonModel::tr("about %1 (%2 to %3)")
        .arg(printShortDay(standing.targetDate->median, locale),
             printShortDay(standing.targetDate->p10, locale),
             printShortDay(standing.targetDate->p90, locale));
}

} // namespace

QList<ClimbShares> climbShares(const casebook::Casebook& book) {
    QList<ClimbShares> all;
    for (const casebook::Standing& standing : book.standings()) {
        if (!standing.ladder || !standing.target)
            continue;
        ClimbShares shares{standing.member.id, standing.member.name, {}};
        for (const intake::LadderDay& day : standing.replay.days) {
            const intake::Target* target =
                casebook::targetOn(book.records(), standing.member.id, day.day);
            const Volume goal = target ? target->low : standing.target->low;
            std::optional<double> share;
            if (!beganStopped(day))
                share = askedOn(book, standing, day) / goal;
            shares.days.append({day.day, share});
        }
        all.append(shares);
    }
    return all;
}

void ClimbComparisonModel::show(const casebook::Casebook& book) {
    QList<Line> lines;
    const quantity::MeasureSystem measures = book.records().family.measures;
    for (const casebook::Standing& standing : book.standings()) {
        if (!standing.ladder)
            continue;
        QString range;
        QString share;
        if (standing.target) {
            range = tr("%1 to %2")
                        .arg(quantity::printVolume(standing.target->low, measures),
                             quantity::printVolume(standing.target->high, measures));
            share = percentWords(standing.askedToday / standing.target->low);
        }
        lines.append(
            {standing.member.id,
             {standing.member.name, climbState(standing),
              amountWords(standing.askedToday, measures), range, share, whenWords(standing)}});
    }
    const auto ids = [](const QList<Line>& of) {
        QList<MemberId> found;
        for (const Line& line : of)
            found.append(line.member);
        return found;
    };
    const bool same = ids(lines) == ids(m_lines);
    if (!same)
        beginResetModel();
    m_lines = std::move(lines);
    if (!same)
        endResetModel();
    else if (!m_lines.isEmpty())
        Q_EMIT dataChanged(index(0, 0), index(rowCount() - 1, ColumnCount - 1));
}

MemberId ClimbComparisonModel::memberAt(int row) const {
    return row >= 0 && row < m_lines.size() ? m_lines.at(row).member : MemberId{};
}

int ClimbComparisonModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_lines.size());
}

int ClimbComparisonModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(ColumnCount);
}

QVariant ClimbComparisonModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid() || index.row() >= m_lines.size() ||
        (role != Qt::DisplayRole && role != Qt::ToolTipRole))
        return {};
    return m_lines.at(index.row()).words.value(index.column());
}

QVariant ClimbComparisonModel::headerData(int section, Qt::Orientation orientation,
                                          int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole)
        return QAbstractTableModel::headerData(section, orientation, role);
    switch (section) {
    case MemberColumn:
        return tr("Member");
    case StateColumn:
        return tr("Stands");
    case AskedColumn:
        return tr("Asked today");
    case TargetColumn:
        return tr("Target");
    case ShareColumn:
        return tr("Of the target");
    default:
        return tr("Target reached");
    }
}

} // namespace ladlework::ui
