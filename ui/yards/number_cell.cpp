// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/yards/number_cell.h"

#include "core/exchange/quantity_text.h"

#include <limits>

namespace soakbook::ui {

void NumberCell::type(const QString& text) {
    const QString typed = text.trimmed();
    const auto read = exchange::read_count(typed);
    const bool reads = typed.isEmpty() || (read && *read <= std::numeric_limits<int>::max());
    is_typed = true;
    value = reads && !typed.isEmpty() ? std::optional<int>(static_cast<int>(*read)) : std::nullopt;
    unread = reads ? QString() : typed;
}

QString NumberCell::shown(std::optional<int> untyped) const {
    return is_wrong() ? unread : cell_text(is_typed ? value : untyped);
}

QString cell_text(std::optional<int> value) {
    return value ? QString::number(*value) : QString();
}

} // namespace soakbook::ui
