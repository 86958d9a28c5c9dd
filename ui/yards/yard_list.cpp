// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/yards/yard_list.h"

#include "core/work/yards_view.h"
#include "ui/yards/yard_words.h"

#include <algorithm>

namespace soakbook::ui {

namespace {

class YardList {
    Q_DECLARE_TR_FUNCTIONS(YardList)

public:
    static std::vector<SideItem> items(const Desk& desk);

private:
    static SideItem item(const work::YardLine& yard, const Desk& desk);
};

SideItem YardList::item(const work::YardLine& yard, const Desk& desk) {
    SideItem item;
    item.id = yard.id.value;
    item.head = yard.name;
    //: Under a yard's name
    item.below = tr("%n hives", nullptr, yard.hives);
    if (!yard.active) {
        //: Under a yard's name: nobody keeps hives there any more
        item.below = tr("not in use");
    } else if (yard.strips_hanging > 0 && yard.pull_by) {
        //: Under a yard's name; %1 "20 hives", %2 a day
        item.below = tr("%1, by %2").arg(item.below, YardWords::day(*yard.pull_by, desk));
    }
    if (yard.state) {
        item.state = YardWords::state(*yard.state);
        item.state_word = YardWords::word(*yard.state);
    }
    return item;
}

std::vector<SideItem> YardList::items(const Desk& desk) {
    std::vector<SideItem> items;
    int hives = 0;
    int strips = 0;
    const std::vector<work::YardLine> yards = work::yard_lines(desk.workbook(), desk.today());
    for (const work::YardLine& yard : yards) {
        hives += yard.active ? yard.hives : 0;
        strips += yard.strips_hanging;
    }
    int open = 0;
    for (const work::RoundLine& round : work::rounds(desk.workbook(), false)) {
        open += round.closed ? 0 : 1;
    }
    SideItem all;
    all.id = all_entry;
    //: First entry of the list of yards
    all.head = tr("All yards");
    //: Under an entry
    const QString standing = tr("%n hives", nullptr, hives);
    //: Under an entry; %1 "60 hives"
    all.below = strips == 0 ? standing : tr("%1, %n strips hang", nullptr, strips).arg(standing);
    SideItem rounds;
    rounds.id = rounds_entry;
    //: Second entry of the list of yards
    rounds.head = tr("Rounds");
    //: Under an entry
    rounds.below = open == 0 ? tr("none open")
                             //: Under an entry
                             : tr("%n open", nullptr, open);
    items.push_back(all);
    items.push_back(rounds);
    for (const work::YardLine& yard : yards) {
        items.push_back(item(yard, desk));
    }
    return items;
}

} // namespace

std::vector<SideItem> yard_items(const Desk& desk) {
    return YardList::items(desk);
}

qint64 first_entry(const Desk& desk) {
    const std::vector<work::YardLine> yards = work::yard_lines(desk.workbook(), desk.today());
    const auto urgency = [](const work::YardLine& yard) { return yard.state ? static_cast<int>(*yard.state) + 1 : 0; };
    const auto most = std::max_element(yards.begin(), yards.end(), [&](const work::YardLine& a, const work::YardLine& b) {
        return urgency(a) < urgency(b);
    });
    return most == yards.end() ? all_entry : qint64{most->id.value};
}

} // namespace soakbook::ui
