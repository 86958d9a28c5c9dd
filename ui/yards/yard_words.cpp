// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/yards/yard_words.h"

namespace soakbook::ui {

namespace {

int year_of(maths::Day day) {
    return static_cast<int>(std::chrono::year_month_day{day}.year());
}

std::chrono::year_month month_of(maths::Day day) {
    const std::chrono::year_month_day parts{day};
    return parts.year() / parts.month();
}

} // namespace

QString YardWords::hive(const QString& name, int hives) {
    if (hives <= 1) {
        return name;
    }
    //: A group of unnumbered hives that stand together
    const QString row = tr("row of %n", nullptr, hives);
    return name.isEmpty() || name == row ? row : QString(name + QStringLiteral(", ") + row);
}

QString YardWords::day(maths::Day day, const Habits& habits) {
    return year_of(day) == year_of(habits.today()) ? habits.day_short(day) : habits.day(day);
}

QString YardWords::days(maths::Day from, maths::Day to, const Habits& habits) {
    QString first = day(from, habits);
    // Where the language writes the day before the month, the month is said once.
    if (month_of(from) == month_of(to) && from != to && !first.isEmpty() && first.front().isDigit()) {
        first = first.section(QLatin1Char(' '), 0, 0);
    } else if (year_of(from) == year_of(to)) {
        first = habits.day_short(from);
    }
    //: The first and the last day of a time: "12 to 26 Oct"
    return from == to ? day(to, habits) : tr("%1 to %2").arg(first, day(to, habits));
}

QString YardWords::days(std::optional<maths::Day> from, std::optional<maths::Day> to, const Habits& habits) {
    if (from && to) {
        return days(*from, *to, habits);
    }
    if (to) {
        //: The last day of a time
        return tr("until %1").arg(day(*to, habits));
    }
    //: The first day of a time
    return from ? tr("from %1").arg(day(*from, habits)) : QString();
}

QString YardWords::time(const work::YardTimeEntry& time, const Habits& habits) {
    const QString when = days(time.from, time.to, habits);
    if (time.kind == work::TimeKind::flow) {
        //: %1 the name of a flow, %2 two days
        return tr("%1 %2").arg(time.what, when);
    }
    //: Days when a yard is not to be opened; %1 two days, %2 why
    return tr("not to be opened %1 (%2)").arg(when, time.what);
}

QString YardWords::shortened(const QString& text, int most) {
    const QString line = text.simplified();
    return line.size() <= most ? line : QString(line.left(most - 1).trimmed() + QChar(0x2026));
}

QString YardWords::code(const QString& code) {
    const QString rich = QStringLiteral("<span style=\"font-family:'DejaVu Sans Mono'\">") + code.toHtmlEscaped() + QStringLiteral("</span>");
    return rich;
}

QString YardWords::bags(const std::vector<work::FromBag>& from) {
    if (from.size() == 1) {
        return from.front().code;
    }
    QStringList parts;
    for (const work::FromBag& bag : from) {
        //: A bag's code and how many strips come out of it
        parts += tr("%1 %2").arg(bag.code).arg(bag.strips);
    }
    return parts.join(QStringLiteral(" + "));
}

QString YardWords::rate(const work::MiteFigures& figures, const Habits& habits) {
    if (figures.rate && figures.low && figures.high) {
        const QString low = habits.percent(*figures.low).remove(QLatin1Char('%')).trimmed();
        //: Mites on a hundred bees, and between which figures that lies: "3 % (1.6 to 5.6 %)"
        return tr("%1 (%2 to %3)").arg(habits.percent(*figures.rate), low, habits.percent(*figures.high));
    }
    if (figures.rate) {
        return habits.percent(*figures.rate);
    }
    if (figures.per_day) {
        //: Mites fallen a day
        return tr("%1 a day").arg(habits.locale().toString(*figures.per_day, 'f', 1));
    }
    return {};
}

QString YardWords::counted(work::MiteCountKind kind, int mites, std::optional<int> bees, std::optional<int> days) {
    if (kind == work::MiteCountKind::drop) {
        //: Mites fallen; %1 mites, %n days
        return days ? tr("%1 in %n days", nullptr, *days).arg(mites) : QString::number(mites);
    }
    //: %1 mites, %2 bees
    return bees ? tr("%1 on %2 bees").arg(mites).arg(*bees) : QString::number(mites);
}

QString YardWords::kind(work::MiteCountKind kind) {
    switch (kind) {
    case work::MiteCountKind::wash:
        //: A way to count mites: bees are washed
        return tr("wash");
    case work::MiteCountKind::powder:
        //: A way to count mites: bees are shaken in powdered sugar
        return tr("powder shake");
    case work::MiteCountKind::drop:
        //: A way to count mites: what falls on a board by itself
        return tr("natural drop");
    }
    return {};
}

State YardWords::state(work::PullState state) {
    switch (state) {
    case work::PullState::waiting:
        return State::resting;
    case work::PullState::open:
        return State::ready;
    case work::PullState::closing_soon:
        return State::near;
    case work::PullState::past:
        return State::past;
    }
    return State::resting;
}

QString YardWords::word(work::PullState state) {
    switch (state) {
    case work::PullState::waiting:
        //: Strips hang and are not to be pulled yet
        return tr("hanging");
    case work::PullState::open:
        //: Strips hang and may be pulled
        return tr("to pull");
    case work::PullState::closing_soon:
        //: Strips hang and their last day is near
        return tr("pull soon");
    case work::PullState::past:
        //: Strips hang longer than their last day
        return tr("overdue");
    }
    return {};
}

std::optional<State> YardWords::state(const work::HiveLine& line) {
    if (line.state) {
        return state(*line.state);
    }
    return line.entry.state == work::StateOfHive::alive ? std::nullopt : std::optional<State>(State::gone);
}

QString YardWords::word(const work::HiveLine& line) {
    if (line.entry.state == work::StateOfHive::alive) {
        return line.state ? word(*line.state) : QString();
    }
    const QString what = word(line.entry.state);
    //: A dead hive in which strips still hang: "dead, pull soon"
    return line.state ? tr("%1, %2").arg(what, word(*line.state)) : what;
}

QString YardWords::word(work::StateOfHive state) {
    switch (state) {
    case work::StateOfHive::alive:
        //: The state of a hive
        return tr("alive");
    case work::StateOfHive::dead:
        //: The state of a hive
        return tr("dead");
    case work::StateOfHive::gone:
        //: The state of a hive: sold, stolen, joined with another
        return tr("gone");
    }
    return {};
}

QString YardWords::gloves_caution() {
    //: A caution
    return tr("Acid-proof gloves when handling strips; keep them from eyes and mouth, and rinse splashes at once with plenty of water.");
}

QString YardWords::harvest_caution() {
    //: A caution
    return tr("Supers, harvest and withdrawal: follow the label, the vet and local rules.");
}

QString YardWords::used_strips_caution() {
    //: A caution
    return tr("Used strips: never into a stove or smoker, away from stock and pets, by local rules.");
}

} // namespace soakbook::ui
