// SPDX-License-Identifier: GPL-3.0-or-later
#include "years_player.h"

#include "core/work/figures.h"
#include "core/work/materials.h"
#include "core/work/setup.h"

#include <algorithm>
#include <array>

namespace soakbook::tests {

using namespace work;

namespace {

// Invented: no such places are meant.
constexpr std::array name_first{"Alder", "Birken", "Cloud", "Dapple", "Ember", "Fallow", "Gorse", "Hazel", "Ivory", "Juniper"};
constexpr std::array name_second{"bank", "corner", "down", "edge", "fold", "gate", "hollow", "lane", "mead", "rise"};

QString yard_name(int number) {
    const auto first = static_cast<std::size_t>(number) % name_first.size();
    const auto second = static_cast<std::size_t>(number) / name_first.size();
    const QString name = QLatin1String(name_first[first]) + QLatin1Char(' ') + QLatin1String(name_second[second % name_second.size()]);
    return second < name_second.size() ? name : name + QStringLiteral(" %1").arg(second / name_second.size() + 1);
}

} // namespace

void YearsPlayer::set_up(maths::Day day) {
    m_who = QStringLiteral("Mira Oldfen");
    // A workshop that fits the hives: two dozen batches a season at most.
    const int strips = m_wish.hives * 4 * m_wish.rounds * 11 / 10;
    const int bins = std::max(2, (strips + 24 * 480 - 1) / (24 * 480));
    FirstSetUp first;
    first.operation = {QStringLiteral("Oldfen and Birkhollow bees"), QStringLiteral("1 Kettle yard, Oldfen"), QStringLiteral("OB-1")};
    first.person = QStringLiteral("Mira Oldfen");
    first.kind.name = QStringLiteral("card 11 g");
    first.kind.dry = maths::grams(11);
    first.kind.target = maths::grams(34);
    first.kind.tolerance = maths::grams(0.5);
    first.kind.strips_per_bag = 80;
    first.kind.dose_rule = DoseRule::frames_of_bees;
    first.kind.dose_frames_tenths = 25;
    first.tank.is_tank = true;
    first.tank.name = QStringLiteral("tank");
    first.tank.capacity = maths::kilograms(40.0 * bins);
    first.bin.is_tank = false;
    first.bin.name = QStringLiteral("bin 1");
    first.bin.strips_held = 480;
    first.bin.flood = maths::kilograms(30);
    must([&](const Confirmed&) { return first_set_up(m_book, first, at(day, 8)); });
    must([&](const Confirmed&) { return save_person(m_book, {{}, QStringLiteral("Tam Birkhollow"), true}, at(day, 8)); });
    for (int n = 2; n <= bins; ++n) {
        VesselEntry bin = first.bin;
        bin.name = QStringLiteral("bin %1").arg(n);
        must([&](const Confirmed&) { return save_vessel(m_book, bin, at(day, 8)); });
    }
    m_kind = strip_kinds(m_book).at(0).id;
    for (const VesselEntry& vessel : vessels(m_book)) {
        if (vessel.is_tank)
            m_tank = vessel.id;
        else
            m_bins.push_back(vessel.id);
    }
    say_figures(day);
    const int a_yard = m_wish.hives < 100 ? 10 : m_wish.hives < 1'000 ? 25 : 50;
    for (int left = m_wish.hives, number = 0; left > 0; left -= a_yard, ++number)
        add_yard(number, std::min(left, a_yard), day);
}

void YearsPlayer::say_figures(maths::Day day) {
    const std::vector<SetFigure> figures{
        {Figure::heat_low, maths::celsius(48).count, {}},
        {Figure::heat_high, maths::celsius(58).count, {}},
        {Figure::reading_gap_minutes, 240, {}},
        {Figure::stir_every_minutes, 240, {}},
        {Figure::first_weigh_hours, 6, {}},
        {Figure::weigh_every_hours, 12, {}},
        {Figure::sample_strips, 10, {}},
        {Figure::rest_days, 7, {}},
        {Figure::near_limit_days, 30, {}},
        {Figure::opened_days, 60, {}},
        {Figure::pail_wait_days, 120, {}},
        {Figure::unexplained_limit, maths::percent(2).count, {}},
        {Figure::pull_from_days, m_pull_from, {}},
        {Figure::pull_by_days, m_pull_by, {}},
        {Figure::pull_warn_days, 5, {}},
        {Figure::withdrawal_days, 14, {}},
        {Figure::count_after_days, 14, {}},
        {Figure::mite_threshold, maths::percent(3).count, {}},
    };
    must([&](const Confirmed&) { return set_figures(m_book, figures, at(day, 9)); });
}

void YearsPlayer::add_yard(int number, int hives, maths::Day day) {
    Yard yard;
    yard.name = yard_name(number);
    YardEntry entry;
    entry.name = yard.name;
    entry.where_it_is = QStringLiteral("grid %1").arg(number + 1);
    yard.id = must([&](const Confirmed&) { return save_yard(m_book, entry, at(day, 10)); });
    HiveRow row;
    row.yard = yard.id;
    row.prefix = QStringLiteral("%1-").arg(number + 1);
    row.first = 1;
    row.count = hives;
    row.digits = 2;
    row.brood_boxes = 1;
    row.frames_of_bees = 9;
    must([&](const Confirmed&) { return add_hives(m_book, row, at(day, 10)); });
    // As it is counted frame by frame afterwards.
    std::vector<HiveEntry> counted = work::hives(m_book, yard.id);
    for (HiveEntry& hive : counted) {
        hive.frames_of_bees = 7 + below(4);
        hive.supers_on = false;
        hive.untreated = m_wish.hives > 20 && one_in(100);
    }
    if (number == 0 && m_wish.hives > 20)
        counted.back().untreated = true;
    must([&](const Confirmed&) { return save_hives(m_book, counted, at(day, 11)); });
    yard.hives_made = hives;
    yard.hives_wanted = hives;
    m_made.hives += hives;
    ++m_made.yards;
    m_yards.push_back(yard);
}

void YearsPlayer::deliver(maths::Day day, int batches) {
    const int strips = static_cast<int>(m_bins.size()) * 480 * batches;
    const int year = static_cast<int>(std::chrono::year_month_day{day}.year());
    const auto lot = [&](MaterialKind material, const char* name, qint64 amount, std::optional<qint64> container) {
        LotEntry entry;
        entry.material = material;
        entry.name = QStringLiteral("%1 %2").arg(QLatin1String(name)).arg(year);
        entry.supplier = QStringLiteral("Kettle and Crate");
        entry.received_on = day;
        entry.amount = amount;
        entry.container_amount = container;
        if (material == MaterialKind::acid) {
            entry.acid_form = FormOfAcid::dihydrate;
            entry.assay = maths::percent(99.6);
        }
        if (material == MaterialKind::strips) {
            entry.strip_kind = m_kind;
            entry.dry = maths::grams(11);
        }
        ++m_made.lots;
        return must([&](const Confirmed& yes) { return save_lot(m_book, entry, at(day, 9), yes); });
    };
    // More than enough of each: what is over is thrown away with the lot.
    const double liquid = 62.5 / 960 * strips + 50;
    m_acid = lot(MaterialKind::acid, "acid", std::min<qint64>(maths::kilograms(0.5 * liquid).count, 10'000'000'000), maths::kilograms(25).count);
    m_glycerine = lot(MaterialKind::glycerine, "glycerine", std::min<qint64>(maths::kilograms(0.8 * liquid).count, 10'000'000'000), maths::kilograms(25).count);
    m_strips = lot(MaterialKind::strips, "strips", std::min(strips + 100, 100'000), {});
    m_bags = lot(MaterialKind::bags, "bags", strips / 80 + 100, {});
}

void YearsPlayer::replace_dead(maths::Day day) {
    for (std::size_t n = 0; n < m_yards.size(); ++n) {
        Yard& yard = m_yards[n];
        const int living = static_cast<int>(work::hives(m_book, yard.id).size());
        if (living >= yard.hives_wanted)
            continue;
        HiveRow row;
        row.yard = yard.id;
        row.prefix = QStringLiteral("%1-").arg(n + 1);
        row.first = yard.hives_made + 1;
        row.count = yard.hives_wanted - living;
        row.digits = 2;
        row.brood_boxes = 1;
        row.frames_of_bees = 8;
        must([&](const Confirmed&) { return add_hives(m_book, row, at(day, 12)); });
        yard.hives_made += *row.count;
        m_made.hives += *row.count;
    }
}

} // namespace soakbook::tests
