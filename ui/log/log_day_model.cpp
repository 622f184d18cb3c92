#include "ui/log/log_day_model.h"

#include "ui/log/log_writer.h"
#include "ui/shared/asked_amount.h"

#include <algorithm>

namespace ladlework::ui {

using casebook::Standing;
using quantity::Volume;

void LogDayModel::show(std::shared_ptr<const casebook::Casebook> casebook, QDate day) {
    const bool sameRows = m_casebook && casebook &&
                          m_casebook->records().family.id == casebook->records().family.id &&
                          m_casebook->standings().size() == casebook->standings().size();
    if (!sameRows)
        beginResetModel();
    m_casebook = std::move(casebook);
    m_day = day;
    if (!sameRows)
        endResetModel();
    else if (rowCount() > 0)
        Q_EMIT dataChanged(index(0, 0), index(rowCount() - 1, ColumnCount - 1));
}

int LogDayModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() || !m_casebook ? 0 : static_cast<int>(m_casebook->standings().size());
}

int LogDayModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : ColumnCount;
}

const Standing* LogDayModel::standingAt(int row) const {
    return row >= 0 && row < rowCount() ? &m_casebook->standings()[static_cast<std::size_t>(row)]
                                        : nullptr;
}

const intake::LadderDay* LogDayModel::ladderDay(const Standing& standing) const {
    const auto& days = standing.replay.days;
    const auto found = std::ranges::lower_bound(days, m_day, {}, &intake::LadderDay::day);
    return found != days.end() && found->day == m_day ? &*found : nullptr;
}

Volume LogDayModel::askedAt(int row) const {
    const Standing* standing = standingAt(row);
    if (!standing)
        return {};
    if (const intake::LadderDay* day = ladderDay(*standing))
        return askedOn(*m_casebook, *standing, *day);
    return m_casebook->plannedAmounts(standing->member.id, m_day, 1).value(0);
}

QString LogDayModel::drunkText(const Standing& standing, bool forEditing) const {
    Volume total;
    int drinks = 0;
    for (const intake::IntakeEntry& entry : m_casebook->records().entries)
        if (entry.member == standing.member.id && entry.day == m_day) {
            total += entry.drunk;
            ++drinks;
        }
    if (drinks == 0)
        return {};
    if (total == Volume{})
        return tr("missed");
    const QString words = quantity::printVolume(total, m_casebook->records().family.measures);
    return drinks == 1 || forEditing ? words : tr("%1 in %2 drinks").arg(words).arg(drinks);
}

QString LogDayModel::borneText(const Standing& standing) const {
    QStringList parts;
    for (const intake::Reaction& reaction : m_casebook->records().reactions)
        if (reaction.member == standing.member.id && reaction.day == m_day)
            parts.append(QStringLiteral("%1 %2").arg(reaction.symptom).arg(reaction.strength));
    return parts.join(QStringLiteral("; "));
}

QStringList LogDayModel::unlistedWords(const Standing& standing) const {
    const QList<SymptomWord> listed = symptomWords(m_casebook->records());
    QStringList words;
    for (const intake::Reaction& reaction : m_casebook->records().reactions) {
        if (reaction.member != standing.member.id || reaction.day != m_day || reaction.redFlag)
            continue;
        const bool known = std::ranges::any_of(listed, [&reaction](const SymptomWord& word) {
            return word.name.compare(reaction.symptom, Qt::CaseInsensitive) == 0;
        });
        if (!known)
            words.append(tr("\"%1\" is not on the list: is it a red flag?").arg(reaction.symptom));
    }
    return words;
}

QVariant LogDayModel::data(const QModelIndex& index, int role) const {
    const Standing* standing = index.isValid() ? standingAt(index.row()) : nullptr;
    const bool text = role == Qt::DisplayRole || role == Qt::EditRole || role == Qt::ToolTipRole;
    if (!standing || !text)
        return {};
    switch (index.column()) {
    case MemberColumn:
        return standing->member.name;
    case AskedColumn: {
        if (standing->band == AgeBand::InfantUnderSixMonths)
            return tr("none: under 6 months");
        const Volume asked = askedAt(index.row());
        if (asked > Volume{})
            return quantity::printVolume(asked, m_casebook->records().family.measures);
        if (!standing->ladder)
            return tr("no ladder");
        return standing->replay.state == intake::LadderState::Stopped ? tr("nothing: stopped")
                                                                      : tr("nothing");
    }
    case DrunkColumn:
        return drunkText(*standing, role == Qt::EditRole);
    case BorneColumn:
        return borneText(*standing);
    default: {
        const intake::LadderDay* day = ladderDay(*standing);
        QStringList words = unlistedWords(*standing);
        if (day)
            words.append(whyWords(*m_casebook, *standing, *day));
        return words.join(u' ');
    }
    }
}

QVariant LogDayModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole)
        return QAbstractTableModel::headerData(section, orientation, role);
    switch (section) {
    case MemberColumn:
        return tr("Member");
    case AskedColumn:
        return tr("Asked");
    case DrunkColumn:
        return tr("Drunk");
    case BorneColumn:
        return tr("What was felt, 0-10");
    default:
        return tr("What follows");
    }
}

Qt::ItemFlags LogDayModel::flags(const QModelIndex& index) const {
    Qt::ItemFlags flags = QAbstractTableModel::flags(index);
    const bool typed = index.column() == DrunkColumn || index.column() == BorneColumn;
    if (index.isValid() && typed && isOpen(index.row()))
        flags |= Qt::ItemIsEditable;
    return flags;
}

bool LogDayModel::isOpen(int row) const {
    const Standing* standing = standingAt(row);
    return standing && standing->band != AgeBand::InfantUnderSixMonths;
}

bool LogDayModel::setData(const QModelIndex& index, const QVariant& value, int role) {
    if (role != Qt::EditRole || !flags(index).testFlag(Qt::ItemIsEditable))
        return false;
    const QString text = value.toString().trimmed();
    if (text == data(index, Qt::EditRole).toString())
        return false; // only walked through
    if (index.column() == DrunkColumn)
        Q_EMIT drinkTyped(index.row(), text);
    else
        Q_EMIT reactionTyped(index.row(), text);
    return true;
}

} // namespace ladlework::ui
