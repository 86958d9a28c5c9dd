// SPDX-License-Identifier: GPL-3.0-or-later
// The second place for safe copies, as this user chose it: kept in the user's own settings, not in the workbook, since a
// stick has another name on another computer.
#pragma once

#include "core/maths/quantities.h"

#include <QString>

#include <optional>

namespace soakbook::ui {

struct SecondPlace {
    enum class Choice { unsaid, none, folder } choice = Choice::unsaid;
    QString folder;
    std::optional<maths::Instant> chosen;
};
SecondPlace second_place();
void choose_second_place(const QString& folder, const maths::Instant& now);
/// The user wants none, and is left alone.
void choose_no_second_place(const maths::Instant& now);

/// What is known of one workbook's copies there, by its mark.
struct SecondPlaceNews {
    qint64 newest_entry = 0;                ///< of the newest copy there
    std::optional<maths::Instant> answered; ///< when it last held everything there was to carry
};
SecondPlaceNews second_place_news(const QString& mark);
void note_second_place(const QString& mark, const SecondPlaceNews& news);

/// When a copy of that workbook was last checked whole.
std::optional<maths::Instant> checked_whole(const QString& mark);
void note_checked_whole(const QString& mark, const maths::Instant& at);

} // namespace soakbook::ui
