// SPDX-License-Identifier: GPL-3.0-or-later
// Another copy of the open workbook beside it: what stands in only one of them, and how what stands only there is taken
// over into this one.
#pragma once

#include "core/maths/quantities.h"
#include "core/work/ids.h"
#include "core/work/outcome.h"
#include "core/work/piece.h"

#include <QByteArray>

#include <memory>
#include <optional>
#include <set>
#include <vector>

namespace soakbook::work {

/// Why a file is not compared.
enum class NotCompared {
    not_there,
    not_a_workbook, ///< another kind of file, or another program's
    newer,          ///< made by a newer Soakbook
    unreadable,     ///< no right to read it, or the disk failed
    damaged,
    rebuilt,        ///< another program changed how it is built
    busy,           ///< another program holds it
    no_room,        ///< it is of an older version, and there is no room for the copy that is brought up to this one
    itself,         ///< it is the open file
    stranger,       ///< another workbook
};

enum class HowApart {
    same,        ///< both hold the same entries
    there_older, ///< what the other holds stands here too, and more
    there_newer, ///< the other way round
    apart,       ///< each holds entries that the other has not
};

/// An entry that only one of the copies holds.
struct LoneEntry {
    qint64 key = 0; ///< names it within its copy
    maths::Instant at;
    QString who;
    QString why;
    Piece piece;    ///< its key begins with "undo:" or "redo:" where it took another one back or did it again
    bool outside = false; ///< made by another program
    int records = 0;
    bool something_new = false; ///< (only there) not all of it stands here already
};

struct ApartView {
    HowApart how{};
    std::vector<LoneEntry> only_here;  ///< oldest first
    std::vector<LoneEntry> only_there; ///< oldest first
};

/// How a record that the other copy wrote meets this one.
enum class RecordMeets {
    added,        ///< not here: it would be added
    follows,      ///< here as it was before: it would say what it says there
    here_already,
    differs,      ///< changed in both since: stays as it is here unless theirs is chosen
    gone_here,    ///< taken away here, changed there: stays away unless theirs is chosen
    same_name,    ///< entered in both by the same name, and not the same: as `differs`
    taken_away,   ///< taken away there: stays here
};

/// A record of the store by its uid, which both copies share.
struct RecordKey {
    QString table;
    QByteArray uid;
    auto operator<=>(const RecordKey& other) const { return std::pair(table, uid) <=> std::pair(other.table, other.uid); }
    bool operator==(const RecordKey&) const = default;
};

struct ColumnApart {
    QString column; ///< as the store calls it; worded by ui/papers/record_words
    std::optional<QString> here;
    std::optional<QString> there;
};

struct RecordApart {
    RecordKey key;
    RecordMeets meets{};
    QString name; ///< its code or name, or that of what it belongs to
    std::vector<ColumnApart> columns;
    std::set<qint64> entries; ///< keys of the chosen entries that wrote it
    bool can_choose() const {
        return meets == RecordMeets::differs || meets == RecordMeets::gone_here || meets == RecordMeets::same_name;
    }
};

struct TakeOverRequest {
    std::set<qint64> entries;    ///< keys of entries that stand only there
    std::set<RecordKey> theirs;  ///< records changed in both that are to say what they say there
};

/// A code that both copies gave to different things: the one taken over bears a new one.
struct CodeGivenTwice {
    QString code;
    QString now;
};
struct TakenOver {
    int entries = 0;
    int added = 0;   ///< records
    int changed = 0; ///< records
    int left = 0;    ///< records that differ and stay as they are here
    std::vector<CodeGivenTwice> codes;
};

class Apart {
public:
    /// Opens the workbook at `path` for reading alone; nobody may have it open.
    static tl::expected<std::unique_ptr<Apart>, NotCompared> open(book::Workbook& workbook, const QString& path);
    ~Apart();
    Apart(const Apart&) = delete;
    Apart& operator=(const Apart&) = delete;

    const ApartView& view() const;
    const QString& path() const;
    /// Why these entries of the other copy cannot be taken over without others: not_taken_over (entries/KEY; facts: what the
    /// entry stands on, the key of the entry that wrote it and is left out). Nothing when they can.
    std::optional<Refusal> left_out(const std::set<qint64>& entries);
    /// How the records of these entries meet this workbook. Refuses as left_out says, and copy_unsound.
    Outcome<std::vector<RecordApart>> records(const std::set<qint64>& entries);
    /// Writes them as one entry, with the reason in `doing`. Refuses missing (entries), reason_missing (reason), copy_unsound
    /// (facts: file), not_taken_over as above, or (facts: what does not fit) where a law of the house forbids one of them
    /// here; then nothing was written. Looks at the workbook anew afterwards.
    Outcome<TakenOver> take_over(const TakeOverRequest& request, const Doing& doing);
    /// Looks at both anew: false when the other can no longer be read.
    bool look_again();

private:
    struct Inside;
    explicit Apart(std::unique_ptr<Inside> inside);
    std::unique_ptr<Inside> m_inside;
};

} // namespace soakbook::work
