// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/setup/welcome.h"

#include "ui/parts/cards.h"
#include "ui/parts/choice_field.h"
#include "ui/parts/form.h"
#include "ui/parts/page_scroll.h"
#include "ui/parts/result_card.h"
#include "ui/parts/text_field.h"
#include "ui/parts/theme.h"
#include "ui/setup/path_field.h"
#include "ui/setup/strip_kind_fields.h"
#include "ui/setup/vessel_fields.h"

#include <QShowEvent>
#include <QTimer>

namespace soakbook::ui {

Welcome::Welcome(Habits& habits, const QString& suggested_path, Make make, QWidget* parent) : QWidget(parent), m_habits(habits) {
    auto* page = new PageScroll(PageScroll::Width::text);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(page);
    // In a wide window the column stands in the middle.
    static_cast<QBoxLayout*>(page->widget()->layout())->insertStretch(0);
    QVBoxLayout* column = page->column();

    //: The program's name and what it is, over the welcome.
    column->addWidget(make_label(tr("Soakbook: the workbook for strips you make yourself"), Type::title, nullptr, true));
    //: On the welcome page.
    column->addWidget(make_soft_label(tr("Mix, soak, weigh, bag, hang, pull, and the record of it all. Home-made treatment is not lawful everywhere: the "
                                         "product's label, the acid's safety data sheet, your authority and your vet come before anything this program says."),
                                      Type::body));
    m_notice = new NoticeBar({});
    m_notice->hide();
    column->addWidget(m_notice);

    //: Head of a card on the welcome page.
    auto* look = new Card(tr("Look around first"));
    //: On the welcome page.
    look->column()->addWidget(make_soft_label(tr("The worked example is an invented outfit with two seasons of records. It opens as a copy: try anything, nothing of yours is touched."), Type::body));
    //: A button on the welcome page.
    QPushButton* example = look->add_head_button(tr("Open the example"));
    example->setObjectName(QStringLiteral("welcome_example"));
    //: A button on the welcome page.
    QPushButton* other = look->add_head_button(tr("Open a workbook that is there..."));
    other->setObjectName(QStringLiteral("welcome_other"));
    connect(example, &QPushButton::clicked, this, &Welcome::example_wanted);
    connect(other, &QPushButton::clicked, this, &Welcome::other_wanted);
    column->addWidget(look);

    auto* card = new Card;
    //: Head of the form that makes a workbook.
    m_form = new FormFrame(habits, tr("Make your workbook"));
    //: A section of a form.
    m_form->add_section(tr("You"));
    //: A field's label: name of the outfit; and its sentence of help.
    m_name = m_form->add(tr("Your operation"), new TextField, QStringLiteral("operation/name"), tr("As an inspector would look it up."));
    m_name->setObjectName(QStringLiteral("welcome_name"));
    //: A field's label: the first person who makes entries; and its sentence of help.
    m_person = m_form->add(tr("Your name"), new TextField, QStringLiteral("person"), tr("Kept with every entry; more people can be added later."));
    m_person->setObjectName(QStringLiteral("welcome_person"));
    //: A field's label: address for labels; and its sentence of help.
    m_maker = m_form->add(tr("Made by"), new NoteField, QStringLiteral("operation/maker"), tr("Address and telephone for labels; can follow later."));
    m_maker->setObjectName(QStringLiteral("welcome_maker"));
    add_units();
    //: A field's label: file of the new workbook; and its sentence of help.
    m_path = m_form->add_wide(tr("The workbook is kept in"), new PathField, QStringLiteral("path"), tr("One file. A folder on this computer is best; safe copies are made beside your other data."));
    m_path->setObjectName(QStringLiteral("welcome_path"));
    m_path->set_value(suggested_path);
    //: A section of a form and the sentence under it.
    m_form->add_section(tr("Your first strips"), tr("These, the tank and the bin can be left empty and said later in Set-up."));
    m_kind = std::make_unique<StripKindFields>(*m_form, habits, QStringLiteral("kind/"), false);
    //: A section of a form.
    m_form->add_section(tr("Your tank and your bin"));
    m_tank = std::make_unique<VesselFields>(*m_form, habits, QStringLiteral("tank/"), true);
    m_bin = std::make_unique<VesselFields>(*m_form, habits, QStringLiteral("bin/"), false);
    //: A section of a form and the sentence under it; the four figures that a new workbook has.
    m_form->add_section(tr("Four figures to begin with"),
                        tr("Strength 40 % by mass, counted as dihydrate. Tank never above 60 °C: above it the acid gives off gas. Pails go into a mix "
                           "whole: acid settles. Strips are used within 12 months. All four are common practice, no source; the label, the data "
                           "sheet and local rules come first, and Set-up changes them."));
    connect(m_form, &FormFrame::edited, this, [this] {
        m_form->result()->set_text(m_kind->uptake_words(m_habits));
        m_form->result()->set_how(m_kind->uptake_hows(), m_habits);
    });
    //: The filled button of the welcome.
    m_form->set_primary(tr("Make the workbook"));
    m_form->set_commit([this, make = std::move(make)](const work::Confirmed&) { return make(answer()); });
    connect(m_form, &FormFrame::committed, this, &Welcome::made);
    card->column()->addWidget(m_form);
    column->addWidget(card);
    column->addStretch();
    setFocusProxy(m_name);
}

Welcome::~Welcome() = default;

void Welcome::add_units() {
    //: A field's label: units of weight and temperature; and its sentence of help.
    m_units = m_form->add(tr("Units"), new ChoiceField, QStringLiteral("units"), tr("For reading and typing; any unit can be typed in any field."));
    //: A choice of units.
    m_units->add(tr("kilograms, grams, degrees Celsius"), 0);
    //: A choice of units.
    m_units->add(tr("pounds, ounces, degrees Fahrenheit"), 1);
    m_units->setObjectName(QStringLiteral("welcome_units"));
    m_units->set_value(m_habits.preferences().large_mass == exchange::MassUnit::pound ? 1 : 0);
    connect(m_units, &Field::edited, this, [this] {
        const bool pounds = m_units->id() == 1;
        Preferences p = m_habits.preferences();
        p.large_mass = pounds ? exchange::MassUnit::pound : exchange::MassUnit::kilogram;
        p.small_mass = pounds ? exchange::MassUnit::ounce : exchange::MassUnit::gram;
        p.temperature = pounds ? exchange::TemperatureUnit::fahrenheit : exchange::TemperatureUnit::celsius;
        m_habits.set_preferences(p);
    });
}

void Welcome::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    if (!event->spontaneous() && m_name->is_empty())
        // After the window has given the keyboard to its first button.
        QTimer::singleShot(0, m_name, &Field::take_focus);
}

void Welcome::say(const QString& words) {
    m_notice->set_text(words);
    m_notice->show();
}

void Welcome::refuse_path(const QString& words) {
    m_path->set_complaint(words);
    m_path->take_focus();
}

WelcomeAnswer Welcome::answer() const {
    return {m_path->value(), {{m_name->value(), m_maker->value(), {}}, m_person->value(), m_kind->entry(), m_tank->entry(), m_bin->entry()}};
}

} // namespace soakbook::ui
