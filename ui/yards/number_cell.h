// SPDX-License-Identifier: GPL-3.0-or-later
// A whole number typed into a cell. A text that does not read stays there as it was typed until it is put right.
#pragma once

#include <QString>

#include <optional>

namespace soakbook::ui {

struct NumberCell {
    bool is_typed = false;    ///< something was typed, be it nothing
    std::optional<int> value; ///< what it reads as
    QString unread;           ///< what was typed, where it does not read

    void type(const QString& text);
    void clear() { *this = {}; }
    bool is_wrong() const { return !unread.isEmpty(); }
    /// What stands in the cell: what was typed, otherwise `untyped`.
    QString shown(std::optional<int> untyped = std::nullopt) const;
};

/// "12", or nothing.
QString cell_text(std::optional<int> value);

} // namespace soakbook::ui
