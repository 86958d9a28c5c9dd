// SPDX-License-Identifier: GPL-3.0-or-later
// A loss that has a name. Field names: loss_kind, loss_mass, loss_note.
#pragma once

#include "core/work/leftovers.h"
#include "ui/parts/desk.h"
#include "ui/parts/form.h"

namespace soakbook::ui {

class ChoiceField;
class MassField;
class TextField;

class LossForm : public FormFrame {
    Q_OBJECT

public:
    explicit LossForm(Desk& desk, QWidget* parent = nullptr);
    void show_batch(work::BatchId batch, const QString& code);

private:
    Desk& m_desk;
    work::BatchId m_batch;
    ChoiceField* m_kind;
    MassField* m_mass;
    TextField* m_note;
};

QString loss_name(work::NamedLoss kind);

} // namespace soakbook::ui
