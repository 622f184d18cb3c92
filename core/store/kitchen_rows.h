#pragma once

#include "kitchen/batch.h"
#include "kitchen/container.h"
#include "kitchen/pot.h"
#include "store/rows.h"

namespace ladlework::store {

class Statement;

// What a record of core/kitchen is in its table, without its id, and back with it.

Fields fieldsOf(const kitchen::Vessel& vessel);
kitchen::Vessel readVessel(const Statement& row);
Fields fieldsOf(const kitchen::Container& container);
kitchen::Container readContainer(const Statement& row);
/// Without cuts and extras, which have their own tables.
Fields fieldsOf(const kitchen::Pot& pot);
kitchen::Pot readPot(const Statement& row);
kitchen::CutInPot readCut(const Statement& row);
kitchen::ExtraInPot readExtra(const Statement& row);
Fields fieldsOf(const kitchen::Batch& batch);
kitchen::Batch readBatch(const Statement& row);
Fields fieldsOf(const kitchen::Lot& lot);
kitchen::Lot readLot(const Statement& row);

} // namespace ladlework::store
