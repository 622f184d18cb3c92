#include "ui/members/vessel_model.h"

namespace ladlework::ui {

using kitchen::Vessel;

void VesselModel::setVessels(QList<Vessel> vessels, quantity::MeasureSystem measures) {
    beginResetModel();
    m_vessels = std::move(vessels);
    m_measures = measures;
    endResetModel();
}

const Vessel* VesselModel::vesselAt(int row) const {
    return row >= 0 && row < m_vessels.size() ? &m_vessels.at(row) : nullptr;
}

int VesselModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_vessels.size());
}

int VesselModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : ColumnCount;
}

QString VesselModel::placeWords(Vessel::Place place) {
    switch (place) {
    case Vessel::Place::Stovetop:
        return tr("on the stove");
    case Vessel::Place::Oven:
        return tr("in the oven");
    case Vessel::Place::SlowCooker:
        return tr("slow cooker");
    case Vessel::Place::PressureCooker:
        return tr("pressure cooker");
    }
    return {};
}

QString VesselModel::lidWords(Vessel::Lid lid) {
    switch (lid) {
    case Vessel::Lid::Open:
        return tr("lid off");
    case Vessel::Lid::Ajar:
        return tr("lid ajar");
    case Vessel::Lid::On:
        return tr("lid on");
    }
    return {};
}

QVariant VesselModel::data(const QModelIndex& index, int role) const {
    const Vessel* vessel = index.isValid() ? vesselAt(index.row()) : nullptr;
    if (!vessel || role != Qt::DisplayRole)
        return {};
    switch (index.column()) {
    case NameColumn:
        return vessel->name;
    case DiameterColumn:
        return quantity::printLength(vessel->diameter, m_measures);
    case HeightColumn:
        return quantity::printLength(vessel->height, m_measures);
    case HoldsColumn:
        return quantity::printVolume(vessel->capacity(), m_measures);
    default:
        return QString(placeWords(vessel->place) + QStringLiteral(", ") + lidWords(vessel->lid));
    }
}

QVariant VesselModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole)
        return QAbstractTableModel::headerData(section, orientation, role);
    switch (section) {
    case NameColumn:
        return tr("Vessel");
    case DiameterColumn:
        return tr("Inside width");
    case HeightColumn:
        return tr("Inside height");
    case HoldsColumn:
        return tr("Holds");
    default:
        return tr("How it is used");
    }
}

} // namespace ladlework::ui
