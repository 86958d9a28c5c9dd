// SPDX-License-Identifier: GPL-3.0-or-later
// Strips hung in one hive outside a round.
#pragma once

#include "core/work/visit.h"
#include "ui/parts/form_dialog.h"

namespace soakbook::ui {

class ChoiceField;
class CountField;
class DayField;
class Desk;
class NoteField;
class TextField;
class YesNoField;

class PlaceForm : public FormDialog {
    Q_OBJECT

public:
    PlaceForm(Desk& desk, const work::HiveEntry& hive, QWidget* parent);

private:
    void make_fields(const work::HiveEntry& hive);
    void show_result();
    bool bag_is_past() const;
    work::PlaceEntry entry() const;

    Desk& m_desk;
    work::HiveId m_hive;
    CountField* m_strips;
    ChoiceField* m_bag;
    DayField* m_on;
    YesNoField* m_supers;
    TextField* m_reason;
    NoteField* m_note;
};

/// Fills a choice with the bags in the store, nearest limit first; with nothing chosen the work takes them in that order.
void offer_bags(ChoiceField& field, const Desk& desk);

} // namespace soakbook::ui
