// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/apart.h"

#include "core/book/other_copy.h"
#include "core/book/take_over.h"
#include "core/book/verify.h"
#include "core/work/checks.h"
#include "core/work/copies.h"
#include "core/work/facts.h"
#include "core/work/perform.h"

#include <QFileInfo>

namespace soakbook::work {

namespace {

NotCompared why_not_compared(book::NotOpened why) {
    switch (why) {
    case book::NotOpened::not_there:
        return NotCompared::not_there;
    case book::NotOpened::not_a_file:
    case book::NotOpened::empty_file:
    case book::NotOpened::not_a_workbook:
    case book::NotOpened::other_program:
        return NotCompared::not_a_workbook;
    case book::NotOpened::newer:
        return NotCompared::newer;
    case book::NotOpened::changed_structure:
        return NotCompared::rebuilt;
    case book::NotOpened::busy:
        return NotCompared::busy;
    case book::NotOpened::not_copied:
    case book::NotOpened::not_brought_up:
        return NotCompared::no_room;
    case book::NotOpened::damaged:
        return NotCompared::damaged;
    default:
        return NotCompared::unreadable;
    }
}

LoneEntry entry_of(const book::LonePiece& piece) {
    LoneEntry entry;
    entry.key = piece.first_seq;
    entry.at = piece.at;
    entry.who = piece.who;
    entry.why = piece.why;
    entry.piece = piece.work;
    entry.outside = piece.outside;
    entry.records = piece.records;
    return entry;
}

RecordApart record_of(const book::MetRecord& met) {
    RecordApart record;
    record.key = {met.there.table, met.uid};
    record.meets = static_cast<RecordMeets>(met.meets);
    record.name = met.name;
    record.entries = met.pieces;
    for (const book::SideBySide& column : met.columns)
        record.columns.push_back({column.column, column.here, column.there});
    return record;
}
static_assert(static_cast<int>(RecordMeets::added) == static_cast<int>(book::Meets::added));
static_assert(static_cast<int>(RecordMeets::gone_here) == static_cast<int>(book::Meets::gone_here));
static_assert(static_cast<int>(RecordMeets::taken_away) == static_cast<int>(book::Meets::taken_away));

tl::unexpected<Refusal> refused(const book::NotTakenOver& why) {
    const QString field = QStringLiteral("entries/%1").arg(why.piece);
    if (why.why == book::NotTakenOver::Why::stands_on_left_out)
        return refuse(Why::not_taken_over, field, {fact(why.what), QString::number(why.other_piece)});
    return refuse(Why::not_taken_over, field, why.what.isEmpty() ? QStringList() : QStringList(fact(why.what)));
}

} // namespace

struct Apart::Inside {
    Inside(book::Workbook& here, std::unique_ptr<book::OtherCopy> copy, book::Comparison compared)
        : workbook(here), there(std::move(copy)), comparison(std::move(compared)) {
        look();
    }

    void look() {
        work = std::make_unique<book::TakeOver>(workbook, *there, comparison);
        view = {};
        view.how = comparison.kinship == book::Kinship::same          ? HowApart::same
                   : comparison.kinship == book::Kinship::there_older ? HowApart::there_older
                   : comparison.kinship == book::Kinship::there_newer ? HowApart::there_newer
                                                                      : HowApart::apart;
        for (const book::LonePiece& piece : comparison.only_here)
            view.only_here.push_back(entry_of(piece));
        const std::set<qint64> open = work->with_something_new();
        for (const book::LonePiece& piece : comparison.only_there) {
            view.only_there.push_back(entry_of(piece));
            view.only_there.back().something_new = open.count(piece.first_seq) > 0;
        }
    }

    book::Workbook& workbook;
    std::unique_ptr<book::OtherCopy> there;
    book::Comparison comparison;
    std::unique_ptr<book::TakeOver> work;
    ApartView view;
};

Apart::Apart(std::unique_ptr<Inside> inside) : m_inside(std::move(inside)) {}
Apart::~Apart() = default;

tl::expected<std::unique_ptr<Apart>, NotCompared> Apart::open(book::Workbook& workbook, const QString& path) {
    if (book::is_same_file(workbook.path(), path))
        return tl::unexpected(NotCompared::itself);
    auto there = book::OtherCopy::open(workbook, path);
    if (!there)
        return tl::unexpected(why_not_compared(there.error()));
    auto comparison = book::compare(workbook, **there);
    if (!comparison)
        return tl::unexpected(why_not_compared(comparison.error()));
    if (comparison->kinship == book::Kinship::stranger)
        return tl::unexpected(NotCompared::stranger);
    try {
        return std::unique_ptr<Apart>(new Apart(std::make_unique<Inside>(workbook, std::move(*there), std::move(*comparison))));
    } catch (const book::Busy&) {
        return tl::unexpected(NotCompared::busy);
    } catch (const book::StoreError&) {
        return tl::unexpected(NotCompared::damaged);
    }
}

const ApartView& Apart::view() const { return m_inside->view; }
const QString& Apart::path() const { return m_inside->there->path(); }

std::optional<Refusal> Apart::left_out(const std::set<qint64>& entries) {
    try {
        const auto why = m_inside->work->left_out(entries);
        return why ? std::optional(refused(*why).value()) : std::nullopt;
    } catch (const book::StoreError&) {
        return Refusal{Why::copy_unsound, {}, {fact(path())}, false};
    }
}

Outcome<std::vector<RecordApart>> Apart::records(const std::set<qint64>& entries) {
    try {
        const auto met = m_inside->work->meet(entries);
        if (!met)
            return refused(met.error());
        std::vector<RecordApart> records;
        for (const book::MetRecord& record : *met)
            records.push_back(record_of(record));
        return records;
    } catch (const book::StoreError&) {
        return refuse(Why::copy_unsound, {}, {fact(path())});
    }
}

Outcome<TakenOver> Apart::take_over(const TakeOverRequest& request, const Doing& doing) {
    if (request.entries.empty())
        return refuse(Why::missing, QStringLiteral("entries"));
    if (const Not missing = reason_missing(doing))
        return because(missing);
    // What comes from a damaged copy would stand here sealed as if it were sound.
    if (!book::verify(m_inside->there->read_from()).sound())
        return refuse(Why::copy_unsound, {}, {fact(path())});
    std::set<std::pair<QString, QByteArray>> theirs;
    for (const RecordKey& key : request.theirs)
        theirs.emplace(key.table, key.uid);
    const int entries = static_cast<int>(request.entries.size());
    const Piece piece{QStringLiteral("taken_over"), entries, QFileInfo(path()).fileName()};
    auto done = perform(m_inside->workbook, piece, doing, [&](book::Writing& writing) -> Outcome<TakenOver> {
        const auto taken = m_inside->work->write(writing, request.entries, theirs, [&](QChar kind) { return next_code(writing, kind.toLatin1()); });
        if (!taken)
            return refused(taken.error());
        for (const qint64 batch : taken->unbalanced)
            rebalance(writing, {batch});
        TakenOver result{entries, taken->added, taken->changed, taken->left, {}};
        for (const book::NewCode& code : taken->new_codes)
            result.codes.push_back({code.given_twice, code.now});
        return result;
    });
    look_again();
    return done;
}

bool Apart::look_again() {
    auto comparison = book::compare(m_inside->workbook, *m_inside->there);
    if (!comparison)
        return false;
    m_inside->comparison = std::move(*comparison);
    try {
        m_inside->look();
    } catch (const book::StoreError&) {
        return false;
    }
    return true;
}

} // namespace soakbook::work
