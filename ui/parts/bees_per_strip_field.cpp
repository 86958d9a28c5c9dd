// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/bees_per_strip_field.h"

#include "core/exchange/number_text.h"
#include "core/exchange/plain_text.h"

namespace soakbook::ui {

namespace {

exchange::Read<int> read_tenths(const QString& text) {
    const auto plain = exchange::plain_text(text);
    if (!plain) {
        return tl::unexpected<exchange::Unreadable>(exchange::Unreadable::not_a_number);
    }
    const auto number = exchange::read_number(*plain, exchange::ThreeDigits::decimal);
    if (!number) {
        return tl::unexpected<exchange::Unreadable>(number.error());
    }
    if (number->minus) {
        return tl::unexpected<exchange::Unreadable>(exchange::Unreadable::negative);
    }
    const auto tenths = exchange::scaled(*number, 1);
    if (!tenths) {
        return tl::unexpected<exchange::Unreadable>(tenths.error());
    }
    constexpr exchange::Wide most = 1'000'000;
    if (*tenths > most) {
        return tl::unexpected<exchange::Unreadable>(exchange::Unreadable::too_large);
    }
    return static_cast<int>(*tenths);
}

} // namespace

BeesPerStripField::BeesPerStripField(const Habits& habits, QWidget* parent) : QuantityField(habits, parent) {
    refresh_aside();
}

std::optional<int> BeesPerStripField::tenths() const {
    const auto read = read_tenths(text());
    return read ? std::optional<int>(*read) : std::nullopt;
}

void BeesPerStripField::set_tenths(std::optional<int> tenths) {
    set_text(tenths ? frames_text(*tenths, habits().locale()) : QString());
}

exchange::Read<QString> BeesPerStripField::understand(const QString& text) const {
    const auto read = read_tenths(text);
    if (!read) {
        return tl::unexpected<exchange::Unreadable>(read.error());
    }
    const QString words = frames_text(*read, habits().locale()) + QLatin1Char(' ') + unit_sign();
    return words;
}

QString BeesPerStripField::unit_sign() const {
    //: At the right of a field: frames covered with bees
    return tr("frames of bees");
}

QString frames_text(int tenths, const QLocale& locale) {
    return exchange::write_scaled(tenths, 1, locale);
}

} // namespace soakbook::ui
