// SPDX-License-Identifier: GPL-3.0-or-later
// From which day to which, which yard.
#pragma once

#include "core/work/register_view.h"

#include <QWidget>

namespace soakbook::ui {

class ChoiceField;
class DayField;
class Desk;

class RegisterFilterBar : public QWidget {
    Q_OBJECT

public:
    explicit RegisterFilterBar(Desk& desk);
    work::RegisterFilter filter() const;
    void refresh();
    void set_batch(work::BatchId batch) { m_batch = batch; }

Q_SIGNALS:
    void changed();

private:
    Desk& m_desk;
    DayField* m_from;
    DayField* m_to;
    ChoiceField* m_yard;
    work::BatchId m_batch;
};

} // namespace soakbook::ui
