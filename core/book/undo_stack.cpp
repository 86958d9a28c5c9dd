// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/undo_stack.h"

#include "core/book/changeset.h"
#include "core/book/statement.h"
#include "core/book/workbook.h"

namespace soakbook::book {

std::optional<Piece> UndoStack::next_undo() const {
    return m_done.empty() ? std::nullopt : std::optional<Piece>(m_done.back().piece);
}
std::optional<Piece> UndoStack::next_redo() const {
    return m_undone.empty() ? std::nullopt : std::optional<Piece>(m_undone.back().piece);
}

void UndoStack::push_work(Step step) {
    m_done.push_back(std::move(step));
    m_undone.clear();
}

void UndoStack::forget() {
    m_done.clear();
    m_undone.clear();
}

tl::expected<Piece, NotUndone> UndoStack::undo(const Doing& doing) { return take_back(m_done, doing, false); }
tl::expected<Piece, NotUndone> UndoStack::redo(const Doing& doing) { return take_back(m_undone, doing, true); }

tl::expected<Piece, NotUndone> UndoStack::take_back(std::vector<Step>& from, const Doing& doing, bool redo) {
    if (from.empty())
        return tl::unexpected(NotUndone::nothing);
    if (m_workbook.changed_outside()) {
        forget();
        return tl::unexpected(NotUndone::changed_outside);
    }
    const Step step = from.back();
    try {
        Writing writing(m_workbook, step.piece, doing, redo ? Writing::Kind::redo : Writing::Kind::undo);
        take_back_changes(m_workbook.db(), step.changeset);
        from.pop_back();
        try {
            writing.commit();
        } catch (...) {
            from.push_back(step);
            throw;
        }
    } catch (const LawBroken&) {
        return tl::unexpected(NotUndone::blocked);
    }
    return step.piece;
}

} // namespace soakbook::book
