// SPDX-License-Identifier: GPL-3.0-or-later
// What the page of a yard says in its sentence, and which of its buttons is the one thing to do.
#include "core/work/yards_view.h"
#include "ui/parts/cards.h"
#include "ui/parts/theme.h"
#include "ui/yards/yard_page.h"
#include "ui/yards/yard_rounds.h"
#include "ui/yards/yard_words.h"

#include <QPushButton>

#include <algorithm>

namespace soakbook::ui {

namespace {

struct YardSums {
    int hives = 0;
    int carrying = 0;
    int strips = 0;
    std::optional<maths::Day> since;
    std::optional<maths::Day> from;
    std::optional<maths::Day> by;
    std::optional<work::PullState> worst;
};

YardSums sums_of(const std::vector<work::HiveLine>& lines) {
    YardSums sums;
    for (const work::HiveLine& line : lines) {
        sums.hives += line.entry.state == work::StateOfHive::alive ? line.entry.hives : 0;
        if (line.strips == 0) {
            continue;
        }
        sums.carrying += line.entry.hives;
        sums.strips += line.strips;
        sums.since = line.since ? std::min(sums.since.value_or(*line.since), *line.since) : sums.since;
        sums.from = line.pull_from ? std::min(sums.from.value_or(*line.pull_from), *line.pull_from) : sums.from;
        sums.by = line.pull_by ? std::min(sums.by.value_or(*line.pull_by), *line.pull_by) : sums.by;
        sums.worst = line.state ? std::max(sums.worst.value_or(*line.state), *line.state) : sums.worst;
    }
    return sums;
}

} // namespace

void YardPage::show_sentence(const std::vector<work::HiveLine>& lines) {
    const YardSums sums = sums_of(lines);
    m_sentence->clear();
    //: Rich text: keep the marks around the figure
    m_sentence->add(tr("<b>%n</b> hives", nullptr, sums.hives));
    if (sums.strips == 0) {
        //: No strips hang in a yard
        m_sentence->add(tr("no strips hang"));
    } else {
        //: Rich text; %1 strips hang in %n hives
        m_sentence->add(tr("<b>%1</b> strips hang in %n", nullptr, sums.carrying).arg(sums.strips));
        if (sums.since) {
            //: %1 a day
            m_sentence->add(tr("since %1").arg(YardWords::day(*sums.since, m_desk)));
        }
        //: Rich text; %1 two days
        m_sentence->add(tr("pull window <b>%1</b>").arg(YardWords::days(sums.from, sums.by, m_desk)));
        if (sums.worst) {
            m_sentence->add(YardWords::state(*sums.worst), YardWords::word(*sums.worst));
        }
    }
    for (const work::RoundLine& round : m_yard ? open_rounds(m_desk.workbook(), m_yard) : std::vector<work::RoundLine>{}) {
        if (!is_visited(round, m_yard)) {
            //: A round ahead; %1 its name, %2 a day
            m_sentence->add(tr("planned: %1, %2").arg(YardWords::shortened(round.name, 40).toHtmlEscaped(), YardWords::day(round.planned_on, m_desk)));
        }
    }
    m_sentence->set_remark(YardWords::shortened(m_entry.where_it_is, 36));
}

void YardPage::settle_buttons(const std::vector<work::HiveLine>& lines) {
    const YardSums sums = sums_of(lines);
    const bool one = bool(m_yard);
    m_in->setVisible(one && !lines.empty());
    m_out->setVisible(sums.strips > 0);
    m_count->setVisible(one && sums.hives > 0);
    m_run_sheet->setVisible(one && sums.hives > 0);
    m_pull_list->setVisible(sums.strips > 0);
    m_add->setVisible(one);
    m_times->setVisible(one);
    // The one thing to do: hives first, then strips out where their time has come, otherwise strips in.
    const bool pull = sums.worst && *sums.worst != work::PullState::waiting;
    QPushButton* first = one && lines.empty() ? m_add : pull ? m_out : m_in;
    for (QPushButton* button : {m_in, m_out, m_add}) {
        const bool is_first = button == first;
        if ((button->property("kind").toString() == QLatin1String("primary")) != is_first) {
            set_kind(button, is_first ? "primary" : "");
        }
    }
}

} // namespace soakbook::ui
