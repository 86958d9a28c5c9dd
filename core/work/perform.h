// SPDX-License-Identifier: GPL-3.0-or-later
// How a piece of work is written: once, and a store that cannot take it now becomes a refusal.
#pragma once

#include "core/book/statement.h"
#include "core/book/workbook.h"
#include "core/work/outcome.h"
#include "core/work/piece.h"

namespace soakbook::work {

/// Runs `f(book::Writing&)`, which gives an Outcome, as the piece of work of that key (one of piece::all).
template <class F> auto perform(book::Workbook& workbook, const Piece& piece, const Doing& doing, F&& f) -> decltype(f(std::declval<book::Writing&>())) {
    try {
        return workbook.write(piece, doing, std::forward<F>(f));
    } catch (const book::ChangedOutside&) {
        return refuse(Why::changed_outside);
    } catch (const book::LookingOnly&) {
        return refuse(Why::looking_only);
    } catch (const book::BeingChecked&) {
        return refuse(Why::being_checked);
    } catch (const book::Busy&) {
        return refuse(Why::busy);
    } catch (const book::DiskFull&) {
        return refuse(Why::disk_full);
    } catch (const book::DiskFailed&) {
        return refuse(Why::disk_failed);
    } catch (const book::Replaced&) {
        return refuse(Why::replaced);
    } catch (const book::ReadOnly&) {
        return refuse(Why::read_only);
    }
}

/// Gives out the next code for 'B', 'S' or 'P' inside a piece of work under way.
QString next_code(book::Writing& writing, char kind);

} // namespace soakbook::work
