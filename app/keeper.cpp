// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/keeper.h"

#include "app/copy_words.h"
#include "app/second_keeper.h"
#include "core/book/safe_copy.h"
#include "core/book/safe_copy_steps.h"
#include "ui/setup/second_place.h"

#include <QDateTime>
#include <QFile>
#include <QFileInfo>
#include <QTimer>

#include <thread>
#include <utility>

namespace soakbook::app {

namespace {

constexpr int pieces_between = 20;
constexpr qint64 minute_ms = 60'000;
constexpr qint64 between_ms = 30 * minute_ms;
constexpr qint64 again_ms = 10 * minute_ms; ///< after a failure
constexpr qint64 week_ms = 7 * 24 * 60 * minute_ms;
/// Half a megabyte a step: some milliseconds.
constexpr int pages_a_step = 128;
constexpr int most_waits = 100;
constexpr int wait_ms = 200;
/// Up to here every copy is looked at from its first entry on; a larger one weekly, and between from what was verified before.
constexpr qint64 small_file = 32 << 20;

} // namespace

struct Keeper::Inside {
    Inside(Keeper& keeper, book::Workbook& workbook, QString to, Clock time)
        : owner(keeper), book(workbook), folder(std::move(to)), clock(std::move(time)), mark(work::mark_of_copies(workbook)),
          second(mark, workbook.path(), clock) {}

    Keeper& owner;
    book::Workbook& book;
    QString folder;
    Clock clock;
    QString mark;
    std::function<void()> unsubscribe;
    QTimer every_minute;
    QTimer next_step;

    // A copy under way: first its pages, then its check on `worker`, which fills `checked` and says so.
    std::unique_ptr<book::CopyUnderWay> copying;
    std::thread worker;
    struct Checked {
        book::PartCopy part;
        book::Verdict verdict;
        tl::expected<book::SafeCopy, book::NotCopied> named = tl::unexpected(book::NotCopied::folder);
    };
    std::unique_ptr<Checked> checked;
    std::optional<book::VerifiedUntil> from; ///< where the check under way begins
    QString send_to;                         ///< the copy under way is sent there; empty: it is a safe copy
    QString send_next;
    bool again = false; ///< the copy under way is the second try after an unsound one
    int waits = 0;

    std::optional<book::VerifiedUntil> until; ///< how far it was found sound
    std::optional<book::SafeCopy> newest;     ///< safe copy at home
    std::optional<maths::Instant> newest_at;
    std::optional<maths::Instant> failed_at;
    int pieces = 0;
    bool first_look = true;
    QString why_failed;

    SecondKeeper second;

    qint64 entries_since() const { return book.last_seq() - (newest ? newest->last_seq : 0); }
    bool is_whole_check_due() const { return is_past(ui::checked_whole(mark), week_ms, clock()); }
    bool is_due() const;
    void find_newest();
    void begin(const std::optional<book::VerifiedUntil>& since, const QString& to);
    void step();
    void check(const book::PartCopy& part);
    void take_result();
    void note_good(const Checked& result);
    void note_unsound(const Checked& result);
    void fail(book::NotCopied why);
    void end_of_copy();
    std::optional<book::VerifiedUntil> what_need_not_be_looked_at() const;
};

bool Keeper::Inside::is_due() const {
    const maths::Instant now = clock();
    if (book.is_for_looking() || !is_past(failed_at, again_ms, now))
        return false;
    if (is_whole_check_due())
        return true;
    return entries_since() > 0 && (first_look || pieces >= pieces_between || is_past(newest_at, between_ms, now));
}

void Keeper::Inside::find_newest() {
    newest = book::newest_safe_copy(book, folder);
    newest_at.reset();
    if (newest) {
        const QDateTime at = QFileInfo(newest->path).lastModified();
        newest_at = maths::Instant{at.toMSecsSinceEpoch(), at.offsetFromUtc() / 60};
    }
}

std::optional<book::VerifiedUntil> Keeper::Inside::what_need_not_be_looked_at() const {
    return QFileInfo(book.path()).size() > small_file && !is_whole_check_due() ? until : std::nullopt;
}

void Keeper::Inside::begin(const std::optional<book::VerifiedUntil>& since, const QString& to) {
    auto begun = to.isEmpty() ? book::CopyUnderWay::begin(book, folder) : book::CopyUnderWay::begin_at(book, to);
    send_to = to;
    if (!begun)
        return fail(begun.error());
    from = since;
    waits = 0;
    copying = std::move(*begun);
    next_step.start(0);
    Q_EMIT owner.news();
}

void Keeper::Inside::step() {
    const auto stepped = copying->step(pages_a_step);
    if (!stepped)
        return fail(stepped.error());
    if (*stepped == book::PageCopy::Step::waits && ++waits > most_waits)
        return fail(book::NotCopied::busy);
    Q_EMIT owner.progress(owner.percent());
    if (*stepped != book::PageCopy::Step::done) {
        next_step.start(*stepped == book::PageCopy::Step::waits ? wait_ms : 1);
        return;
    }
    const auto part = copying->take();
    if (!part)
        return fail(part.error());
    copying.reset();
    check(*part);
}

void Keeper::Inside::check(const book::PartCopy& part) {
    checked = std::make_unique<Checked>();
    checked->part = part;
    worker = std::thread([result = checked.get(), since = from, keeper = &owner] {
        try {
            result->verdict = book::check_part(result->part, since);
            result->named = book::name_part(result->part, result->verdict);
        } catch (const std::exception&) {
            QFile::remove(result->part.part);
            result->verdict.readable = false;
        }
        QMetaObject::invokeMethod(keeper, [keeper] { keeper->m_inside->take_result(); }, Qt::QueuedConnection);
    });
    Q_EMIT owner.news();
}

void Keeper::Inside::take_result() {
    if (!worker.joinable())
        return;
    worker.join();
    const std::unique_ptr<Checked> result = std::move(checked);
    if (result->named)
        note_good(*result);
    else if (result->named.error() == book::NotCopied::check_failed)
        note_unsound(*result);
    else
        fail(result->named.error());
}

void Keeper::Inside::note_good(const Checked& result) {
    again = false;
    until = result.verdict.until;
    if (!from)
        ui::note_checked_whole(mark, clock());
    if (!send_to.isEmpty()) {
        Q_EMIT owner.sent(result.part.name, result.part.last_seq, QString::fromLatin1(result.part.head.hash.toHex().left(16)));
        return end_of_copy();
    }
    newest = *result.named;
    newest_at = clock();
    failed_at.reset();
    why_failed.clear();
    pieces = 0;
    Q_EMIT owner.copied(result.verdict);
    end_of_copy();
    second.look(newest, true);
}

// A copy may be spoilt on its way or by the disk it lies on: only when a second one is unsound, too, is it the workbook.
void Keeper::Inside::note_unsound(const Checked& result) {
    if (!again) {
        again = true;
        return begin({}, send_to);
    }
    again = false;
    Q_EMIT owner.found_damaged(result.verdict);
    fail(book::NotCopied::check_failed);
}

void Keeper::Inside::fail(book::NotCopied why) {
    copying.reset();
    const QString words = copy_words(why, send_to.isEmpty() ? folder : send_to);
    if (send_to.isEmpty()) {
        failed_at = clock();
        why_failed = words;
        Q_EMIT owner.failed(words);
    } else {
        Q_EMIT owner.not_sent(words);
    }
    end_of_copy();
}

void Keeper::Inside::end_of_copy() {
    send_to.clear();
    Q_EMIT owner.news();
    if (const QString next = std::exchange(send_next, {}); !next.isEmpty())
        begin(what_need_not_be_looked_at(), next);
}

Keeper::Keeper(book::Workbook& workbook, QString folder, Clock clock, QObject* parent)
    : ui::CopyKeeper(parent), m_inside(std::make_unique<Inside>(*this, workbook, std::move(folder), std::move(clock))) {
    Inside& in = *m_inside;
    in.find_newest();
    in.next_step.setSingleShot(true);
    connect(&in.next_step, &QTimer::timeout, this, [&in] { in.step(); });
    connect(&in.every_minute, &QTimer::timeout, this, &Keeper::look);
    connect(&in.second, &SecondKeeper::news, this, &ui::CopyKeeper::news);
    in.unsubscribe = workbook.subscribe([this](const book::Changed&) {
        QMetaObject::invokeMethod(this, [this] {
            if (++m_inside->pieces == pieces_between)
                look();
        }, Qt::QueuedConnection);
    });
    in.every_minute.start(static_cast<int>(minute_ms));
    QTimer::singleShot(1500, this, &Keeper::look);
}

Keeper::~Keeper() {
    Inside& in = *m_inside;
    in.unsubscribe();
    in.next_step.stop();
    in.copying.reset();
    if (in.worker.joinable())
        in.worker.join();
}

void Keeper::copy_now() { copy_now(m_inside->what_need_not_be_looked_at()); }

void Keeper::copy_now(const std::optional<book::VerifiedUntil>& until) {
    if (!m_inside->copying && !m_inside->worker.joinable())
        m_inside->begin(until, {});
}

void Keeper::take_for_verified(const book::VerifiedUntil& until) { m_inside->until = until; }

void Keeper::look() {
    Inside& in = *m_inside;
    if (in.copying || in.worker.joinable())
        return;
    Q_EMIT news(); // the last copy is a minute older
    const bool due = in.is_due();
    in.first_look = false;
    if (due)
        copy_now();
    else
        in.second.look(in.newest, false);
}

void Keeper::send_copy(const QString& to) {
    Inside& in = *m_inside;
    if (in.copying || in.worker.joinable())
        in.send_next = to;
    else
        in.begin(in.what_need_not_be_looked_at(), to);
}

void Keeper::look_at_second_place() { m_inside->second.begin_anew(m_inside->newest); }

QString Keeper::finish() {
    Inside& in = *m_inside;
    in.every_minute.stop();
    in.next_step.stop();
    in.send_next.clear();
    in.copying.reset();
    in.take_result();
    in.copying.reset();
    in.next_step.stop();
    QString words;
    if (in.entries_since() > 0 && !in.book.is_for_looking()) {
        const auto made = book::copy_afresh(in.book, in.folder, in.what_need_not_be_looked_at());
        if (made)
            in.newest = *made;
        else
            words = copy_words(made.error(), in.folder);
    }
    in.second.finish(in.newest);
    return words;
}

ui::CopyKeeper::Stage Keeper::stage() const {
    const Inside& in = *m_inside;
    return in.copying ? Stage::copying : in.worker.joinable() ? Stage::checking : in.second.is_at_it() ? Stage::carrying : Stage::idle;
}

int Keeper::percent() const {
    const Inside& in = *m_inside;
    return in.copying ? in.copying->percent() : in.worker.joinable() ? 100 : in.second.percent();
}

QString Keeper::failure() const { return m_inside->why_failed; }
QString Keeper::second_failure() const { return m_inside->second.failure(); }
std::vector<work::CopyLine> Keeper::second_copies() const { return m_inside->second.copies(); }

} // namespace soakbook::app
