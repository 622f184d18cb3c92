#include "ui/log/import_model.h"

namespace ladlework::ui {

namespace {

QString fateWords(ImportLine::Fate fate) {
    switch (fate) {
    case ImportLine::Fate::Added:
        return ImportModel::tr("will be added");
    case ImportLine::Fate::AlreadyThere:
        return ImportModel::tr("is there already");
    case ImportLine::Fate::Refused:
        return ImportModel::tr("refused");
    }
    return {};
}

} // namespace

void ImportModel::setLines(const QList<ImportLine>& lines) {
    if (lines == m_lines)
        return;
    beginResetModel();
    m_lines = lines;
    endResetModel();
}

int ImportModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_lines.size());
}

int ImportModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(ColumnCount);
}

QVariant ImportModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid() || index.row() >= m_lines.size() ||
        (role != Qt::DisplayRole && role != Qt::ToolTipRole))
        return {};
    const ImportLine& line = m_lines.at(index.row());
    switch (index.column()) {
    case LineColumn:
        return line.line;
    case FateColumn:
        return fateWords(line.fate);
    case WordsColumn:
        return line.words;
    default:
        return line.text;
    }
}

QVariant ImportModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole)
        return QAbstractTableModel::headerData(section, orientation, role);
    switch (section) {
    case LineColumn:
        return tr("Line");
    case FateColumn:
        return tr("What becomes of it");
    case WordsColumn:
        return tr("Added, or why not");
    default:
        return tr("As it was read");
    }
}

} // namespace ladlework::ui
