// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/setup/figures_page.h"

#include "ui/papers/history_dialog.h"
#include "ui/parts/cards.h"
#include "ui/parts/desk.h"
#include "ui/parts/figure_words.h"
#include "ui/parts/form.h"
#include "ui/parts/text_field.h"
#include "ui/setup/figure_fields.h"

namespace soakbook::ui {

FiguresPage::FiguresPage(Desk& desk) : m_desk(desk) {
    using enum work::Figure;
    auto* card = new Card;
    //: Head of a page of Set-up.
    m_form = new FormFrame(desk, tr("Working figures"));
    //: Under the head of a page of Set-up.
    m_form->set_intro(tr("Soakbook guesses none of these: what needs a figure that is not said, asks for it. A record keeps what the figure was "
                         "when it was made; changing it here changes nothing that stands."));
    //: A section of a form and the sentence under it.
    add_figures(tr("The four of a new workbook"), tr("Common practice, no source. The label, the safety data sheet and local rules come first; change them to those."),
                {strength, tank_ceiling, pails_whole, use_within_months});
    //: A section of a form.
    add_figures(tr("Tank"), {}, {heat_low, heat_high, reading_gap_minutes, stir_every_minutes, stir_for_minutes});
    //: A section of a form.
    add_figures(tr("Soaking and weighing"), {}, {room_low, first_weigh_hours, weigh_every_hours, sample_strips});
    //: A section of a form.
    add_figures(tr("Bags and pails"), {}, {rest_days, rest_refuses, near_limit_days, opened_days, pail_wait_days, unexplained_limit});
    //: A section of a form and the sentence under it.
    add_figures(tr("Yards"), tr("How long strips hang and when honey may be taken: by the label, your vet and local law."),
                {pull_from_days, pull_by_days, pull_warn_days, withdrawal_days, count_after_days, mite_threshold});
    //: A field's label: where the changed figures come from; and its sentence of help.
    m_source = m_form->add_wide(tr("Where they come from"), new TextField, QStringLiteral("source"), tr("Kept with the figures that you change now: a label, a vet, your own trials."));
    m_source->setObjectName(QStringLiteral("figures_source"));
    //: A button that stores the page's entries.
    m_form->set_primary(tr("Save"));
    m_form->set_commit([this](const work::Confirmed&) {
        std::vector<work::SetFigure> changes;
        for (const work::FigureLine& line : work::all_figures(m_desk.workbook()))
            for (const auto& [figure, field] : m_fields)
                if (figure == line.figure && figure_value(field, figure) != line.value)
                    changes.push_back({figure, figure_value(field, figure), m_source->value()});
        auto outcome = work::set_figures(m_desk.workbook(), changes, m_desk.doing());
        return refusal_of(outcome);
    });
    connect(m_form, &FormFrame::committed, this, [this] {
        m_form->start_again();
        m_source->clear();
        refresh();
    });
    m_form->set_draft({QStringLiteral("figures"), 0, {}, {PlaceName::setup, QStringLiteral("figures"), {}, {}}});
    card->column()->addWidget(m_form);
    // In a field the key tells of that figure alone.
    for (const auto& [figure, field] : m_fields)
        give_history(desk, field, [this, which = figure] { return history({which}); });
    card->column()->addWidget(make_history_button(desk, this, [this] {
        std::vector<work::Figure> all;
        for (const auto& [figure, field] : m_fields)
            all.push_back(figure);
        return history(all);
    }, QStringLiteral("figures_history")), 0, Qt::AlignLeft);
    column()->addWidget(card);
    column()->addStretch();
}

void FiguresPage::add_figures(const QString& heading, const QString& help, const std::vector<work::Figure>& figures) {
    m_form->add_section(heading, help);
    for (const work::Figure figure : figures)
        m_fields.emplace_back(figure, m_form->add(figure_label(figure), make_figure_field(figure, m_desk), QLatin1String(work::info(figure).key), figure_help(figure)));
}

void FiguresPage::refresh() {
    if (m_form->is_edited())
        return;
    for (const work::FigureLine& line : work::all_figures(m_desk.workbook()))
        for (const auto& [figure, field] : m_fields)
            if (figure == line.figure)
                set_figure_value(field, figure, line.value);
}

HistoryOf FiguresPage::history(const std::vector<work::Figure>& figures) const {
    //: Title of a window: the figures of Set-up
    HistoryOf of{tr("Working figures"), {}, {}};
    of.reword = [this](work::CorrectionLine& line) {
        const auto figure = work::figure_of(line.record);
        line.record = figure_name(line.record);
        if (!figure || line.column != QLatin1String("value"))
            return;
        for (QString* value : {&line.before, &line.after}) {
            const qint64 number = value->toLongLong();
            const work::FigureUnit unit = work::info(*figure).unit;
            if (!value->isEmpty() && unit == work::FigureUnit::percent)
                *value = m_desk.percent(maths::ppm(number));
            else if (!value->isEmpty() && unit == work::FigureUnit::temperature)
                *value = m_desk.temperature(maths::Temperature{number});
        }
    };
    for (const work::Figure figure : figures)
        for (const work::RecordRef& record : work::record_of(m_desk.workbook(), figure))
            of.records.push_back(record);
    return of;
}

void FiguresPage::take_focus() { m_form->take_focus(); }

void FiguresPage::go_to(const QString& key) {
    if (Field* field = m_form->field(key)) {
        ensureWidgetVisible(field, 0, 80);
        field->take_focus();
    }
}

} // namespace soakbook::ui
