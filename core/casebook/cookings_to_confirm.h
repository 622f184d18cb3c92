#pragma once

#include "casebook/casebook.h"

namespace ladlework::casebook {

/// The cookings planned for the seven days before today of which no batch was recorded: each batch
/// of the same pot and day confirms one. By day and start time. Empty when all is recorded.
QList<week::Placement> cookingsToConfirm(const Casebook& casebook);

} // namespace ladlework::casebook
