// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/find.h"

#include "core/book/codes.h"
#include "core/book/queries/found.h"
#include "core/maths/codes.h"

namespace soakbook::work {

namespace {

FoundKind kind_of(const QString& table) {
    static const std::map<QString, FoundKind> kinds{
        {QStringLiteral("batch"), FoundKind::batch},     {QStringLiteral("bag"), FoundKind::bag},
        {QStringLiteral("pail"), FoundKind::pail},       {QStringLiteral("hive"), FoundKind::hive},
        {QStringLiteral("yard"), FoundKind::yard},       {QStringLiteral("round"), FoundKind::round},
        {QStringLiteral("material_lot"), FoundKind::lot}};
    return kinds.at(table);
}

} // namespace

FindResult find(const book::Workbook& workbook, const QString& text, int most) {
    FindResult result;
    const QString typed = text.simplified();
    if (typed.isEmpty()) {
        result.why_not = NotFound::empty;
        return result;
    }
    const auto code = maths::parse_code(typed.toStdString());
    if (code) {
        const QString exact = QString::fromStdString(code->text);
        if (const auto row = book::record_of_code(workbook, exact)) {
            result.found.push_back({kind_of(row->table), row->id, row->name, row->where, {}});
            return result;
        }
        if (const auto given = book::code_given(workbook, exact)) {
            result.found.push_back({FoundKind::given_but_undone, 0, exact, {}, given});
            return result;
        }
    }
    for (const book::FoundRecord& row : book::records_named(workbook, typed, most))
        result.found.push_back({kind_of(row.table), row.id, row.name, row.where, {}});
    if (code)
        result.why_not = NotFound::no_such_code;
    else
        result.why_not =
            code.error() == maths::Unanswerable::wrong_check ? NotFound::wrong_check_character : NotFound::no_such_name;
    return result;
}

} // namespace soakbook::work
