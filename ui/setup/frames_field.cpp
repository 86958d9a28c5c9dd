// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/setup/frames_field.h"

namespace soakbook::ui {

FramesField::FramesField(const Habits& habits, QWidget* parent) : QuantityField(habits, parent) { refresh_aside(); }

// A plain number with decimals reads as money does; frames keep one of its four.
exchange::Read<int> FramesField::read(const QString& text) {
    const auto number = exchange::read_money(text);
    if (!number)
        return tl::unexpected(number.error());
    if (number->count % 1'000 != 0)
        return tl::unexpected(exchange::Unreadable::too_fine);
    if (number->count > 1'000'000)
        return tl::unexpected(exchange::Unreadable::too_large);
    return static_cast<int>(number->count / 1'000);
}

std::optional<int> FramesField::tenths() const {
    const auto value = read(text());
    return value ? std::optional(*value) : std::nullopt;
}

void FramesField::set_tenths(std::optional<int> tenths) {
    set_text(tenths ? habits().locale().toString(*tenths / 10.0, 'f', *tenths % 10 == 0 ? 0 : 1) : QString());
}

exchange::Read<QString> FramesField::understand(const QString& text) const {
    return read(text).map([this](int tenths) {
        //: A number of frames of bees; %1 is the number, which may have a decimal.
        return tr("%1 frames").arg(habits().locale().toString(tenths / 10.0, 'f', tenths % 10 == 0 ? 0 : 1));
    });
}

//: Stands softly behind an empty number.
QString FramesField::unit_sign() const { return tr("frames"); }

} // namespace soakbook::ui
