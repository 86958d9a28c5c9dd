// SPDX-License-Identifier: GPL-3.0-or-later
// What is left goes into pails. Field names: pour_pails with pour_pail_1 ... , pour_clear, pour_scraped, pour_when,
// pour_stands.
#pragma once

#include "core/work/leftovers.h"
#include "core/work/shed_view.h"
#include "ui/parts/desk.h"
#include "ui/parts/form.h"

namespace soakbook::ui {

class MassRows;
class TextField;
class WhenField;
class YesNoField;

class PourForm : public FormFrame {
    Q_OBJECT

public:
    explicit PourForm(Desk& desk, QWidget* parent = nullptr);
    void show_batch(const work::BatchView& batch);

Q_SIGNALS:
    /// These pails were filled and have no label yet.
    void poured(const std::vector<soakbook::work::PailId>& pails);

private:
    void settle();
    work::PourEntry entry() const;

    Desk& m_desk;
    work::BatchId m_batch;
    maths::Mass m_unexplained{};
    MassRows* m_pails;
    YesNoField* m_clear;
    YesNoField* m_scraped;
    WhenField* m_when;
    TextField* m_stands;
};

} // namespace soakbook::ui
