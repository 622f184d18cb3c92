#include "ui/members/member_list_model.h"

#include "ui/shared/easing_words.h"

namespace ladlework::ui {

void MemberListModel::setCasebook(std::shared_ptr<const casebook::Casebook> casebook) {
    const bool sameShape = m_casebook && casebook &&
                           m_casebook->standings().size() == casebook->standings().size() &&
                           m_casebook->records().family.id == casebook->records().family.id;
    if (!sameShape)
        beginResetModel();
    m_casebook = std::move(casebook);
    if (sameShape)
        Q_EMIT dataChanged(index(0), index(rowCount() - 1));
    else
        endResetModel();
}

int MemberListModel::memberCount() const {
    return m_casebook ? static_cast<int>(m_casebook->standings().size()) : 0;
}

int MemberListModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() || !m_casebook ? 0 : memberCount() + 1;
}

QVariant MemberListModel::data(const QModelIndex& index, int role) const {
    if (!m_casebook || !index.isValid() || index.row() >= rowCount())
        return {};
    if (role != Qt::DisplayRole && role != Qt::ToolTipRole && role != Qt::AccessibleTextRole)
        return {};
    if (index.row() == memberCount())
        return tr("Family and kitchen");
    const casebook::Standing& standing =
        m_casebook->standings()[static_cast<std::size_t>(index.row())];
    QString line = standing.member.name;
    line += u'\n';
    line += ageBandName(standing.band);
    if (standing.ladder) {
        line += QStringLiteral(" · ");
        line += climbState(standing);
    }
    return line;
}

MemberId MemberListModel::memberAt(int row) const {
    if (row < 0 || row >= memberCount())
        return {};
    return m_casebook->standings()[static_cast<std::size_t>(row)].member.id;
}

int MemberListModel::rowOf(MemberId member) const {
    for (int row = 0; row < memberCount(); ++row)
        if (memberAt(row) == member)
            return row;
    return 0;
}

} // namespace ladlework::ui
