// SPDX-License-Identifier: GPL-3.0-or-later
// What stands only in the other of two copies is written into this one, as one piece of work of its own.
#pragma once

#include "core/book/their_changes.h"

#include <functional>

namespace soakbook::book {

/// How a record that the other copy wrote meets this one.
enum class Meets {
    added,      ///< not here: it is added
    follows,    ///< here as it was before: it says then what it says there
    here_already, ///< says the same here, or says later here what it said there
    differs,    ///< changed in both since: stays as it is here unless theirs is chosen
    gone_here,  ///< taken away here, changed there: stays away unless theirs is chosen
    same_name,  ///< entered in both by the same name, and not the same: as `differs`
    taken_away, ///< taken away there: stays here
};

struct SideBySide {
    QString column;
    std::optional<QString> here;  ///< a key stands as the name of what it points at
    std::optional<QString> there;
};

struct MetRecord {
    RowKey there;
    qint64 here = 0; ///< 0: not here
    QByteArray uid;
    Meets meets{};
    QString name;                    ///< a code or a name; empty where it has none
    std::vector<SideBySide> columns; ///< those that differ; every one that says something for `added`
    std::set<qint64> pieces;         ///< first_seq of the chosen pieces that wrote it
    std::size_t first_to_do = 0;     ///< how many of its changes are here already
    qint64 last_seq = 0;             ///< of its last chosen change
};

/// Why nothing is taken over. The pieces are named by their first_seq.
struct NotTakenOver {
    enum class Why {
        stands_on_left_out, ///< `piece` needs what `other_piece`, which was left out, wrote
        does_not_fit,       ///< a law of the house forbids it here
    };
    Why why{};
    qint64 piece = 0;
    qint64 other_piece = 0;
    QString table; ///< of the record that is in the way
    QString what;  ///< its code or name; empty where it has none
};

/// A code that both copies gave out, each to something else.
struct NewCode {
    QString given_twice;
    QString now;
};

struct TookOver {
    int added = 0;
    int changed = 0;
    int left = 0; ///< records that differ and stay as they are here
    std::vector<NewCode> new_codes;
    std::vector<qint64> unbalanced; ///< closed batches whose mass no longer adds up, to be reckoned anew
};

class TakeOver {
public:
    /// All three are to live as long as this.
    TakeOver(const Workbook& here, const OtherCopy& there, const Comparison& comparison);

    /// Whether the pieces stand by themselves: why not, or nothing. Quick enough to be asked at each tick of a box.
    std::optional<NotTakenOver> left_out(const std::set<qint64>& pieces);
    /// How each record of the chosen pieces meets this workbook, oldest first. Nothing is written.
    tl::expected<std::vector<MetRecord>, NotTakenOver> meet(const std::set<qint64>& pieces);
    /// Those of the pieces of which something is not here yet.
    std::set<qint64> with_something_new();
    /// Writes what `meet` says, and the records of `theirs` (table and uid) as the other copy has them although they were
    /// changed here too. Codes given out twice get the one that `new_code` gives for their letter, and their labels are
    /// stale. Throws as Workbook::write, but for LawBroken.
    tl::expected<TookOver, NotTakenOver> write(Writing& writing, const std::set<qint64>& pieces,
                                               const std::set<std::pair<QString, QByteArray>>& theirs,
                                               const std::function<QString(QChar)>& new_code);

private:
    std::optional<NotTakenOver> stands_on_left_out() const;
    MetRecord meet_record(const RowKey& there) const;
    void set_side_by_side(MetRecord& record, const Cells& here, const Cells& there) const;
    QString spoken(const QSqlDatabase& db, const QString& table, const QString& column, const QVariant& value) const;
    bool was_here(const RowKey& here, const Cells& there) const;

    const Workbook& m_here;
    const OtherCopy& m_there;
    const Comparison& m_comparison;
    TheirChanges m_changes;
};

} // namespace soakbook::book
