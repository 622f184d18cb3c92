#pragma once

#include "kitchen/catalogue.h"
#include "people/tolerance.h"

#include <QString>

namespace ladlework::casebook {

/// What a tolerance note speaks about, in the catalogue's words; the id itself for the wider words
/// ("poultry", "fish") and for what the catalogue does not know.
QString subjectName(const people::Subject& subject, const kitchen::Catalogue& catalogue);

} // namespace ladlework::casebook
