#include "ui/shell/command_model.h"

#include <QAction>

#include <algorithm>
#include <optional>

namespace ladlework::ui {

namespace {

bool canBeDone(const CommandModel::Command& command) {
    const QAction& action = *command.action;
    return action.isEnabled() && action.isVisible() && !action.isSeparator() &&
           !plainText(action).isEmpty();
}

/// 0: the text starts with the search; 1: a word of it does; 2: it holds every word; 3: only tip
/// and menu do; nothing when it does not fit.
std::optional<int> rank(const CommandModel::Command& command, const QString& search) {
    const QString text = plainText(*command.action);
    if (text.startsWith(search, Qt::CaseInsensitive))
        return 0;
    const QString spaced = u' ' + text;
    const QString spacedSearch = u' ' + search;
    if (spaced.contains(spacedSearch, Qt::CaseInsensitive))
        return 1;
    const QStringList words = search.split(u' ', Qt::SkipEmptyParts);
    const QString all = text + u' ' + command.place + u' ' + command.action->statusTip();
    const auto holds = [&words](const QString& where) {
        return std::ranges::all_of(words, [&where](const QString& word) {
            return where.contains(word, Qt::CaseInsensitive);
        });
    };
    if (holds(text))
        return 2;
    return holds(all) ? std::optional(3) : std::nullopt;
}

} // namespace

QString plainText(const QAction& action) {
    QString text = action.text();
    text.replace(QStringLiteral("&&"), QString(QChar(1)));
    text.remove(u'&');
    text.replace(QChar(1), u'&');
    while (text.endsWith(u'.') || text.endsWith(u'…'))
        text.chop(1);
    return text.trimmed();
}

int CommandModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_shown.size());
}

QVariant CommandModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    const Command& command = m_shown[index.row()];
    switch (role) {
    case Qt::DisplayRole:
        return plainText(*command.action);
    case Qt::AccessibleTextRole:
        return tr("%1, %2, %3")
            .arg(plainText(*command.action), command.place,
                 command.action->shortcut().toString(QKeySequence::NativeText));
    case Qt::ToolTipRole:
    case TipRole:
        return command.action->statusTip();
    case ShortcutRole:
        return command.action->shortcut().toString(QKeySequence::NativeText);
    case PlaceRole:
        return command.place;
    default:
        return {};
    }
}

void CommandModel::setCommands(const QList<Command>& commands) {
    beginResetModel();
    m_all.clear();
    std::ranges::copy_if(commands, std::back_inserter(m_all), canBeDone);
    m_shown = m_all;
    endResetModel();
}

void CommandModel::setSearch(const QString& text) {
    const QString search = text.simplified();
    QList<std::pair<int, Command>> ranked;
    for (const Command& command : m_all) {
        if (const auto place = rank(command, search))
            ranked.append({*place, command});
    }
    std::ranges::stable_sort(ranked, {}, &std::pair<int, Command>::first);
    beginResetModel();
    m_shown.clear();
    for (const auto& [place, command] : ranked)
        m_shown.append(command);
    endResetModel();
}

} // namespace ladlework::ui
