// SPDX-License-Identifier: GPL-3.0-or-later
// A wish to do something in another place: Due, Find and links send it, the frame routes it, the place opens its form.
#pragma once

#include <QString>
#include <QVariantMap>

#include <vector>

namespace soakbook::ui {

/// The places of the house, in the order of the navigation.
enum class PlaceName { due, shed, store, yards, register_, setup };

/// What is wished for, where. `task` is empty to just look. Each place documents the tasks it knows in its page header.
struct Intent {
    PlaceName place = PlaceName::due;
    QString task;
    std::vector<qint64> ids;
    QVariantMap prefill;
};

} // namespace soakbook::ui
