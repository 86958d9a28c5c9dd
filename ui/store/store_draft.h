// SPDX-License-Identifier: GPL-3.0-or-later
// Where the drafts of the Store's forms are found again.
#pragma once

#include "ui/parts/draft.h"

namespace soakbook::ui {

/// A form over the records that `task` of the Store chooses, opened by the button called `press`; the form's title is the
/// draft's.
inline DraftPlace store_draft(const QString& form, const QString& task, const std::vector<qint64>& ids, const QString& press = {}) {
    DraftPlace place{form, ids.empty() ? 0 : ids.front(), {}, {PlaceName::store, task, ids, {}}};
    if (!press.isEmpty())
        place.intent.prefill.insert(QStringLiteral("press"), press);
    return place;
}

} // namespace soakbook::ui
