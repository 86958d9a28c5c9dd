// SPDX-License-Identifier: GPL-3.0-or-later
// What a visit says of itself in its sentence: hives, strips, bags, days.
#include "core/work/store_view.h"
#include "ui/parts/cards.h"
#include "ui/yards/visit_page.h"
#include "ui/yards/yard_words.h"

#include <algorithm>
#include <map>

namespace soakbook::ui {

void VisitPage::show_figures(const std::vector<VisitRow>& rows) {
    int hives = 0;
    int grouped = 0;
    int strips = 0;
    int planned = 0;
    std::map<std::pair<QString, qint64>, int> used;
    for (const VisitRow& row : rows) {
        hives += row.line.hives;
        grouped += row.line.hives > 1 ? row.line.hives : 0;
        strips += row.strips().value_or(0);
        planned += row.line.planned.value_or(0);
        for (const work::FromBag& from : row.from) {
            used[{from.code, from.bag.value}] += from.strips;
        }
    }
    sentence()->clear();
    //: Rich text: keep the marks around the figure
    const QString count = tr("<b>%n</b> hives", nullptr, hives);
    //: %1 hives, %n of them unnumbered in rows
    sentence()->add(grouped == 0 ? count : tr("%1, %n of them in a row", nullptr, grouped).arg(count));
    //: Rich text: keep the marks around the figure
    const QString wanted = tr("<b>%n</b> strips planned", nullptr, planned);
    //: Rich text; %1 "89 strips planned", %n strips typed instead
    sentence()->add(strips == planned ? wanted : tr("%1, <b>%n</b> in", nullptr, strips).arg(wanted));

    QStringList bags;
    for (const auto& [bag, count_of] : used) {
        const auto found = std::find_if(m_plan.bags.begin(), m_plan.bags.end(), [&](const work::BagUse& use) { return use.code == bag.first; });
        const bool opened = found != m_plan.bags.end() && found->opened;
        const int left = found != m_plan.bags.end() ? found->left_before : work::bag(desk().workbook(), work::BagId{bag.second}, desk().today())->left;
        //: An opened bag: its code and the strips left in it
        bags += opened ? tr("%1 (opened, %2 left)").arg(YardWords::code(bag.first)).arg(left)
                       //: A bag: its code and the strips left in it
                       : tr("%1 (%2 left)").arg(YardWords::code(bag.first)).arg(left);
    }
    constexpr qsizetype most = 3;
    if (!bags.isEmpty()) {
        const QString named = bags.mid(0, most).join(QStringLiteral(", "));
        const int more = static_cast<int>(std::max<qsizetype>(0, bags.size() - most));
        //: %1 the bags used; %n more of them
        sentence()->add(tr("bags %1").arg(more == 0 ? named : tr("%1 and %n more", nullptr, more).arg(named)));
    }
    //: Rich text; %1 two days
    sentence()->add(tr("pull window <b>%1</b>").arg(YardWords::days(m_plan.pull_from, m_plan.pull_by, desk())));
    if (m_plan.short_of > 0) {
        //: Strips the store does not have ready
        sentence()->add(State::past, tr("%n strips short in the store", nullptr, m_plan.short_of));
    }
    for (const work::YardTimeEntry& time : m_plan.meeting) {
        sentence()->add(YardWords::shortened(YardWords::time(time, desk()), 70).toHtmlEscaped());
    }
}

} // namespace soakbook::ui
