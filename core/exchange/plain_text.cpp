// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/plain_text.h"

namespace soakbook::exchange {
namespace {

bool is_direction_mark(QChar c) {
    return c == QChar(0x200E) || c == QChar(0x200F) || c == QChar(0x061C);
}

bool is_blank(QChar c) {
    return c == u'\t' || c.category() == QChar::Separator_Space;
}

std::optional<QChar> known_digit(char16_t c) {
    for (const char16_t zero : {char16_t(u'0'), char16_t(0x0660), char16_t(0x06F0), char16_t(0xFF10)}) {
        if (c >= zero && c <= zero + 9) {
            return QChar(static_cast<char16_t>(u'0' + (c - zero)));
        }
    }
    return std::nullopt;
}

QChar folded_mark(char16_t c) {
    switch (c) {
    case 0x2212: // minus sign
    case 0xFF0D: // full-width hyphen-minus
        return u'-';
    case 0xFF0B:
        return u'+';
    case 0xFF0E:
        return u'.';
    case 0xFF0C:
        return u',';
    case 0xFF0F:
        return u'/';
    case 0xFF1A:
        return u':';
    case 0x2019: // apostrophe as typography sets it
        return u'\'';
    default:
        return QChar(c);
    }
}

bool is_deceptive(QChar c) {
    switch (c.category()) {
    case QChar::Other_Control:
    case QChar::Other_Format:
    case QChar::Other_Surrogate:
    case QChar::Other_PrivateUse:
    case QChar::Other_NotAssigned:
    case QChar::Number_DecimalDigit: // known sets are folded before this is asked
    case QChar::Number_Other:
    case QChar::Number_Letter:
    case QChar::Separator_Line:
    case QChar::Separator_Paragraph:
        return true;
    default:
        return false;
    }
}

} // namespace

std::optional<QString> plain_text(const QString& text) {
    qsizetype begin = 0;
    qsizetype end = text.size();
    const auto droppable = [&text](qsizetype i) { return is_blank(text.at(i)) || is_direction_mark(text.at(i)); };
    while (begin < end && droppable(begin)) {
        ++begin;
    }
    while (end > begin && droppable(end - 1)) {
        --end;
    }
    QString plain;
    plain.reserve(end - begin);
    for (qsizetype i = begin; i < end; ++i) {
        const QChar c = text.at(i);
        if (is_blank(c)) {
            plain.append(u' ');
        } else if (const auto digit = known_digit(c.unicode())) {
            plain.append(*digit);
        } else if (is_deceptive(c)) {
            return std::nullopt;
        } else {
            plain.append(folded_mark(c.unicode()));
        }
    }
    return plain;
}

} // namespace soakbook::exchange
