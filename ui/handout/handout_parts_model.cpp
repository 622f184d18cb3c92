#include "ui/handout/handout_parts_model.h"

#include "handout/family_handout.h"

#include <algorithm>

namespace ladlework::ui {

using casebook::HandoutPart;
using casebook::HandoutSection;

QString partName(const HandoutSection& section) {
    switch (section.part) {
    case HandoutPart::Cover:
        return HandoutPartsModel::tr("Cover with letterhead");
    case HandoutPart::Week:
        return HandoutPartsModel::tr("The week at a glance");
    case HandoutPart::Pots:
        return HandoutPartsModel::tr("A page for each pot");
    case HandoutPart::Ladders:
        return HandoutPartsModel::tr("A page for each person");
    case HandoutPart::Shopping:
        return HandoutPartsModel::tr("Shopping list");
    case HandoutPart::Keeping:
        return HandoutPartsModel::tr("Cooling and keeping");
    case HandoutPart::Cautions:
        return HandoutPartsModel::tr("Cautions, whom to call");
    case HandoutPart::OwnWords:
        return section.title.trimmed().isEmpty() ? HandoutPartsModel::tr("A page of your own words")
                                                 : section.title.trimmed();
    case HandoutPart::LogSheet:
        return HandoutPartsModel::tr("Blank log to fill in");
    case HandoutPart::JarLabels:
        return HandoutPartsModel::tr("Jar labels");
    }
    return {};
}

void HandoutPartsModel::setSections(const QList<HandoutSection>& sections) {
    if (sections == m_sections)
        return;
    beginResetModel();
    m_sections = sections;
    endResetModel();
}

int HandoutPartsModel::move(int row, int places) {
    const int to = std::clamp(row + places, 0, static_cast<int>(m_sections.size()) - 1);
    if (row < 0 || row >= m_sections.size() || to == row)
        return row;
    beginMoveRows({}, row, row, {}, to > row ? to + 1 : to);
    m_sections.move(row, to);
    endMoveRows();
    Q_EMIT edited();
    return to;
}

int HandoutPartsModel::addPage(int belowRow) {
    const int row = std::clamp(belowRow + 1, 0, static_cast<int>(m_sections.size()));
    beginInsertRows({}, row, row);
    m_sections.insert(row, HandoutSection{HandoutPart::OwnWords, true, {}, {}});
    endInsertRows();
    Q_EMIT edited();
    return row;
}

bool HandoutPartsModel::mayRemove(int row) const {
    return row >= 0 && row < m_sections.size() && m_sections.at(row).part == HandoutPart::OwnWords;
}

void HandoutPartsModel::remove(int row) {
    if (!mayRemove(row))
        return;
    beginRemoveRows({}, row, row);
    m_sections.removeAt(row);
    endRemoveRows();
    Q_EMIT edited();
}

void HandoutPartsModel::setWords(int row, const QString& words) {
    if (row < 0 || row >= m_sections.size() || m_sections.at(row).words == words)
        return;
    m_sections[row].words = words;
    Q_EMIT dataChanged(index(row), index(row));
    Q_EMIT edited();
}

void HandoutPartsModel::setTitle(int row, const QString& title) {
    if (row < 0 || row >= m_sections.size() || m_sections.at(row).title == title)
        return;
    m_sections[row].title = title;
    Q_EMIT dataChanged(index(row), index(row));
    Q_EMIT edited();
}

int HandoutPartsModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_sections.size());
}

bool HandoutPartsModel::isHeld(int row) const {
    return m_sections.at(row).part == HandoutPart::Cautions && handout::needsCautions(m_sections);
}

QVariant HandoutPartsModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid() || index.row() >= m_sections.size())
        return {};
    const HandoutSection& section = m_sections.at(index.row());
    switch (role) {
    case Qt::DisplayRole:
        return section.words.trimmed().isEmpty() || section.part == HandoutPart::OwnWords
                   ? partName(section)
                   : tr("%1 + your words").arg(partName(section));
    case Qt::CheckStateRole:
        return static_cast<int>(section.shown || isHeld(index.row()) ? Qt::Checked : Qt::Unchecked);
    case Qt::ToolTipRole:
        return isHeld(index.row())
                   ? tr("The cautions stay with every page that tells someone what to drink.")
                   : tr("Space prints it or leaves it out; Alt+Up and Alt+Down move it.");
    default:
        return {};
    }
}

bool HandoutPartsModel::setData(const QModelIndex& index, const QVariant& value, int role) {
    if (role != Qt::CheckStateRole || !index.isValid() || isHeld(index.row()))
        return false;
    m_sections[index.row()].shown = value.toInt() == Qt::Checked;
    // Whether the cautions can be left out may have changed with it.
    Q_EMIT dataChanged(this->index(0), this->index(rowCount() - 1));
    Q_EMIT edited();
    return true;
}

Qt::ItemFlags HandoutPartsModel::flags(const QModelIndex& index) const {
    const Qt::ItemFlags flags = QAbstractListModel::flags(index);
    if (!index.isValid() || index.row() >= m_sections.size() || isHeld(index.row()))
        return flags;
    return flags | Qt::ItemIsUserCheckable;
}

} // namespace ladlework::ui
