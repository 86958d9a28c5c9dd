// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/papers/yard_paper_words.h"

#include <QCoreApplication>

namespace soakbook::ui {

namespace {

struct YardPaperWords {
    Q_DECLARE_TR_FUNCTIONS(YardPaperWords)
};

} // namespace

QString paper_hive(const QString& name, int hives) {
    if (hives <= 1) {
        return name;
    }
    //: A group of unnumbered hives that stand together
    const QString row = YardPaperWords::tr("row of %n", nullptr, hives);
    return name.isEmpty() || name == row ? row : QString(name + QStringLiteral(", ") + row);
}

QString paper_days(const Desk& desk, std::optional<maths::Day> from, std::optional<maths::Day> to) {
    if (from && to) {
        //: The first and the last day of a time
        return YardPaperWords::tr("%1 to %2").arg(desk.day_short(*from), desk.day(*to));
    }
    if (to) {
        //: The last day of a time
        return YardPaperWords::tr("until %1").arg(desk.day(*to));
    }
    //: The first day of a time
    return from ? YardPaperWords::tr("from %1").arg(desk.day(*from)) : QString();
}

QString paper_time(const Desk& desk, const work::YardTimeEntry& time) {
    const QString days = paper_days(desk, time.from, time.to);
    if (time.kind == work::TimeKind::flow) {
        //: %1 the name of a flow, %2 its days
        return YardPaperWords::tr("%1, %2").arg(time.what, days);
    }
    //: Days when a yard is not to be opened; %1 the days, %2 why
    return YardPaperWords::tr("not to be opened %1 (%2)").arg(days, time.what);
}

} // namespace soakbook::ui
