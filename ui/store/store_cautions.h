// SPDX-License-Identifier: GPL-3.0-or-later
// What hurts people and bees in the Store, said where it happens.
#pragma once

#include <QString>

namespace soakbook::ui {

/// How strips, pails and acid are kept.
QString keeping_caution();
/// Before strips are thrown away.
QString discard_strips_caution();
/// Before the contents of a pail are thrown away.
QString discard_pail_caution();

} // namespace soakbook::ui
