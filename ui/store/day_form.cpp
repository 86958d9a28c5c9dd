// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/store/day_form.h"

#include "ui/parts/day_field.h"
#include "ui/parts/desk.h"

#include <QCoreApplication>

namespace soakbook::ui {

namespace {

struct DayFormWords {
    Q_DECLARE_TR_FUNCTIONS(DayForm)
};

} // namespace

void open_day_form(Desk& desk, const DayForm& wanted, QWidget* parent, OnDay on_day) {
    auto* dialog = new FormDialog(desk, wanted.title, parent);
    dialog->setObjectName(wanted.name);
    dialog->set_wanted_width(480);
    FormFrame* form = dialog->form();
    form->set_intro(wanted.intro);
    form->set_columns(1);
    auto* day = form->add(wanted.label, new DayField(desk), QStringLiteral("on"));
    day->setObjectName(QStringLiteral("on_day"));
    //: Stands in an empty field for a day
    day->set_placeholder(DayFormWords::tr("today"));
    form->set_primary(wanted.button);
    form->set_commit([day, on_day = std::move(on_day)](const work::Confirmed&) { return on_day(day->value()); });
    dialog->open();
}

} // namespace soakbook::ui
