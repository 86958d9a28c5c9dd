// SPDX-License-Identifier: GPL-3.0-or-later
// What one label says, as plain facts. Whoever prints fills it in; nothing here knows the workbook.
#pragma once

#include "core/maths/hazard.h"
#include "core/maths/quantities.h"

#include <QString>
#include <QStringList>

#include <optional>

namespace soakbook::ui {

enum class LabelKind { bag, pail };

struct LabelContent {
    LabelKind kind = LabelKind::bag;
    QString code;       ///< as people read it, and what the square holds
    QString batch_code; ///< empty: not said
    /// Printed before the bag is filled: count, weight, sealed and use by are lines to write on.
    bool reserved = false;
    std::optional<maths::Day> sealed;
    std::optional<maths::Day> rest_until; ///< bags only
    std::optional<maths::Day> use_by;
    std::optional<int> strips; ///< bags
    QString mass;              ///< pails, with its unit
    QString acid_per_strip;    ///< with its unit; of the dihydrate
    QString strength;          ///< "42 %", of the dihydrate; empty: not known
    int number = 0;            ///< bag `number` of `of`; 0: not said
    int of = 0;
    /// What follows from the strength, in the wording of both editions; the label shows one, the user's choice.
    maths::Hazard hazard_up_to_rev_8;
    maths::Hazard hazard_from_rev_9;
    QStringList maker; ///< a line each: name, place, telephone

    const maths::Hazard& hazard(maths::StatementSet set) const {
        return set == maths::StatementSet::from_rev_9 ? hazard_from_rev_9 : hazard_up_to_rev_8;
    }
};

} // namespace soakbook::ui
