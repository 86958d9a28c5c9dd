// SPDX-License-Identifier: GPL-3.0-or-later
// A delivery to choose, with a button that enters a new one, so that a form can be finished from an empty store.
#pragma once

#include "core/work/materials.h"
#include "ui/parts/choice_field.h"
#include "ui/parts/desk.h"

#include <optional>

class QPushButton;

namespace soakbook::ui {

class LotField : public ChoiceField {
    Q_OBJECT

public:
    LotField(Desk& desk, work::MaterialKind material, QWidget* parent = nullptr);
    /// Asks for the deliveries that are not used up.
    void refresh();
    std::optional<work::LotId> lot() const;
    void set_lot(std::optional<work::LotId> lot);
    /// The delivery that came last, if nothing is chosen.
    void choose_newest();
    /// Only strips of that kind.
    void set_strip_kind(std::optional<work::StripKindId> kind);

private:
    void enter_delivery();

    Desk& m_desk;
    work::MaterialKind m_material;
    std::optional<work::StripKindId> m_kind;
    QPushButton* m_new;
};

} // namespace soakbook::ui
