// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shed/mix_weigh_form.h"

#include "core/work/setup.h"
#include "ui/parts/choice_field.h"
#include "ui/parts/day_field.h"
#include "ui/parts/refusal_words.h"
#include "ui/parts/result_card.h"
#include "ui/shed/mix_result.h"
#include "ui/shed/mix_words.h"
#include "ui/shed/planned_mass_field.h"
#include "ui/shed/shed_draft.h"
#include "ui/shed/shed_words.h"

namespace soakbook::ui {

MixWeighForm::MixWeighForm(Desk& desk, const work::BatchView& batch, QWidget* parent)
    : FormFrame(desk, QString(), parent), m_desk(desk), m_batch(batch.line.id) {
    add_fields(batch);
    //: Button that writes down what was weighed into the tank
    set_primary(tr("It is weighed in"));
    set_commit([this](const work::Confirmed& confirmed) -> std::optional<work::Refusal> {
        if (m_scraped->isVisibleTo(this) && m_scraped->is_empty())
            return work::Refusal{work::Why::missing, QStringLiteral("pails_scraped"), {}, false};
        return refusal_of(work::weigh_mix(m_desk.workbook(), mix(), doing(), confirmed));
    });
    connect(this, &FormFrame::edited, this, &MixWeighForm::reckon);
    //: What a form is for, after the code of a batch
    set_draft(shed_draft(QStringLiteral("weigh_mix"), QStringLiteral("weigh_mix"), batch.line.id, batch.line.code, tr("weigh in")));
}

void MixWeighForm::add_fields(const work::BatchView& batch) {
    bool pails = false;
    for (std::size_t i = 0; i < batch.inputs.size(); ++i) {
        const work::InputLine& input = batch.inputs[i];
        auto* field = new PlannedMassField(m_desk, input.planned);
        field->set_value(input.mass.value_or(input.planned));
        field->setObjectName(QStringLiteral("weigh_in_%1").arg(i + 1));
        //: A line of a weigh-in: a whole pail; %1 its code
        const QString name = input.pail ? tr("Pail %1, whole").arg(input.name) : input.name;
        const bool glycerine = input.lot && !input.is_acid;
        const QString marks = glycerine ? marks_words(m_desk, planned_containers(input)) : QString();
        add_wide(name, field, QStringLiteral("inputs/%1/mass").arg(i), joined({in_containers(m_desk, input), marks}));
        field->set_read_only(input.pail.has_value());
        m_masses.emplace_back(input.id, field);
        pails = pails || input.pail.has_value();
    }
    //: Label of a field
    m_scraped = add(tr("Each pail scraped to the bottom?"), new YesNoField, QStringLiteral("pails_scraped"),
                    //: Help under a question about emptied pails
                    tr("What stays in a pail is settled acid."));
    m_scraped->setObjectName(QStringLiteral("weigh_in_scraped"));
    set_shown(QStringLiteral("pails_scraped"), pails);
    //: Label of a field
    m_when = add(tr("When"), new WhenField(m_desk), QStringLiteral("at"));
    m_when->setObjectName(QStringLiteral("weigh_in_when"));
    //: Label of a field
    m_who = add(tr("By"), new ChoiceField, QStringLiteral("who"));
    m_who->setObjectName(QStringLiteral("weigh_in_who"));
    std::vector<ChoiceField::Choice> people;
    for (const work::PersonLine& person : work::people(m_desk.workbook())) {
        if (person.active)
            people.push_back({person.name, person.name});
    }
    m_who->set_choices(people);
    m_who->set_value(m_desk.who());
    set_shown(QStringLiteral("who"), people.size() > 1);
}

book::Doing MixWeighForm::doing() const {
    book::Doing doing = m_desk.doing();
    if (!m_who->is_empty())
        doing.who = m_who->value().toString();
    return doing;
}

work::WeighedMix MixWeighForm::mix() const {
    work::WeighedMix mix;
    mix.batch = m_batch;
    for (const auto& [input, field] : m_masses)
        mix.masses.emplace_back(input, field->value());
    if (!m_when->is_empty())
        mix.at = m_when->value();
    mix.pails_scraped = !m_scraped->isVisibleTo(this) || m_scraped->value().value_or(false);
    return mix;
}

void MixWeighForm::reckon() {
    work::WeighedMix reckoned_as = mix();
    // Whether pails were scraped is asked at the end, and changes no sum.
    reckoned_as.pails_scraped = true;
    const auto got = work::reckon_weighed(m_desk.workbook(), reckoned_as);
    result()->clear();
    if (got)
        show_mix_result(*this, m_desk, *got);
    else if (got.error().why != work::Why::missing)
        result()->set_next(refusal_words(got.error(), m_desk));
}

} // namespace soakbook::ui
