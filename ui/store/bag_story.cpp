// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/store/bag_story.h"

#include "ui/store/store_words.h"

#include <cstdlib>

namespace soakbook::ui {

BagStory::BagStory(Desk& desk, QWidget* parent) : FactGrid(parent), m_desk(desk) {
    setObjectName(QStringLiteral("bag_story"));
    //: Read aloud: the name of a list
    setAccessibleName(tr("What happened to this bag"));
}

QString BagStory::what(const work::BagEvent& event) const {
    using Kind = work::BagEvent::Kind;
    const QString strips = m_desk.count(std::abs(event.strips));
    switch (event.kind) {
    case Kind::sealed:
        //: What happened to a bag; %1 a number of strips
        return tr("sealed with %1 strips").arg(strips);
    case Kind::opened:
        //: What happened to a bag
        return tr("opened");
    case Kind::resealed:
        //: What happened to a bag
        return tr("resealed");
    case Kind::placed:
        //: What happened to strips of a bag; %1 their number, %2 a hive and its yard
        return tr("%1 hung: %2").arg(strips, event.where);
    case Kind::discarded:
        //: What happened to strips of a bag; %1 their number, %2 the reason
        return tr("%1 thrown away: %2").arg(strips, event.reason);
    case Kind::recounted:
        break;
    }
    //: What happened to a bag; %1 the difference with its sign, %2 the reason
    return tr("counted anew, %1: %2").arg(with_sign(m_desk, event.strips), event.reason);
}

void BagStory::show_bag(work::BagId bag) {
    std::vector<CardFact> lines;
    for (const work::BagEvent& event : work::bag_events(m_desk.workbook(), bag)) {
        //: What happened to a bag and does not count any more; %1 what it said
        const QString words = event.made_void ? tr("void: %1").arg(what(event)) : what(event);
        lines.push_back({m_desk.day(event.on), words});
    }
    set_facts(lines);
}

} // namespace soakbook::ui
