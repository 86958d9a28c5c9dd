// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/month_names.h"

#include <QStringList>

#include <algorithm>

namespace soakbook::exchange {
namespace {

/// Lower case, without a closing dot.
QString simple(const QString& name) {
    QString folded = name.trimmed().toCaseFolded();
    while (folded.endsWith(u'.')) {
        folded.chop(1);
    }
    return folded;
}

QString without_accents(const QString& name) {
    QString bare;
    for (const QChar c : name.normalized(QString::NormalizationForm_D)) {
        if (c.category() != QChar::Mark_NonSpacing) {
            bare.append(c);
        }
    }
    return bare;
}

QStringList names_of(int month, const QLocale& locale) {
    return {simple(locale.monthName(month, QLocale::ShortFormat)),
            simple(locale.standaloneMonthName(month, QLocale::ShortFormat)),
            simple(locale.monthName(month, QLocale::LongFormat)),
            simple(locale.standaloneMonthName(month, QLocale::LongFormat))};
}

/// Bit n for month n where `fits(name)` is true of one of its names.
template <class Fits> unsigned months_where(const QLocale& locale, Fits fits) {
    unsigned months = 0;
    for (int month = 1; month <= 12; ++month) {
        const QStringList names = names_of(month, locale);
        if (std::any_of(names.begin(), names.end(), fits)) {
            months |= 1U << month;
        }
    }
    return months;
}

std::optional<unsigned> only_one(unsigned months) {
    for (unsigned month = 1; month <= 12; ++month) {
        if (months == 1U << month) {
            return month;
        }
    }
    return std::nullopt;
}

bool is_a_name(const QString& text) {
    return !text.isEmpty() &&
           std::all_of(text.begin(), text.end(), [](QChar c) { return c.isLetter() || c.isMark() || c == u'.'; });
}

} // namespace

Read<unsigned> read_month(const QString& word, const QLocale& locale) {
    const QString wanted = simple(word);
    const auto exact = [&wanted](const QString& name) { return name == wanted; };
    for (const QLocale& language : {locale, QLocale::c()}) {
        if (const auto month = only_one(months_where(language, exact))) {
            return *month;
        }
    }
    const QString bare = without_accents(wanted);
    if (bare.size() < 3) {
        return tl::unexpected(Unreadable::not_a_number);
    }
    const auto begins = [&bare](const QString& name) { return without_accents(name).startsWith(bare); };
    const unsigned months = months_where(locale, begins) | months_where(QLocale::c(), begins);
    if (const auto month = only_one(months)) {
        return *month;
    }
    return tl::unexpected(months == 0 ? Unreadable::not_a_number : Unreadable::two_meanings);
}

QString write_month(unsigned month, const QLocale& locale) {
    const QString own = locale.monthName(static_cast<int>(month), QLocale::ShortFormat);
    if (is_a_name(own) && read_month(own, locale) == month) {
        return own;
    }
    return QLocale::c().monthName(static_cast<int>(month), QLocale::ShortFormat);
}

} // namespace soakbook::exchange
