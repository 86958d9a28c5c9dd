// SPDX-License-Identifier: GPL-3.0-or-later
// Days and times as people write them.
#pragma once

#include "core/exchange/quantity_text.h"

namespace soakbook::exchange {

/// Reads `3 oct`, `oct 3, 2026`, `3. Okt. 2026`, `3/10`, `3.10.2026`, `2026-10-03`, `-2` (two days ago), `0`, `+7`.
/// Month names: English and the locale's, three letters or more. Order of bare numbers is the locale's (day first or
/// month first) and never turned round to make a day possible; both readings possible and the year written with two
/// digits
/// (`03/04/26`) is refused as two_meanings. A two-digit year is of this century. A day without a year is the one
/// nearest to `today`, of two equally near the earlier. Years 1900 to 2199, else too_large; a day no calendar has is
/// impossible_date; anything else, a lone number included, is not_a_number.
Read<maths::Day> read_day(const QString& text, maths::Day today, const QLocale& locale);
/// Reads `14:30`, `14.30`, `1430`, `930`, `2 pm`, `2:30 p.m.`; minutes since midnight. A lone `9` is refused as
/// two_meanings; `24:00` and `9:75` as impossible_date.
Read<int> read_time(const QString& text);
/// `3 Oct 2026` with the locale's short month (English where it has none of letters), `3. Okt. 2026` where the locale
/// puts a dot after the day; what read_day reads back as the same day.
QString write_day(maths::Day day, const QLocale& locale);
/// `3 Oct`, without the year.
QString write_day_short(maths::Day day, const QLocale& locale);
/// `2026-10-03`, for files.
QString write_day_iso(maths::Day day);
/// Reads exactly what write_day_iso writes.
Read<maths::Day> read_day_iso(const QString& text);
/// `14:30` at the wall clock of that moment.
QString write_time(const maths::Instant& at);

} // namespace soakbook::exchange
