// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/safe_copy_place.h"

#include "core/book/safe_copy_files.h"

#include <QCryptographicHash>
#include <QDir>
#include <QFile>
#include <QFileInfo>

#include <algorithm>
#include <cstdio>

namespace soakbook::book {

namespace {

constexpr qint64 piece_of_file = 1 << 20;

/// Part of the whole errand, in percent, that a pass over the file stands for.
struct Pass {
    int from = 0;
    int to = 0;
};

class Carrier {
public:
    Carrier(qint64 size, const std::function<bool(int)>& go_on) : m_size(size), m_go_on(go_on) {}

    /// Reads `from` to its end, writes it to `to` if that is given, and gives its hash.
    tl::expected<QByteArray, NotCopied> pass(QFile& from, QFile* to, Pass part) const {
        QCryptographicHash hash(QCryptographicHash::Sha256);
        qint64 done = 0;
        for (;;) {
            const QByteArray piece = from.read(piece_of_file);
            if (piece.isEmpty())
                break;
            if (to && to->write(piece) != piece.size())
                return tl::unexpected(NotCopied::disk_full);
            hash.addData(piece);
            done += piece.size();
            if (m_go_on && !m_go_on(part.from + static_cast<int>((part.to - part.from) * done / std::max(m_size, done))))
                return tl::unexpected(NotCopied::busy);
        }
        if (from.error() != QFileDevice::NoError || done != m_size)
            return tl::unexpected(NotCopied::unreadable);
        return hash.result();
    }

private:
    qint64 m_size;
    const std::function<bool(int)>& m_go_on;
};

tl::expected<QByteArray, NotCopied> hash_of(const QString& path, const Carrier& carrier, Pass part) {
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly | QIODevice::Unbuffered))
        return tl::unexpected(NotCopied::folder);
    return carrier.pass(file, nullptr, part);
}

tl::expected<void, NotCopied> carry(const QString& from, const QString& part, const Carrier& carrier) {
    QFile source(from);
    if (!source.open(QIODevice::ReadOnly))
        return tl::unexpected(NotCopied::unreadable);
    QFile target(part);
    if (!target.open(QIODevice::WriteOnly | QIODevice::Truncate | QIODevice::Unbuffered))
        return tl::unexpected(NotCopied::folder);
    const auto written = carrier.pass(source, &target, {0, 60});
    target.close();
    if (!written)
        return tl::unexpected(written.error());
    if (!settle_on_disk(part))
        return tl::unexpected(NotCopied::disk_full);
    const auto read_back = hash_of(part, carrier, {60, 100});
    if (!read_back)
        return tl::unexpected(read_back.error());
    if (*read_back != *written)
        return tl::unexpected(NotCopied::check_failed);
    return {};
}

} // namespace

tl::expected<SafeCopy, NotCopied> carry_copy(const SafeCopy& copy, const QString& folder, const QString& mark, const QString& live,
                                             const std::function<bool(int percent)>& go_on) {
    // The folder is not made: where a stick is not in, one of its name would be made on this computer's own disk.
    if (!QFileInfo(folder).isDir())
        return tl::unexpected(NotCopied::folder);
    const QFileInfo here(copy.path);
    const QString there = QDir(folder).absoluteFilePath(here.fileName());
    const QString part = there + QStringLiteral(".part");
    const Carrier carrier(here.size(), go_on);
    if (QFileInfo(there).size() == here.size()) {
        const auto mine = hash_of(copy.path, carrier, {0, 50});
        const auto theirs = hash_of(there, carrier, {50, 100});
        if (mine && theirs && *mine == *theirs)
            return SafeCopy{there, copy.last_seq, true};
    }
    sweep_copy_parts(folder, mark);
    auto carried = carry(copy.path, part, carrier);
    if (carried && std::rename(QFile::encodeName(part).constData(), QFile::encodeName(there).constData()) != 0)
        carried = tl::unexpected(NotCopied::folder);
    if (!carried) {
        QFile::remove(part);
        return tl::unexpected(carried.error());
    }
    sync_to_disk(folder);
    rotate_copies(folder, mark, copy.path, live);
    return SafeCopy{there, copy.last_seq, true};
}

} // namespace soakbook::book
