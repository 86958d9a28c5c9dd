// SPDX-License-Identifier: GPL-3.0-or-later
#include "years_player.h"

#include "core/book/undo_stack.h"

#include <algorithm>

namespace soakbook::tests {

using namespace work;

YearsPlayer::YearsPlayer(book::Workbook& workbook, const YearsWish& wish) : m_book(workbook), m_wish(wish), m_random(wish.seed) {
    if (wish.years < 1 || wish.hives < 1 || wish.rounds < 1 || wish.rounds > 10)
        throw std::runtime_error("a workbook holds at least a year, a hive and a round, and at most ten rounds a season");
    if (wish.rounds > 2) {
        // Rounds follow closely: strips come out before the next go in.
        m_pull_from = 122 / wish.rounds - 6;
        m_pull_by = m_pull_from + 7;
    }
}

maths::Day YearsPlayer::first_day(const YearsWish& wish) {
    const std::chrono::year_month_day last{wish.last};
    return maths::Day{(last.year() - std::chrono::years{wish.years}) / last.month() / last.day()};
}

book::Doing YearsPlayer::doing(maths::Day day, int hour, int minute, const QString& who, const QString& why) {
    const unsigned month = static_cast<unsigned>(std::chrono::year_month_day{day}.month());
    const int offset = month >= 4 && month <= 10 ? 120 : 60;
    const auto wall = day.time_since_epoch() + std::chrono::hours{hour} + std::chrono::minutes{minute};
    return {{std::chrono::duration_cast<std::chrono::milliseconds>(wall).count() - offset * 60'000, offset}, who, why, false};
}

book::Doing YearsPlayer::at(maths::Day day, int hour, int minute) const { return doing(day, hour, minute, m_who); }

book::Doing YearsPlayer::because(const QString& why, maths::Day day, int hour, int minute) const {
    return doing(day, hour, minute, m_who, why);
}

void YearsPlayer::on(maths::Day day, std::function<void()> what) { m_calendar.emplace(day, std::move(what)); }

YearsMade YearsPlayer::play() {
    const maths::Day first = first_day(m_wish);
    set_up(first);
    const int year = static_cast<int>(std::chrono::year_month_day{first}.year());
    for (int n = 1; n <= m_wish.years; ++n)
        season(year + n);
    while (!m_calendar.empty() && m_calendar.begin()->first <= m_wish.last) {
        auto next = m_calendar.extract(m_calendar.begin());
        m_who = one_in(3) ? QStringLiteral("Tam Birkhollow") : QStringLiteral("Mira Oldfen");
        next.mapped()();
        // What was done stays in memory to be undone; nobody undoes years.
        m_book.undo_stack().forget();
    }
    return m_made;
}

void YearsPlayer::season(int year) {
    if (m_wish.told)
        on(maths::day(year, 1, 10), [this, year] {
            m_wish.told(year - static_cast<int>(std::chrono::year_month_day{first_day(m_wish)}.year()));
        });
    // Strips for every hive and round, and a tenth for what goes wrong.
    const int strips = m_wish.hives * 4 * m_wish.rounds * 11 / 10;
    const int a_batch = static_cast<int>(m_bins.size()) * 480;
    const int batches = (strips + a_batch - 1) / a_batch;
    const maths::Day workshop = maths::day(year, 1, 20);
    on(maths::days_after(workshop, -6), [this, batches, day = maths::days_after(workshop, -6)] { deliver(day, batches); });
    for (int n = 0; n < batches; ++n)
        on(maths::days_after(workshop, 2 * n), [this, day = maths::days_after(workshop, 2 * n)] { make_batch(day); });
    on(maths::day(year, 3, 22), [this, year] { discard_past_limit(maths::day(year, 3, 22)); });
    on(maths::day(year, 3, 28), [this, year] { replace_dead(maths::day(year, 3, 28)); });
    on(maths::day(year, 6, 12), [this, year] { move_some(maths::day(year, 6, 12)); });
    for (int n = 0; n < m_wish.rounds; ++n) {
        const int after = m_wish.rounds == 1 ? 122 : 122 * n / (m_wish.rounds - 1);
        const maths::Day day = maths::days_after(maths::day(year, 4, 10), after);
        on(maths::days_after(day, -8), [this, n, year, day] { begin_round(n + 1, year, day); });
    }
    on(maths::day(year, 12, 3), [this, year] { print_register(maths::day(year, 12, 3)); });
}

std::unique_ptr<book::Workbook> workbook_of_years(const QString& path, const YearsWish& wish, YearsMade* made) {
    auto workbook = book::Workbook::create(path, YearsPlayer::doing(YearsPlayer::first_day(wish), 8));
    if (!workbook)
        throw std::runtime_error("no workbook could be made there");
    const YearsMade done = YearsPlayer(**workbook, wish).play();
    if (made)
        *made = done;
    return std::move(*workbook);
}

} // namespace soakbook::tests
