// SPDX-License-Identifier: GPL-3.0-or-later
// A strip kind and a vessel as they are written, checked: for Set-up and for the welcome, which writes several at once.
#pragma once

#include "core/book/record_io.h"
#include "core/book/records/operation.h"
#include "core/book/records/person.h"
#include "core/book/records/strip_kind.h"
#include "core/book/records/vessel.h"
#include "core/work/checks.h"
#include "core/work/setup.h"

namespace soakbook::work {

/// The record a form stands for. `prefix` stands before each field's name.
Outcome<book::Operation> checked_operation(const Operation& entry, const QString& prefix = {});
Outcome<book::Person> checked_person(const book::Workbook& workbook, const PersonLine& entry, const QString& field);
Outcome<book::StripKind> checked_strip_kind(const book::Workbook& workbook, const StripKindEntry& entry,
                                            const QString& prefix = {});
Outcome<book::Vessel> checked_vessel(const book::Workbook& workbook, const VesselEntry& entry,
                                     const QString& prefix = {});

/// Adds the record, or writes it over the one of its key; refuses when it is not there or nothing changes.
template <class Record> Outcome<book::Id<Record>> keep(book::Writing& writing, const Record& record) {
    if (!record.id)
        return book::insert(writing, record);
    const auto before = book::fetch(writing.workbook(), record.id);
    if (!before)
        return refuse(Why::not_found, {}, {record.name});
    if (*before == record)
        return refuse(Why::nothing_changed);
    book::update(writing, record);
    return record.id;
}

/// Refuses a name that another record of the table has.
template <class Record>
Not name_taken(const book::Workbook& workbook, book::Id<Record> id, const QString& name, const QString& field) {
    for (const Record& other : book::fetch_all<Record>(workbook))
        if (other.id != id && other.name.compare(name, Qt::CaseInsensitive) == 0)
            return no(Why::name_taken, field, {fact(name)});
    return {};
}

} // namespace soakbook::work
