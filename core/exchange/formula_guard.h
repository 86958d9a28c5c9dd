// SPDX-License-Identifier: GPL-3.0-or-later
// A cell that begins like a formula is run by spreadsheets when a file is opened; an apostrophe before it stops that.
#pragma once

#include <QString>

namespace soakbook::exchange {

/// True for a text that begins with = + - @ (their full-width forms too), a tab or a line end, after any apostrophes.
inline bool looks_like_formula(const QString& text) {
    qsizetype begin = 0;
    while (begin < text.size() && text.at(begin) == u'\'') {
        ++begin;
    }
    static constexpr QStringView starts(u"=+-@\t\r\n\uFF1D\uFF0B\uFF0D\uFF20");
    return begin < text.size() && starts.contains(text.at(begin));
}

inline QString with_formula_guard(const QString& text) {
    return looks_like_formula(text) ? QString(u'\'' + text) : text;
}

inline QString without_formula_guard(const QString& text) {
    return text.startsWith(u'\'') && looks_like_formula(text) ? text.mid(1) : text;
}

} // namespace soakbook::exchange
