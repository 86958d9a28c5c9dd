// SPDX-License-Identifier: GPL-3.0-or-later
// A field whose editor has a name of its own, by which it is found.
#pragma once

#include "ui/parts/choice_field.h"

#include <QPushButton>
#include <QString>

#include <algorithm>
#include <optional>

namespace soakbook::ui {

template <class F> F* named(F* field, const char* name) {
    field->editor()->setObjectName(QLatin1String(name));
    return field;
}

/// The answers are named too: NAME_yes, NAME_no.
inline YesNoField* named(YesNoField* field, const char* name) {
    const QList<QPushButton*> ways = field->findChildren<QPushButton*>();
    const QString base = QLatin1String(name);
    for (qsizetype i = 0; i < ways.size(); ++i) {
        ways[i]->setObjectName(base + (i == 0 ? QStringLiteral("_yes") : i == 1 ? QStringLiteral("_no") : QStringLiteral("_not_said")));
    }
    return field;
}

/// A whole number as the requests take it; what is beyond any sense stays so and is refused.
inline std::optional<int> as_int(std::optional<qint64> value) {
    constexpr qint64 most = 2'000'000'000;
    return value ? std::optional<int>(static_cast<int>(std::min(*value, most))) : std::nullopt;
}
inline std::optional<qint64> as_count(std::optional<int> value) {
    return value ? std::optional<qint64>(*value) : std::nullopt;
}

} // namespace soakbook::ui
