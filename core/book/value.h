// SPDX-License-Identifier: GPL-3.0-or-later
// How each type of the house stands in a cell of the store. The only place that knows.
#pragma once

#include "core/book/id.h"
#include "core/maths/quantities.h"

#include <QDate>
#include <QString>
#include <QVariant>

#include <optional>
#include <stdexcept>
#include <type_traits>

namespace soakbook::book {

/// The words by which an enum stands in the store, in the order of its values. Specialised beside each enum.
template <class Enum> struct Names;

QString day_text(maths::Day day);
maths::Day day_from(const QString& iso);

template <class T> struct Cell;

template <> struct Cell<qint64> {
    static QVariant write(qint64 v) { return v; }
    static qint64 read(const QVariant& v) { return v.toLongLong(); }
};
template <> struct Cell<int> {
    static QVariant write(int v) { return v; }
    static int read(const QVariant& v) { return v.toInt(); }
};
template <> struct Cell<bool> {
    static QVariant write(bool v) { return v ? 1 : 0; }
    static bool read(const QVariant& v) { return v.toInt() != 0; }
};
template <> struct Cell<QString> {
    static QVariant write(const QString& v) { return v.isNull() ? QStringLiteral("") : v; }
    static QString read(const QVariant& v) { return v.toString(); }
};
template <> struct Cell<maths::Day> {
    static QVariant write(maths::Day v) { return day_text(v); }
    static maths::Day read(const QVariant& v) { return day_from(v.toString()); }
};
template <class Tag> struct Cell<maths::Quantity<Tag>> {
    static QVariant write(maths::Quantity<Tag> v) { return static_cast<qint64>(v.count); }
    static maths::Quantity<Tag> read(const QVariant& v) { return {v.toLongLong()}; }
};
template <class R> struct Cell<Id<R>> {
    static QVariant write(Id<R> v) { return static_cast<qint64>(v.value); }
    static Id<R> read(const QVariant& v) { return {v.toLongLong()}; }
};
template <class T> struct Cell<std::optional<T>> {
    static QVariant write(const std::optional<T>& v) { return v ? Cell<T>::write(*v) : QVariant(QMetaType(QMetaType::LongLong)); }
    static std::optional<T> read(const QVariant& v) {
        return v.isNull() ? std::optional<T>{} : std::optional<T>{Cell<T>::read(v)};
    }
};
template <class T>
    requires std::is_enum_v<T>
struct Cell<T> {
    static QVariant write(T v) { return QLatin1String(Names<T>::all[static_cast<std::size_t>(v)]); }
    static T read(const QVariant& v) {
        const QString text = v.toString();
        for (std::size_t i = 0; i < std::size(Names<T>::all); ++i)
            if (text == QLatin1String(Names<T>::all[i]))
                return static_cast<T>(i);
        throw std::runtime_error("a word in the store is not one of the known ones: " + text.toStdString());
    }
};

} // namespace soakbook::book
