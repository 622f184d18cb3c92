#pragma once

#include "foundation/finding.h"
#include "kitchen/container.h"
#include "kitchen/cooling_way.h"
#include "quantity/duration.h"
#include "quantity/temperature.h"

#include <optional>
#include <vector>

namespace ladlework::kitchen {

/// Where stock stands for a while as it cools.
struct CoolingStage {
    enum class Place { Counter, Refrigerator, IceBath };
    Place place = Place::Refrigerator;
    quantity::Temperature ambient; ///< air or water around the container
    quantity::Duration time;       ///< the last stage runs on to the end
    bool stirred = false;
};

/// One container of hot stock. Volume and floor give the depth; the container may be less than
/// full.
struct CoolingInput {
    quantity::Volume volume; ///< in this one container
    Container container;
    quantity::Temperature start;
    std::vector<CoolingStage> stages; ///< at least one
};

struct CoolingPoint {
    quantity::Duration at;
    quantity::Temperature core;    ///< the warmest place
    quantity::Temperature surface; ///< the top of the liquid
};

/// How stock cools. Times are of the warmest place, from the moment it passes 57 °C (135 °F); from
/// the start when it starts below.
struct Cooling {
    std::optional<quantity::Duration>
        toMiddle; ///< to 21 °C (70 °F); nothing: never in the time looked at
    std::optional<quantity::Duration> toEnd; ///< to 5 °C (41 °F)
    bool passes = false;                     ///< both within the two-stage rule
    std::vector<CoolingPoint> curve;         ///< from the start, until cold or given up
    Findings findings;
};

/// The fewest equal containers that pass, and how deep each is then filled.
struct SharedOut {
    int count = 1;
    quantity::Length depth;
};

/// Reckons the cooling of one container by the transient model of the .cpp, with the figures of
/// resources/reference/cooling.csv; the two-stage rule is in keeping.csv. Pure.
Cooling cool(const CoolingInput& input);

/// The fewest containers of this kind (each at most as full as it holds) that share `total`
/// evenly and pass; nothing when not even the shallowest fill does, or more than 99 would be
/// needed.
std::optional<SharedOut> fewestContainers(quantity::Volume total, const CoolingInput& one);

/// The stages of a way of cooling in a kitchen of this temperature; times and the refrigerator's
/// temperature from the reference figures (the home rule's hours on the counter, less on a hot
/// day).
std::vector<CoolingStage> stagesOf(CoolingWay way, quantity::Temperature room);

QString coolingPlaceId(CoolingStage::Place place); ///< "counter", "refrigerator", "ice-bath"
std::optional<CoolingStage::Place> coolingPlaceFromId(QStringView id);

} // namespace ladlework::kitchen
