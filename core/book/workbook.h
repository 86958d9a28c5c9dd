// SPDX-License-Identifier: GPL-3.0-or-later
// One open workbook: a SQLite file that only SQLite touches, one connection, and one transaction for each piece of work.
#pragma once

#include "core/book/doing.h"

#include <QByteArray>
#include <QSqlDatabase>
#include <QString>
#include <QStringList>

#include <functional>
#include <map>
#include <memory>
#include <optional>
#include <set>
#include <vector>

#include <tl/expected.hpp>

namespace soakbook::book {

/// What a commit touched.
struct Changed {
    std::set<QString> tables;
    qint64 last_seq = 0;
};

/// Why a file was not opened or made.
enum class NotOpened {
    not_there,
    not_a_file,        ///< a folder, a device
    empty_file,        ///< cut to nothing: SQLite would take it for a new store
    not_a_workbook,    ///< another kind of file
    other_program,     ///< another program's store
    newer,             ///< made by a newer Soakbook
    unreadable,        ///< no right to read, or the disk failed
    read_only,         ///< no right to write it or beside it
    changed_structure, ///< tables or triggers are not those of its version
    damaged,           ///< the store's own check failed
    exists_already,    ///< a new workbook never overwrites a file
    busy,
    not_copied,        ///< of an older version, or another program left a log beside it; no safe copy could be made first
    not_brought_up,    ///< the same, and the disk did not take what brings it up to this version without a log
    broken_off,        ///< work on it was broken off and waits to be put right, which needs the right to write
};

class Writing;
class OutsideWatch;
class UndoStack;
struct Seal;

class Workbook {
public:
    /// Makes a new workbook at `path`, which must not exist.
    static tl::expected<std::unique_ptr<Workbook>, NotOpened> create(const QString& path, const Doing& doing);
    /// Opens a sound workbook. One of an older version is brought up to this one, and one that another program set to keep
    /// a log beside it is set back, after a safe copy of it was made in `copies` (empty: beside the file).
    static tl::expected<std::unique_ptr<Workbook>, NotOpened> open(const QString& path, const QString& copies = {});
    /// Opens it for looking alone: not a byte of it is written, and no piece of work begins. Of this version, or of a newer
    /// one that still has everything this one knows; an older one is `not_brought_up`. With `Pages::as_they_are` a damaged
    /// one opens too: what cannot be read of it throws StoreError when it is asked for.
    enum class Pages { sound, as_they_are };
    static tl::expected<std::unique_ptr<Workbook>, NotOpened> open_for_looking(const QString& path, Pages pages = Pages::sound);
    ~Workbook();
    Workbook(const Workbook&) = delete;
    Workbook& operator=(const Workbook&) = delete;

    const QString& path() const { return m_path; }
    QByteArray uid() const;
    /// The number of the newest change; 0 in a workbook without any.
    qint64 last_seq() const;
    const QSqlDatabase& db() const { return m_db; }

    bool is_for_looking() const { return m_looking; }
    /// Of a newer version than this program knows, and therefore for looking alone.
    bool is_newer() const;
    /// While it is held, each piece of work is refused as BeingChecked before anything is written.
    void hold_entries(bool held) { m_held = held; }
    bool entries_are_held() const { return m_held; }

    /// Whether another program changed or replaced the file since this one last wrote or looked.
    bool changed_outside() const;

    /// Runs `f(Writing&)` as one piece of work in one transaction: committed when the result has a value, otherwise rolled
    /// back. Throws LookingOnly, BeingChecked, Busy, DiskFull, ReadOnly, Replaced (another file lies in its place),
    /// ChangedOutside, LawBroken, StoreError; then nothing was written.
    template <class F> auto write(const Piece& piece, const Doing& doing, F&& f);

    /// Calls `tell` after each commit that changed something. Returns what ends the subscription.
    std::function<void()> subscribe(std::function<void(const Changed&)> tell);

    UndoStack& undo_stack() { return *m_undo; }
    const UndoStack& undo_stack() const { return *m_undo; }

private:
    friend class Writing;
    Workbook(QString path, QSqlDatabase db);
    std::optional<NotOpened> judge() const;
    std::optional<NotOpened> judge_for_looking(Pages pages) const;
    std::optional<NotOpened> judge_pages() const;
    std::optional<NotOpened> bring_up(const QString& copies);
    void tell(const Changed& changed);

    QString m_path;
    QSqlDatabase m_db;
    std::unique_ptr<UndoStack> m_undo;
    std::unique_ptr<OutsideWatch> m_watch;
    std::map<int, std::function<void(const Changed&)>> m_listeners;
    int m_next_listener = 1;
    bool m_looking = false;
    bool m_held = false;
};

/// A transaction under way, with its row in now_doing. Rolls back unless committed.
class Writing {
public:
    Writing(Workbook& workbook, Piece piece, Doing doing);
    ~Writing();
    Writing(const Writing&) = delete;
    Writing& operator=(const Writing&) = delete;

    Workbook& workbook() const { return m_workbook; }
    const QSqlDatabase& db() const { return m_workbook.db(); }
    const Doing& doing() const { return m_doing; }
    /// Names the piece better once more is known; call it before the first record is written.
    void name(int count, const QString& subject);
    /// For what cannot be taken back, as a paper that was printed: it does not stand in the way of undo.
    void keep_from_undo() { m_undoable = false; }
    /// Ends it for good and puts it on the undo stack, unless nothing was changed.
    void commit();

private:
    friend class UndoStack;
    enum class Kind { work, undo, redo };
    Writing(Workbook& workbook, Piece piece, Doing doing, Kind kind);
    void begin();
    void give_up();
    void mind_others();
    void end_for_good(const std::optional<Seal>& own);

    Workbook& m_workbook;
    Piece m_piece;
    Doing m_doing;
    Kind m_kind;
    struct Recorder;
    std::unique_ptr<Recorder> m_recorder;
    bool m_open = false;
    bool m_undoable = true;
};

template <class F> auto Workbook::write(const Piece& piece, const Doing& doing, F&& f) {
    Writing writing(*this, piece, doing);
    auto result = f(writing);
    if (result)
        writing.commit();
    return result;
}


} // namespace soakbook::book
