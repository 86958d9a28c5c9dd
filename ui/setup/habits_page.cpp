// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/setup/habits_page.h"

#include "ui/parts/cards.h"
#include "ui/parts/choice_field.h"
#include "ui/parts/desk.h"
#include "ui/parts/form.h"

namespace soakbook::ui {

HabitsPage::HabitsPage(Desk& desk) : m_desk(desk) {
    auto* card = new Card;
    //: Head of a page of Set-up.
    m_form = new FormFrame(desk, tr("Reading and writing"));
    //: Under the head of a page of Set-up.
    m_form->set_intro(tr("These follow you, on this computer, whatever workbook is open. What you choose takes hold at once."));
    //: A field's label: unit for cans, pails and batches.
    m_large = m_form->add(tr("Cans, pails and batches in"), new ChoiceField, QStringLiteral("large"));
    //: A unit.
    m_large->add(tr("kilograms"), static_cast<int>(exchange::MassUnit::kilogram));
    //: A unit.
    m_large->add(tr("pounds"), static_cast<int>(exchange::MassUnit::pound));
    //: A field's label: unit for strips.
    m_small = m_form->add(tr("Strips in"), new ChoiceField, QStringLiteral("small"));
    //: A unit.
    m_small->add(tr("grams"), static_cast<int>(exchange::MassUnit::gram));
    //: A unit.
    m_small->add(tr("ounces"), static_cast<int>(exchange::MassUnit::ounce));
    //: A field's label.
    m_temperature = m_form->add(tr("Temperatures in"), new ChoiceField, QStringLiteral("temperature"));
    //: A unit.
    m_temperature->add(tr("degrees Celsius"), static_cast<int>(exchange::TemperatureUnit::celsius));
    //: A unit.
    m_temperature->add(tr("degrees Fahrenheit"), static_cast<int>(exchange::TemperatureUnit::fahrenheit));
    //: A field's label; and its sentence of help.
    m_language = m_form->add(tr("Language"), new ChoiceField, QStringLiteral("language"), tr("Words change when the program is opened again."));
    //: A choice: as the system has it.
    m_language->add(tr("as the system"), QString());
    m_language->add(QStringLiteral("English"), QStringLiteral("en"));
    m_language->add(QStringLiteral("Deutsch"), QStringLiteral("de"));
    //: A field's label.
    m_text = m_form->add(tr("Text size"), new ChoiceField, QStringLiteral("text"));
    for (const int percent : {100, 125, 150, 175, 200})
        //: A text size; %1 is 100, 125 ...
        m_text->add(tr("%1 %").arg(percent), percent);
    //: A field's label: light or dark.
    m_look = m_form->add(tr("Look"), new ChoiceField, QStringLiteral("look"));
    m_look->add(tr("as the system"), QString());
    //: A choice of look.
    m_look->add(tr("light"), QStringLiteral("light"));
    //: A choice of look.
    m_look->add(tr("dark"), QStringLiteral("dark"));
    //: A field's label: size of paper.
    m_paper = m_form->add(tr("Paper"), new ChoiceField, QStringLiteral("paper"));
    //: A choice: as usual in the user's country.
    m_paper->add(tr("as usual here"), QString());
    m_paper->add(QStringLiteral("A4"), QStringLiteral("a4"));
    //: A size of paper.
    m_paper->add(tr("Letter"), QStringLiteral("letter"));
    int number = 0;
    for (ChoiceField* field : {m_large, m_small, m_temperature, m_language, m_text, m_look, m_paper}) {
        field->setObjectName(QStringLiteral("habit_%1").arg(++number));
        connect(field, &Field::edited, this, &HabitsPage::take_over);
    }
    // There is nothing to enter: each choice is taken as it is made.
    m_form->foot()->hide();
    card->column()->addWidget(m_form);
    column()->addWidget(card);
    column()->addStretch();
}

void HabitsPage::take_over() {
    Preferences p = m_desk.preferences();
    p.large_mass = static_cast<exchange::MassUnit>(m_large->id());
    p.small_mass = static_cast<exchange::MassUnit>(m_small->id());
    p.temperature = static_cast<exchange::TemperatureUnit>(m_temperature->id());
    p.language = m_language->value().toString();
    p.text_percent = static_cast<int>(m_text->id());
    p.look = m_look->value().toString();
    p.paper = m_paper->value().toString();
    m_desk.set_preferences(p);
}

void HabitsPage::refresh() {
    const Preferences& p = m_desk.preferences();
    m_large->set_value(static_cast<int>(p.large_mass));
    m_small->set_value(static_cast<int>(p.small_mass));
    m_temperature->set_value(static_cast<int>(p.temperature));
    m_language->set_value(p.language);
    m_text->set_value(p.text_percent);
    m_look->set_value(p.look);
    m_paper->set_value(p.paper);
}

void HabitsPage::take_focus() { m_form->take_focus(); }

} // namespace soakbook::ui
