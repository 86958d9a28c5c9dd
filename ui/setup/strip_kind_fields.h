// SPDX-License-Identifier: GPL-3.0-or-later
// The fields of a strip kind, for Set-up and for the welcome.
#pragma once

#include "core/work/setup.h"
#include "core/work/how.h"

#include <QString>

#include <vector>

namespace soakbook::ui {

class BeesPerStripField;
class ChoiceField;
class CountField;
class FormFrame;
class Habits;
class MassField;
class TextField;

class StripKindFields {
public:
    /// Adds the fields to the form; `prefix` goes before their keys ("kind/"). `with_dose` adds the dose rule too.
    StripKindFields(FormFrame& form, const Habits& habits, const QString& prefix, bool with_dose);
    void set(const work::StripKindEntry& kind);
    work::StripKindEntry entry() const;
    /// What one strip takes up, in words; empty while weights are missing.
    QString uptake_words(const Habits& habits) const;
    /// How that comes about; none while it cannot be said.
    std::vector<work::How> uptake_hows() const;
    TextField* name() const { return m_name; }

private:
    void show_rule();

    FormFrame& m_form;
    QString m_prefix;
    TextField* m_name = nullptr;
    MassField* m_dry = nullptr;
    MassField* m_target = nullptr;
    MassField* m_tolerance = nullptr;
    CountField* m_per_bag = nullptr;
    ChoiceField* m_rule = nullptr;
    CountField* m_strips = nullptr;
    BeesPerStripField* m_frames = nullptr;
    CountField* m_least = nullptr;
    CountField* m_most = nullptr;
};

} // namespace soakbook::ui
