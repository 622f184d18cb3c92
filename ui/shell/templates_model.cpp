#include "ui/shell/templates_model.h"

#include <algorithm>

namespace ladlework::ui {

using intake::LadderTemplate;
using quantity::Volume;

TemplatesModel::TemplatesModel(const ScreenContext& context, QObject* parent)
    : QAbstractTableModel(parent), m_context(context) {
    refresh();
}

int TemplatesModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_templates.size());
}

int TemplatesModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(ColumnCount);
}

QString TemplatesModel::rungsText(const LadderTemplate& kept) const {
    QStringList words;
    for (Volume rung : kept.rungs)
        words.append(quantity::printVolume(rung, m_measures));
    return words.join(QStringLiteral(", "));
}

QVariant TemplatesModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid) ||
        (role != Qt::DisplayRole && role != Qt::EditRole && role != Qt::ToolTipRole))
        return {};
    const LadderTemplate& kept = m_templates.at(index.row());
    return index.column() == NameColumn ? kept.name : rungsText(kept);
}

/// Words that stand as they were shown keep the stored amount: the words are rounded.
Outcome TemplatesModel::readRungs(const QString& text, LadderTemplate& kept) const {
    QList<Volume> before = kept.rungs;
    kept.rungs.clear();
    const QStringList parts = text.split(u',', Qt::SkipEmptyParts);
    for (const QString& part : parts) {
        const auto same = std::ranges::find(before, part.trimmed(), [this](Volume rung) {
            return quantity::printVolume(rung, m_measures);
        });
        if (same != before.end()) {
            kept.rungs.append(*same);
            before.erase(same);
            continue;
        }
        const Result<Volume> rung = quantity::parseVolume(part, m_measures);
        if (!rung)
            return passOn(rung);
        kept.rungs.append(*rung);
    }
    return {};
}

bool TemplatesModel::setData(const QModelIndex& index, const QVariant& value, int role) {
    const QString text = value.toString().trimmed();
    if (!checkIndex(index, CheckIndexOption::IndexIsValid) || role != Qt::EditRole ||
        text == data(index, role).toString())
        return false;
    LadderTemplate kept = m_templates.at(index.row());
    const QString name = kept.name;
    if (index.column() == NameColumn) {
        kept.name = text;
    } else if (const Outcome read = readRungs(text, kept); !read) {
        Q_EMIT said(read.error().sentence);
        return false;
    }
    return act(tr("Changed the ladder template %1").arg(name), [&](store::Action& action) {
        return m_context.workbook.practice().changeLadderTemplate(action, kept);
    });
}

Qt::ItemFlags TemplatesModel::flags(const QModelIndex& index) const {
    return index.isValid() ? Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsEditable
                           : Qt::NoItemFlags;
}

QVariant TemplatesModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole)
        return {};
    return section == NameColumn ? tr("Template") : tr("Rungs");
}

bool TemplatesModel::act(const QString& sentence,
                         const std::function<Outcome(store::Action&)>& work) {
    const Outcome outcome = m_context.workbook.act(sentence, work);
    Q_EMIT said(outcome ? QString() : outcome.error().sentence);
    return outcome.has_value();
}

void TemplatesModel::refresh() {
    beginResetModel();
    m_measures = m_context.workbook.practice().practice().measures;
    m_templates = m_context.workbook.practice().ladderTemplates();
    endResetModel();
}

void TemplatesModel::removeTemplate(int row) {
    if (row < 0 || row >= rowCount())
        return;
    const LadderTemplate kept = m_templates.at(row);
    act(tr("Removed the ladder template %1").arg(kept.name), [&](store::Action& action) {
        return m_context.workbook.practice().removeLadderTemplate(action, kept.id);
    });
}

} // namespace ladlework::ui
