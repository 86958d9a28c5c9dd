// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/restore.h"

#include "core/book/file_header.h"
#include "core/book/restore_present.h"
#include "core/book/safe_copy_files.h"
#include "core/book/statement.h"
#include "core/book/verify.h"

#include <QFile>
#include <QFileInfo>

#include <cstdio>

namespace soakbook::book {

namespace {

NotRestored why_copy_not(NotOpened why) {
    switch (why) {
    case NotOpened::newer:
        return NotRestored::newer;
    case NotOpened::not_a_workbook:
    case NotOpened::other_program:
        return NotRestored::not_a_workbook;
    case NotOpened::empty_file:
    case NotOpened::damaged:
    case NotOpened::changed_structure:
        return NotRestored::copy_unsound;
    case NotOpened::busy:
        return NotRestored::busy;
    default:
        return NotRestored::copy_unreadable;
    }
}

NotRestored why_pages_not(NotCopied why) {
    switch (why) {
    case NotCopied::disk_full:
        return NotRestored::disk_full;
    case NotCopied::busy:
        return NotRestored::busy;
    case NotCopied::check_failed:
        return NotRestored::copy_unsound;
    case NotCopied::unreadable:
        return NotRestored::copy_unreadable;
    default:
        return NotRestored::folder;
    }
}

/// The copy beside the workbook, until it takes its place.
class Part {
public:
    explicit Part(const QString& file) : m_path(file + QStringLiteral(".part")) { remove(); }
    ~Part() {
        if (!m_in_place)
            remove();
    }
    Part(const Part&) = delete;
    Part& operator=(const Part&) = delete;

    const QString& path() const { return m_path; }
    bool take_place_of(const QString& file) {
        m_in_place = sync_to_disk(m_path) && std::rename(QFile::encodeName(m_path).constData(), QFile::encodeName(file).constData()) == 0;
        if (m_in_place)
            sync_to_disk(QFileInfo(file).absolutePath());
        return m_in_place;
    }

private:
    void remove() const {
        QFile::remove(m_path);
        QFile::remove(m_path + QStringLiteral("-journal"));
    }
    QString m_path;
    bool m_in_place = false;
};

/// Writes the codes that are not known yet. Gives how many.
int carry_codes(const Writing& writing, const GivenCodes& codes) {
    int carried = 0;
    for (const auto& [code, given] : codes) {
        Statement s(writing.db(), QStringLiteral("INSERT INTO given_code(code, kind, number, given_ms, given_off) SELECT ?, ?, ?, ?, ? WHERE NOT EXISTS "
                                                 "(SELECT 1 FROM given_code WHERE code = ? OR (kind = ? AND number = ?))"));
        s.bind(code).bind(given.kind).bind(given.number).bind(static_cast<qint64>(given.at.utc_ms)).bind(given.at.offset_minutes)
            .bind(code).bind(given.kind).bind(given.number).run();
        carried += s.rows_changed() > 0 ? 1 : 0;
    }
    return carried;
}

/// The history says what was left behind, and where it goes on from.
void write_what_happened(const Writing& writing, qint64 left_seq, const QByteArray& left_seal, const Seal& from) {
    const auto image = [](qint64 seq, const QByteArray& seal) {
        return QStringLiteral("newest_entry=%1\nseal='%2'").arg(QString::number(seq), QString::fromLatin1(seal.toHex()));
    };
    Statement(writing.db(), QStringLiteral("INSERT INTO change(piece, work, count, subject, who, why, version, at_ms, at_off, clock_doubtful, tbl, row_id, "
                                           "what, before, after) SELECT piece, work, count, subject, who, why, version, at_ms, at_off, clock_doubtful, "
                                           "'workbook', 1, 'changed', ?, ? FROM now_doing"))
        .bind(image(left_seq, left_seal)).bind(image(from.last_seq, from.hash)).run();
}

tl::expected<Restored, NotRestored> put_in_place(const RestoreRequest& request, const Doing& doing) {
    if (QFileInfo::exists(request.file) && QFileInfo(request.file).canonicalFilePath() == QFileInfo(request.copy).canonicalFilePath())
        return tl::unexpected(NotRestored::itself);
    if (const auto refused = judge_header(request.copy))
        return tl::unexpected(why_copy_not(*refused));
    Part part(request.file);
    if (const auto copied = copy_for_checking(request.copy, part.path()); !copied)
        return tl::unexpected(why_pages_not(copied.error()));
    const Verdict verdict = verify(part.path());
    if (!verdict.sound())
        return tl::unexpected(verdict.readable ? NotRestored::copy_unsound : NotRestored::folder);

    GivenCodes codes;
    Present present;
    if (lies_there(request.file)) {
        const auto kept = keep_present(request);
        if (!kept)
            return tl::unexpected(kept.error());
        present = *kept;
        add_given_codes(request.file, codes);
    }

    Restored restored;
    restored.copied_seq = verdict.last_seq;
    restored.kept = present.kept;
    restored.kept_is_sound = present.sound;
    {
        auto opened = Workbook::open(part.path(), request.copies);
        if (!opened)
            return tl::unexpected(opened.error() == NotOpened::not_copied ? NotRestored::present_not_kept : NotRestored::folder);
        Workbook& workbook = **opened;
        restored.uid = workbook.uid();
        if (!present.uid.isEmpty() && present.uid != restored.uid)
            return tl::unexpected(NotRestored::other_workbook);
        // A code may stand on a label although the present file can no longer say so.
        for (const CopyFile& copy : copy_files(request.copies, mark_of_copies(restored.uid), request.file))
            if (copy.last_seq > restored.copied_seq)
                add_given_codes(copy.path, codes);
        try {
            const Seal from = newest_seal(workbook.db());
            const Piece piece{QStringLiteral("restored"), static_cast<int>(restored.copied_seq), QFileInfo(request.copy).fileName()};
            (void)workbook.write(piece, doing, [&](Writing& writing) {
                restored.codes = carry_codes(writing, codes);
                write_what_happened(writing, present.last_seq, present.seal, from);
                return std::optional<bool>(true);
            });
            restored.last_seq = workbook.last_seq();
            restored.head = newest_seal(workbook.db());
        } catch (const DiskFull&) {
            return tl::unexpected(NotRestored::disk_full);
        } catch (const StoreError&) {
            return tl::unexpected(NotRestored::folder);
        }
    }
    if (!settle_on_disk(part.path()))
        return tl::unexpected(NotRestored::disk_full);
    const Verdict now = verify(part.path());
    if (!now.sound() || now.last_seq != restored.last_seq)
        return tl::unexpected(now.readable ? NotRestored::copy_unsound : NotRestored::folder);
    if (!part.take_place_of(request.file))
        return tl::unexpected(NotRestored::folder);
    return restored;
}

} // namespace

tl::expected<Restored, NotRestored> restore(const RestoreRequest& request, const Doing& doing) {
    try {
        return put_in_place(request, doing);
    } catch (const DiskFull&) {
        return tl::unexpected(NotRestored::disk_full);
    } catch (const StoreError&) {
        // The disk failed on the way; nothing was put in the place of anything.
        return tl::unexpected(NotRestored::folder);
    }
}

} // namespace soakbook::book
