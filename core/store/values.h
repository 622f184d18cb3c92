#pragma once

#include "foundation/id.h"

#include <QByteArray>
#include <QDate>
#include <QDateTime>
#include <QString>
#include <QVariant>
#include <concepts>
#include <optional>

namespace ladlework::store {

// What a C++ value is in a column. Only the types listed here can be bound, so that nothing is
// stored in a form that nobody chose; every overload takes exactly its own type.

inline QVariant toColumn(std::same_as<bool> auto value) {
    return value ? 1 : 0;
}
inline QVariant toColumn(std::same_as<int> auto value) {
    return value;
}
inline QVariant toColumn(std::same_as<qint64> auto value) {
    return value;
}
inline QVariant toColumn(std::same_as<double> auto value) {
    return value;
}
/// A null QString is an empty text, never NULL.
inline QVariant toColumn(const QString& value) {
    return value.isNull() ? QStringLiteral("") : value;
}
/// A null QByteArray is an empty BLOB, never NULL.
inline QVariant toColumn(const QByteArray& value) {
    return value.isNull() ? QByteArray("") : value;
}
/// YYYY-MM-DD; NULL for an invalid day.
inline QVariant toColumn(QDate value) {
    return value.isValid() ? QVariant(value.toString(Qt::ISODate)) : QVariant();
}
/// YYYY-MM-DDThh:mm:ss.mmmZ; NULL for an invalid moment.
inline QVariant toColumn(const QDateTime& value) {
    return value.isValid() ? QVariant(value.toUTC().toString(Qt::ISODateWithMs)) : QVariant();
}
/// NULL for an id that is not stored.
template <class Tag>
QVariant toColumn(const Id<Tag>& id) {
    return id.isStored() ? QVariant(id.value) : QVariant();
}
/// NULL for nothing.
template <class Value>
QVariant toColumn(const std::optional<Value>& value) {
    return value ? toColumn(*value) : QVariant();
}

} // namespace ladlework::store
