// SPDX-License-Identifier: GPL-3.0-or-later
// The quantity fields one by one: what they read, and in which unit.
#include "ui/parts/quantity_field.h"

namespace soakbook::ui {

namespace {

template <class T> std::optional<T> read_value(const exchange::Read<T>& read) {
    return read ? std::optional<T>(*read) : std::nullopt;
}

template <class T, class Write> exchange::Read<QString> in_words(const exchange::Read<T>& read, Write write) {
    if (!read) {
        return tl::unexpected<exchange::Unreadable>(read.error());
    }
    return write(*read);
}

} // namespace

MassField::MassField(const Habits& habits, MassSize size, QWidget* parent) : QuantityField(habits, parent), m_size(size) {
    refresh_aside();
}

exchange::MassUnit MassField::unit() const {
    return m_size == MassSize::large ? habits().preferences().large_mass : habits().preferences().small_mass;
}

std::optional<maths::Mass> MassField::value() const {
    return read_value(exchange::read_mass(text(), unit()));
}

void MassField::set_value(std::optional<maths::Mass> value) {
    set_text(value ? exchange::write_mass_number(*value, unit(), habits().locale()) : QString());
}

exchange::Read<QString> MassField::understand(const QString& text) const {
    return in_words(exchange::read_mass(text, unit()),
                    [this](maths::Mass m) { return exchange::write_mass(m, unit(), habits().locale()); });
}

QString MassField::unit_sign() const {
    return exchange::sign(unit());
}

TemperatureField::TemperatureField(const Habits& habits, QWidget* parent) : QuantityField(habits, parent) {
    refresh_aside();
}

std::optional<maths::Temperature> TemperatureField::value() const {
    return read_value(exchange::read_temperature(text(), habits().preferences().temperature));
}

void TemperatureField::set_value(std::optional<maths::Temperature> value) {
    set_text(value ? exchange::write_temperature_number(*value, habits().preferences().temperature, habits().locale())
                   : QString());
}

exchange::Read<QString> TemperatureField::understand(const QString& text) const {
    return in_words(exchange::read_temperature(text, habits().preferences().temperature),
                    [this](maths::Temperature t) { return habits().temperature(t, -1); });
}

QString TemperatureField::unit_sign() const {
    return exchange::sign(habits().preferences().temperature);
}

PercentField::PercentField(const Habits& habits, QWidget* parent) : QuantityField(habits, parent) {
    refresh_aside();
}

std::optional<maths::Fraction> PercentField::value() const {
    return read_value(exchange::read_percent(text()));
}

void PercentField::set_value(std::optional<maths::Fraction> value) {
    QString text = value ? habits().percent(*value, -1) : QString();
    set_text(text.remove(QLatin1Char('%')).trimmed());
}

exchange::Read<QString> PercentField::understand(const QString& text) const {
    return in_words(exchange::read_percent(text), [this](maths::Fraction f) { return habits().percent(f, -1); });
}

QString PercentField::unit_sign() const {
    return QStringLiteral("%");
}

CountField::CountField(const Habits& habits, const QString& of_what, QWidget* parent)
    : QuantityField(habits, parent), m_of_what(of_what) {
    refresh_aside();
}

std::optional<qint64> CountField::value() const {
    return read_value(exchange::read_count(text()));
}

void CountField::set_value(std::optional<qint64> value) {
    set_text(value ? QString::number(*value) : QString());
}

void CountField::set_of_what(const QString& words) {
    m_of_what = words;
    refresh_aside();
}

exchange::Read<QString> CountField::understand(const QString& text) const {
    return in_words(exchange::read_count(text), [this](qint64 n) {
        const QString number = QString::number(n);
        const QString words = m_of_what.isEmpty() ? number : QString(number + QLatin1Char(' ') + m_of_what);
        return words;
    });
}

MoneyField::MoneyField(const Habits& habits, const QString& currency, QWidget* parent)
    : QuantityField(habits, parent), m_currency(currency) {
    refresh_aside();
}

std::optional<maths::Money> MoneyField::value() const {
    return read_value(exchange::read_money(text()));
}

void MoneyField::set_value(std::optional<maths::Money> value) {
    set_text(value ? exchange::write_money(*value, habits().locale()) : QString());
}

exchange::Read<QString> MoneyField::understand(const QString& text) const {
    return in_words(exchange::read_money(text), [this](maths::Money m) {
        const QString amount = exchange::write_money(m, habits().locale());
        const QString words = m_currency.isEmpty() ? amount : QString(amount + QLatin1Char(' ') + m_currency);
        return words;
    });
}

} // namespace soakbook::ui
