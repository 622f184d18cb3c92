#include "ui/members/container_model.h"

namespace ladlework::ui {

using kitchen::Container;

void ContainerModel::setContainers(QList<Container> containers, quantity::MeasureSystem measures) {
    beginResetModel();
    m_containers = std::move(containers);
    m_measures = measures;
    endResetModel();
}

const Container* ContainerModel::containerAt(int row) const {
    return row >= 0 && row < m_containers.size() ? &m_containers.at(row) : nullptr;
}

int ContainerModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_containers.size());
}

int ContainerModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : ColumnCount;
}

QString ContainerModel::shapeWords(Container::Shape shape) {
    return shape == Container::Shape::Tray ? tr("tray") : tr("round");
}

QString ContainerModel::materialWords(Container::Material material) {
    switch (material) {
    case Container::Material::Steel:
        return tr("steel");
    case Container::Material::Glass:
        return tr("glass");
    case Container::Material::Plastic:
        return tr("plastic");
    }
    return {};
}

QString ContainerModel::coverWords(bool covered) {
    return covered ? tr("covered") : tr("open");
}

QVariant ContainerModel::data(const QModelIndex& index, int role) const {
    const Container* container = index.isValid() ? containerAt(index.row()) : nullptr;
    if (container == nullptr || role != Qt::DisplayRole)
        return {};
    const auto print = [this](quantity::Length length) {
        return quantity::printLength(length, m_measures);
    };
    switch (index.column()) {
    case NameColumn:
        return container->name;
    case SizeColumn:
        return container->shape == Container::Shape::Tray
                   ? tr("%1 by %2").arg(print(container->across), print(container->width))
                   : tr("%1 across").arg(print(container->across));
    case HeightColumn:
        return print(container->height);
    case HoldsColumn:
        return quantity::printVolume(container->capacity(), m_measures);
    default:
        return tr("%1, %2").arg(materialWords(container->material), coverWords(container->covered));
    }
}

QVariant ContainerModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole)
        return QAbstractTableModel::headerData(section, orientation, role);
    switch (section) {
    case NameColumn:
        return tr("Container");
    case SizeColumn:
        return tr("Inside");
    case HeightColumn:
        return tr("Inside height");
    case HoldsColumn:
        return tr("Holds");
    default:
        return tr("Made of");
    }
}

} // namespace ladlework::ui
