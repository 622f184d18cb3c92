#include "ui/log/reactions_model.h"

#include "intake/red_flags.h"
#include "quantity/measure.h"
#include "ui/log/log_writer.h"

#include <QTime>
#include <algorithm>

namespace ladlework::ui {

using intake::Reaction;

namespace {
constexpr int secondsAMinute = 60;
constexpr int strongest = 10;
} // namespace

void ReactionsModel::show(const casebook::FamilyRecords& records, MemberId member, QDate day) {
    m_words = symptomWords(records);
    QList<Reaction> reactions;
    for (const Reaction& reaction : records.reactions)
        if (reaction.member == member && reaction.day == day)
            reactions.append(reaction);
    // The same reactions are changed in place: an open editor and the selection stay.
    const bool same = std::ranges::equal(reactions, m_reactions, {}, &Reaction::id, &Reaction::id);
    if (!same)
        beginResetModel();
    m_reactions = std::move(reactions);
    if (!same)
        endResetModel();
    else if (!m_reactions.isEmpty())
        Q_EMIT dataChanged(index(0, 0), index(rowCount() - 1, ColumnCount - 1));
}

const Reaction* ReactionsModel::reactionAt(int row) const {
    return row >= 0 && row < m_reactions.size() ? &m_reactions.at(row) : nullptr;
}

int ReactionsModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_reactions.size());
}

int ReactionsModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : ColumnCount;
}

QString ReactionsModel::began(const Reaction& reaction) {
    return reaction.startMinute
               ? QTime::fromMSecsSinceStartOfDay(*reaction.startMinute * secondsAMinute * 1000)
                     .toString(QStringLiteral("HH:mm"))
               : QString();
}

QVariant ReactionsModel::data(const QModelIndex& index, int role) const {
    const Reaction* reaction = index.isValid() ? reactionAt(index.row()) : nullptr;
    if (!reaction || (role != Qt::DisplayRole && role != Qt::EditRole))
        return {};
    switch (index.column()) {
    case SymptomColumn:
        return reaction->symptom;
    case StrengthColumn:
        return reaction->strength;
    case BeganColumn:
        return began(*reaction);
    case LastedColumn:
        return reaction->minutes
                   ? quantity::printDuration(quantity::Duration::fromMinutes(*reaction->minutes))
                   : QString();
    default:
        return reaction->note;
    }
}

QVariant ReactionsModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole)
        return QAbstractTableModel::headerData(section, orientation, role);
    switch (section) {
    case SymptomColumn:
        return tr("What was felt");
    case StrengthColumn:
        return tr("Strength");
    case BeganColumn:
        return tr("Began");
    case LastedColumn:
        return tr("Lasted");
    default:
        return tr("Note");
    }
}

Qt::ItemFlags ReactionsModel::flags(const QModelIndex& index) const {
    return index.isValid() ? QAbstractTableModel::flags(index) | Qt::ItemIsEditable
                           : QAbstractTableModel::flags(index);
}

bool ReactionsModel::read(Reaction& reaction, int column, const QString& text) {
    switch (column) {
    case SymptomColumn: {
        reaction.symptom = text;
        const auto word = std::ranges::find_if(m_words, [&text](const SymptomWord& known) {
            return known.name.compare(text, Qt::CaseInsensitive) == 0;
        });
        reaction.redFlag = (word != m_words.end() && word->redFlag) || intake::redFlagIn(text);
        if (word != m_words.end())
            reaction.symptom = word->name;
        return !text.isEmpty();
    }
    case StrengthColumn: {
        bool number = false;
        reaction.strength = text.toInt(&number);
        if (!number || reaction.strength < 0 || reaction.strength > strongest)
            Q_EMIT refused(tr("The strength is a whole number from 0 to 10."));
        return number && reaction.strength >= 0 && reaction.strength <= strongest;
    }
    case BeganColumn: {
        const QTime time = QTime::fromString(text, QStringLiteral("H:mm"));
        if (!text.isEmpty() && !time.isValid()) {
            Q_EMIT refused(tr("Type the time it began as hours and minutes, such as 14:30."));
            return false;
        }
        reaction.startMinute.reset();
        if (time.isValid())
            reaction.startMinute = time.msecsSinceStartOfDay() / (secondsAMinute * 1000);
        return true;
    }
    case LastedColumn: {
        reaction.minutes.reset();
        if (text.isEmpty())
            return true;
        const auto lasted = quantity::parseDuration(text);
        if (!lasted) {
            Q_EMIT refused(lasted.error().sentence);
            return false;
        }
        reaction.minutes = qRound(lasted->toMinutes());
        return true;
    }
    default:
        reaction.note = text;
        return true;
    }
}

bool ReactionsModel::setData(const QModelIndex& index, const QVariant& value, int role) {
    const Reaction* before = index.isValid() ? reactionAt(index.row()) : nullptr;
    const QString text = value.toString().trimmed();
    if (!before || role != Qt::EditRole || text == data(index, role).toString())
        return false;
    Reaction reaction = *before;
    if (!read(reaction, index.column(), text))
        return false;
    Q_EMIT reactionChanged(reaction);
    return true;
}

} // namespace ladlework::ui
