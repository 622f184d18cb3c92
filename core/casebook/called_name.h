#pragma once

#include "casebook/casebook.h"

#include <QString>

namespace ladlework::casebook {

/// How people are named in what leaves the house: printed pages, a calendar.
enum class Names { Full, First, None };

/// How a member is called: "Ana Lindqvist", "Ana" (with an initial when two share it), or
/// "Member 1". Empty for someone who is not of the family.
QString calledName(const Casebook& casebook, MemberId member, Names names);

/// How the family is called: "Lindqvist", "Ana, Ben" (at most four names), or nothing.
QString calledFamily(const Casebook& casebook, Names names);

} // namespace ladlework::casebook
