// SPDX-License-Identifier: GPL-3.0-or-later
// The fields of a tank or a bin, for Set-up and for the welcome.
#pragma once

#include "core/work/setup.h"

#include <QString>

namespace soakbook::ui {

class CountField;
class FormFrame;
class Habits;
class MassField;
class TextField;

class VesselFields {
public:
    /// `prefix` goes before the keys ("tank/").
    VesselFields(FormFrame& form, const Habits& habits, const QString& prefix, bool is_tank);
    void set(const work::VesselEntry& vessel);
    work::VesselEntry entry() const;

private:
    bool m_is_tank;
    TextField* m_name;
    MassField* m_capacity = nullptr;
    CountField* m_strips = nullptr;
    MassField* m_flood = nullptr;
};

} // namespace soakbook::ui
