// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/yards/pull_page.h"

#include "core/work/how_yards.h"
#include "core/work/yards_view.h"
#include "ui/parts/cards.h"
#include "ui/parts/day_field.h"
#include "ui/parts/record_table.h"
#include "ui/yards/yard_draft.h"
#include "ui/yards/yard_words.h"

#include <QPushButton>

#include <algorithm>
#include <map>
#include <numeric>

namespace soakbook::ui {

PullPage::PullPage(Desk& desk, QWidget* parent)
    //: The filled button of strips out
    : GridPage(desk, QStringLiteral("pull"), tr("Strips to take out"), tr("Enter the strips out"), parent),
      m_rows(new RowsModel<PullRow>(PullGrid::columns(desk, [this] { note_typing(); }),
                                    [](const PullRow& row) { return row.line.placement.value; }, this)) {
    //: A button that prints a sheet to take along
    QPushButton* list = add_button(tr("Pull list"), QStringLiteral("pull_pull_list"));
    connect(list, &QPushButton::clicked, this, [this] { Q_EMIT wants_pull_list(m_yard.value); });
    //: Field: the day the strips came out
    m_day = form()->add(tr("Day"), new DayField(desk), QStringLiteral("on"),
                        //: Help of a field
                        tr("A day gone by is an entry made late. Empty a cell under Pulled where strips stay in."));
    m_day->editor()->setObjectName(QStringLiteral("pull_on"));
    show_grid_refusals();
    form()->set_commit([this](const work::Confirmed& confirmed) { return enter(confirmed); });
    set_grid(m_rows, PullGrid::widths(), pull_note, {pull_since, pull_bag, pull_day, pull_window});
    set_first_column(pull_pulled);
    //: What stands in the empty grid of strips out
    table()->set_empty_text(tr("No strips hang here. What you hang stands here until it is pulled."));
    add_caution(YardWords::gloves_caution() + QLatin1Char(' ') + YardWords::used_strips_caution());
}

void PullPage::open(work::YardId yard) {
    if (!m_open || yard != m_yard) {
        m_open = true;
        m_yard = yard;
        m_rows->set_rows({});
        m_day->set_value(desk().today());
        set_complaint({});
        form()->start_again();
    }
    table()->setColumnHidden(pull_yard, bool(m_yard));
    fit_columns();
    refresh();
    DraftPlace place = yard_draft(QStringLiteral("pull"), QStringLiteral("strips_out"), {m_yard.value});
    place.title = title();
    form()->set_draft(place);
    settle_give_up();
    Q_EMIT title_changed();
}

QString PullPage::title() const {
    //: Title; %1 a yard
    return m_yard ? tr("%1: strips out").arg(m_yard_name) : tr("Strips out");
}

void PullPage::refresh() {
    if (!m_open) {
        return;
    }
    for (const work::YardLine& yard : work::yard_lines(desk().workbook(), desk().today())) {
        if (yard.id == m_yard) {
            m_yard_name = yard.name;
        }
    }
    std::vector<PullRow> rows;
    for (const work::PullLine& line : work::hanging(desk().workbook(), m_yard, desk().today())) {
        PullRow row;
        row.line = line;
        if (const PullRow* before = m_rows->find(line.placement.value)) {
            row.take_typing(*before);
        }
        rows.push_back(std::move(row));
    }
    m_rows->set_rows(std::move(rows));
    figure();
    show_how();
    Q_EMIT title_changed();
}

void PullPage::forget_typing() {
    m_rows->set_rows({});
    refresh();
}

void PullPage::figure() {
    set_complaint({});
    const std::vector<PullRow>& rows = m_rows->rows();
    std::map<qint64, int> hives; // groups counted whole
    int strips = 0;
    int pulled = 0;
    int missing = 0;
    std::optional<maths::Day> from;
    std::optional<maths::Day> by;
    for (const PullRow& row : rows) {
        hives[row.line.hive.value] = row.line.hives;
        strips += row.line.strips;
        pulled += row.strips_pulled().value_or(0);
        missing += row.strips_missing().value_or(0);
        from = row.line.pull_from ? std::max(from.value_or(*row.line.pull_from), *row.line.pull_from) : from;
        by = row.line.pull_by ? std::min(by.value_or(*row.line.pull_by), *row.line.pull_by) : by;
    }
    sentence()->clear();
    //: Rich text: keep the marks around the figure
    sentence()->add(tr("<b>%n</b> hives carry strips", nullptr, std::accumulate(hives.begin(), hives.end(), 0, [](int sum, const auto& hive) { return sum + hive.second; })));
    //: Rich text: keep the marks around the figures; %1 strips pulled of %n hanging
    sentence()->add(tr("<b>%1</b> pulled of <b>%n</b> hanging", nullptr, strips).arg(pulled));
    if (missing > 0) {
        //: Rich text: keep the marks around the figure
        sentence()->add(tr("<b>%n</b> missing", nullptr, missing));
    }
    if (from && by && *from <= *by) {
        //: Rich text; %1 two days
        sentence()->add(tr("pull window <b>%1</b>").arg(YardWords::days(*from, *by, desk())));
    } else if (by) {
        //: Rich text; %1 a day
        sentence()->add(tr("first last day <b>%1</b>").arg(YardWords::day(*by, desk())));
    }
    const maths::Day on = m_day->value().value_or(desk().today());
    //: Heading of the grid; %1 a day
    set_heading(tr("Strips out on %1, all pulled unless typed over").arg(YardWords::day(on, desk())));
    const auto exceptions = std::count_if(rows.begin(), rows.end(), [](const PullRow& row) { return row.is_exception(); });
    //: How many rows were typed over
    set_aside(exceptions == 0 ? QString() : tr("%n exceptions", nullptr, static_cast<int>(exceptions)));
}

void PullPage::show_how() {
    const PullRow* row = m_rows->find(table()->current_id());
    const auto window = row == nullptr ? std::nullopt : work::how_pull_window(desk().workbook(), row->line.placement);
    tell_how(window ? std::vector<work::How>{*window} : std::vector<work::How>{},
             row == nullptr ? QString() : YardWords::hive(row->line.hive_name, row->line.hives));
}

work::PullEntry PullPage::entry() {
    work::PullEntry entry;
    entry.on = m_day->value();
    m_sent.clear();
    for (const PullRow& row : m_rows->rows()) {
        if (!row.stays()) {
            entry.rows.push_back(row.entry());
            m_sent.push_back(row.line.placement);
        }
    }
    return entry;
}

std::optional<work::Refusal> PullPage::enter(const work::Confirmed& confirmed) {
    set_complaint({});
    const work::PullEntry wanted = entry();
    if (auto unread = unread_cell(*m_rows, m_sent)) {
        return unread;
    }
    const auto done = work::enter_pull(desk().workbook(), wanted, desk().doing(), confirmed);
    if (!done) {
        return done.error();
    }
    m_open = false;
    //: News after strips came out; %1 strips pulled
    QString news = tr("%n hives: %1 strips pulled.", nullptr, done->hives).arg(done->pulled);
    if (done->missing > 0) {
        //: News after strips came out
        news += QLatin1Char(' ') + tr("%n strips were missing.", nullptr, done->missing);
    }
    Q_EMIT entered(news);
    return std::nullopt;
}

void PullPage::refused_at(int index, const QString& part, const QString& words) {
    if (index < 0 || index >= static_cast<int>(m_sent.size())) {
        set_complaint(words);
        return;
    }
    const qint64 placement = m_sent[static_cast<std::size_t>(index)].value;
    const PullRow* row = m_rows->find(placement);
    const QString said = row != nullptr && row->unread() == part ? number_wanted() : words;
    //: %1 a hive, %2 what is wrong there
    set_complaint(row == nullptr ? said : tr("%1: %2").arg(YardWords::hive(row->line.hive_name, row->line.hives), said));
    go_to(placement, part == QLatin1String("missing") ? pull_missing : pull_pulled);
}

} // namespace soakbook::ui
