// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/perform.h"

#include "core/book/codes.h"
#include "core/maths/codes.h"

namespace soakbook::work {

QString next_code(book::Writing& writing, char kind) {
    const QChar letter = QLatin1Char(kind);
    const auto code = maths::next_code(static_cast<maths::CodeKind>(kind), book::last_code_number(writing.workbook(), letter) + 1);
    if (!code)
        throw std::runtime_error("every code of this kind is given out");
    const QString text = QString::fromStdString(code->text);
    book::give_code(writing, text, letter, code->number);
    return text;
}

} // namespace soakbook::work
