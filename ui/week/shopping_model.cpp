#include "ui/week/shopping_model.h"

#include <QFont>
#include <QLocale>

namespace ladlework::ui {

namespace {

QString sectionName(week::ShoppingItem::Section section) {
    switch (section) {
    case week::ShoppingItem::Section::Meat:
        return ShoppingModel::tr("Meat");
    case week::ShoppingItem::Section::Fish:
        return ShoppingModel::tr("Fish");
    case week::ShoppingItem::Section::Vegetables:
        return ShoppingModel::tr("Vegetables");
    case week::ShoppingItem::Section::Herbs:
        return ShoppingModel::tr("Fresh herbs");
    case week::ShoppingItem::Section::Dry:
        return ShoppingModel::tr("Dry goods");
    }
    return {};
}

QString lineOf(const week::ShoppingItem& item, quantity::MeasureSystem measures) {
    const QString mass = quantity::printMass(item.mass, measures);
    if (item.pieces <= 0)
        return ShoppingModel::tr("%1: %2").arg(item.name, mass);
    return ShoppingModel::tr("%1: %2 \u00d7 %3 (%4)")
        .arg(item.name, QLocale().toString(item.pieces, 'g', 3), item.pieceName, mass);
}

} // namespace

void ShoppingModel::setItems(const QList<week::ShoppingItem>& items,
                             quantity::MeasureSystem measures) {
    QList<Line> lines;
    for (qsizetype i = 0; i < items.size(); ++i) {
        if (i == 0 || items.at(i).section != items.at(i - 1).section)
            lines << Line{sectionName(items.at(i).section), true};
        lines << Line{lineOf(items.at(i), measures), false};
    }
    if (lines == m_lines)
        return;
    beginResetModel();
    m_lines = lines;
    endResetModel();
}

QString ShoppingModel::asText() const {
    QString text;
    for (const Line& line : m_lines)
        text += (line.heading ? QString() : QStringLiteral("  ")) + line.text + QLatin1Char('\n');
    return text;
}

int ShoppingModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_lines.size());
}

QVariant ShoppingModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid() || index.row() >= m_lines.size())
        return {};
    const Line& line = m_lines.at(index.row());
    switch (role) {
    case Qt::DisplayRole:
        return line.text;
    case HeadingRole:
        return line.heading;
    case Qt::FontRole: {
        QFont font;
        font.setBold(line.heading);
        return font;
    }
    default:
        return {};
    }
}

Qt::ItemFlags ShoppingModel::flags(const QModelIndex& index) const {
    if (!index.isValid())
        return Qt::NoItemFlags;
    if (m_lines.at(index.row()).heading)
        return Qt::ItemIsEnabled | Qt::ItemNeverHasChildren;
    return Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemNeverHasChildren;
}

} // namespace ladlework::ui
