// SPDX-License-Identifier: GPL-3.0-or-later
// Undo and redo of this session's pieces of work, last first, each as the inverse of its changeset.
#pragma once

#include "core/book/doing.h"

#include <QByteArray>

#include <optional>
#include <vector>

#include <tl/expected.hpp>

namespace soakbook::book {

class Workbook;
class Writing;

enum class NotUndone {
    nothing,         ///< the stack is empty
    changed_outside, ///< another program wrote since; the stack is emptied
    blocked,         ///< a record changed since, or a law forbids it
};

class UndoStack {
public:
    explicit UndoStack(Workbook& workbook) : m_workbook(workbook) {}

    std::optional<Piece> next_undo() const;
    std::optional<Piece> next_redo() const;
    /// Takes the last piece of work back. What a print or an export has shown is made void with the reason "undone"
    /// instead of taken away. Codes are not given back. Throws as Workbook::write.
    tl::expected<Piece, NotUndone> undo(const Doing& doing);
    tl::expected<Piece, NotUndone> redo(const Doing& doing);
    void forget();

private:
    friend class Writing;
    struct Step {
        Piece piece;
        QByteArray changeset;
    };
    void push_work(Step step);
    tl::expected<Piece, NotUndone> take_back(std::vector<Step>& from, const Doing& doing, bool redo);

    Workbook& m_workbook;
    std::vector<Step> m_done;
    std::vector<Step> m_undone;
};

} // namespace soakbook::book
