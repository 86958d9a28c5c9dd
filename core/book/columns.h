// SPDX-License-Identifier: GPL-3.0-or-later
// How a record's members stand in its table: one list beside each record, from which reading and writing follow.
#pragma once

#include "core/book/statement.h"

#include <QStringList>

#include <tuple>
#include <utility>

namespace soakbook::book {

template <class Record, class T> struct Column {
    const char* name;
    T Record::*member;
};
template <class Record, class T> constexpr Column<Record, T> column(const char* name, T Record::*member) { return {name, member}; }

namespace detail {
inline void add_name(QStringList& names, const char* name, const void*) { names << QLatin1String(name); }
inline void add_name(QStringList& names, const char* name, const maths::Instant*) {
    names << QLatin1String(name) + QStringLiteral("_ms") << QLatin1String(name) + QStringLiteral("_off");
}
inline void add_name(QStringList& names, const char* name, const std::optional<maths::Instant>*) {
    add_name(names, name, static_cast<const maths::Instant*>(nullptr));
}
template <class T> void add_value(QVariantList& values, const T& v) { values << Cell<T>::write(v); }
inline void add_value(QVariantList& values, const maths::Instant& v) { values << static_cast<qint64>(v.utc_ms) << v.offset_minutes; }
inline void add_value(QVariantList& values, const std::optional<maths::Instant>& v) {
    const QVariant none{QMetaType(QMetaType::LongLong)};
    values << (v ? QVariant(static_cast<qint64>(v->utc_ms)) : none) << (v ? QVariant(v->offset_minutes) : none);
}
template <class T> void take(const Statement& row, int& at, T& into) { into = row.get<T>(at++); }
inline void take(const Statement& row, int& at, maths::Instant& into) {
    into.utc_ms = row.get<qint64>(at++);
    into.offset_minutes = row.get<int>(at++);
}
inline void take(const Statement& row, int& at, std::optional<maths::Instant>& into) {
    const auto ms = row.get<std::optional<qint64>>(at++);
    const auto off = row.get<std::optional<int>>(at++);
    into = ms ? std::optional<maths::Instant>{{*ms, off.value_or(0)}} : std::nullopt;
}
} // namespace detail

/// The record's columns, without its id, in the order of its list.
template <class Record> QStringList column_names() {
    QStringList names;
    std::apply(
        [&](auto... c) { (detail::add_name(names, c.name, static_cast<decltype(&(std::declval<Record&>().*(c.member)))>(nullptr)), ...); },
        Record::columns());
    return names;
}
template <class Record> QVariantList column_values(const Record& record) {
    QVariantList values;
    std::apply([&](auto... c) { (detail::add_value(values, record.*(c.member)), ...); }, Record::columns());
    return values;
}
/// Reads a record from a row of `select id, <column_names>`, from column `at` on.
template <class Record> Record take_record(const Statement& row, int at = 0) {
    Record record;
    record.id = row.get<Id<Record>>(at++);
    std::apply([&](auto... c) { (detail::take(row, at, record.*(c.member)), ...); }, Record::columns());
    return record;
}

} // namespace soakbook::book
