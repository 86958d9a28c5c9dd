// SPDX-License-Identifier: GPL-3.0-or-later
// Opens a workbook for entries where that can be, for looking alone where that is what is left, and says what stands
// against it otherwise. No window is shown from here.
#pragma once

#include "app/lock.h"
#include "core/book/workbook.h"

#include <QTemporaryDir>

#include <memory>
#include <optional>

namespace soakbook::app {

/// Why a workbook is open for looking alone.
enum class LookingWhy {
    medium_kept, ///< nothing on that medium can be written
    folder_kept, ///< nothing may be written beside it
    file_kept,   ///< the file may only be read
    held,        ///< somebody else has it open
    damaged,     ///< what can still be read of it is shown
    newer,       ///< a newer program wrote it
    safe_copy,   ///< it is a safe copy, which stays as it is
    wished,      ///< the person said so
};

/// A workbook and what it needs as long as it is open; the workbook goes first.
struct OpenBook {
    std::unique_ptr<QTemporaryDir> aside; ///< holds what is looked at, where an older workbook was brought up on a copy
    std::unique_ptr<Lock> lock;           ///< none for looking alone
    std::unique_ptr<book::Workbook> workbook;
    QString file;                         ///< what was asked for, without links
    std::optional<LookingWhy> looking;
    std::optional<Holder> holder;         ///< who has it open, when that is why
};

/// What stands against it.
struct NotOpen {
    std::optional<book::NotOpened> why;   ///< the file; otherwise the lock
    NotLocked lock;
};

/// How it is to be opened.
struct Wish {
    bool look = false;                    ///< for looking alone, for this reason
    LookingWhy why = LookingWhy::wished;
    bool take_over = false;               ///< from `holder`, whom a person took for gone
    std::optional<Holder> holder;
};

/// Opens the workbook at `path`. `copies`: where the safe copies of this user lie; empty beside the file.
tl::expected<OpenBook, NotOpen> open_book(const QString& path, const QString& copies, const QDateTime& now, const Wish& wish = {});

} // namespace soakbook::app
