// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/undo.h"

#include "core/book/undo_stack.h"
#include "core/work/perform.h"

namespace soakbook::work {

namespace {

template <class TakeBack> Outcome<Piece> take_back(TakeBack&& f) {
    try {
        const auto piece = f();
        if (piece)
            return *piece;
        switch (piece.error()) {
        case book::NotUndone::nothing:
            return refuse(Why::nothing_to_undo);
        case book::NotUndone::changed_outside:
            return refuse(Why::changed_outside);
        case book::NotUndone::blocked:
            break;
        }
        return refuse(Why::undo_blocked);
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

} // namespace

std::optional<Piece> next_undo(const book::Workbook& workbook) { return workbook.undo_stack().next_undo(); }
std::optional<Piece> next_redo(const book::Workbook& workbook) { return workbook.undo_stack().next_redo(); }

Outcome<Piece> undo(book::Workbook& workbook, const Doing& doing) {
    return take_back([&] { return workbook.undo_stack().undo(doing); });
}
Outcome<Piece> redo(book::Workbook& workbook, const Doing& doing) {
    return take_back([&] { return workbook.undo_stack().redo(doing); });
}

} // namespace soakbook::work
