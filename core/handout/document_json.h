#pragma once

#include "foundation/result.h"
#include "handout/document.h"

#include <QJsonObject>

namespace ladlework::handout {

/// The document as JSON, so that a handout can be kept as it was given; fromJson is the inverse.
QJsonObject toJson(const Document& document);
/// BadInput with the JSON path when the object is no document.
Result<Document> fromJson(const QJsonObject& object);

} // namespace ladlework::handout
