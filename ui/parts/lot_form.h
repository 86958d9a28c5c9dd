// SPDX-License-Identifier: GPL-3.0-or-later
// The form of a delivery of acid, glycerine, dry strips or bags; or of a correction of one.
#pragma once

#include "core/work/materials.h"
#include "ui/parts/form_dialog.h"

#include <optional>

namespace soakbook::ui {

class ChoiceField;
class CountField;
class DayField;
class Desk;
class MassField;
class MoneyField;
class NoteField;
class PercentField;
class TextField;

class LotForm : public FormDialog {
    Q_OBJECT

public:
    /// A new delivery; `material` is chosen already where it is given.
    LotForm(Desk& desk, std::optional<work::MaterialKind> material, QWidget* parent);
    /// A correction of one that stands, with a reason.
    LotForm(Desk& desk, const work::LotLine& lot, QWidget* parent);

Q_SIGNALS:
    /// The key of the delivery that was entered or corrected.
    void saved(qint64 lot);

private:
    void build();
    void show_material();
    void fill_from_last();
    void fill(const work::LotEntry& lot);
    work::LotEntry entry() const;
    work::MaterialKind material() const;
    bool by_mass() const;
    std::optional<work::Refusal> commit(const work::Confirmed& confirmed);

    Desk& m_desk;
    work::LotId m_id;
    ChoiceField* m_material = nullptr;
    TextField* m_name = nullptr;
    TextField* m_supplier = nullptr;
    DayField* m_received = nullptr;
    MassField* m_mass = nullptr;
    CountField* m_pieces = nullptr;
    MassField* m_container_mass = nullptr;
    CountField* m_container_pieces = nullptr;
    ChoiceField* m_acid_form = nullptr;
    PercentField* m_assay = nullptr;
    ChoiceField* m_strip_kind = nullptr;
    MassField* m_dry = nullptr;
    DayField* m_best_before = nullptr;
    MoneyField* m_cost = nullptr;
    NoteField* m_note = nullptr;
    TextField* m_why = nullptr;
};

} // namespace soakbook::ui
