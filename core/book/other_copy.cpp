// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/other_copy.h"

#include "core/book/connection.h"
#include "core/book/file_header.h"
#include "core/book/raw_rows.h"
#include "core/book/schema.h"
#include "core/book/statement.h"

#include <QFile>
#include <QFileInfo>
#include <QtEndian>

#include <sys/stat.h>

namespace soakbook::book {

namespace {

const char* const companions[] = {"-journal", "-wal"};

bool needs_order(const QString& path) {
    for (const char* companion : companions)
        if (QFileInfo::exists(path + QLatin1String(companion)))
            return true;
    QFile file(path);
    const QByteArray head = file.open(QIODevice::ReadOnly) ? file.read(100) : QByteArray();
    // Offset 18: 2 stands for a log beside the file, "Database File Format", sqlite.org. Offset 60: the version.
    return head.size() == 100 && (head.at(18) == 2 || qFromBigEndian<qint32>(head.constData() + 60) < schema_version);
}

} // namespace

bool is_same_file(const QString& one, const QString& other) {
    struct stat a {};
    struct stat b {};
    return ::stat(QFile::encodeName(one).constData(), &a) == 0 && ::stat(QFile::encodeName(other).constData(), &b) == 0 &&
           a.st_dev == b.st_dev && a.st_ino == b.st_ino;
}

OtherCopy::~OtherCopy() {
    if (m_db.isValid())
        disconnect_store(m_db);
}

bool OtherCopy::copy_aside() {
    m_aside = std::make_unique<QTemporaryDir>();
    if (!m_aside->isValid())
        return false;
    m_read_from = m_aside->filePath(QStringLiteral("copy.soakbook"));
    const auto copy = [](const QString& from, const QString& to) {
        return QFile::copy(from, to) && QFile::setPermissions(to, QFileDevice::ReadOwner | QFileDevice::WriteOwner);
    };
    for (const char* companion : companions) {
        const QString beside = m_path + QLatin1String(companion);
        if (QFileInfo::exists(beside) && !copy(beside, m_read_from + QLatin1String(companion)))
            return false;
    }
    return copy(m_path, m_read_from);
}

std::optional<NotOpened> OtherCopy::connect(bool put_in_order) {
    m_db = connect_store(m_read_from, put_in_order ? Use::writing : Use::reading);
    const int version = version_of(m_db);
    if (version < 1 || version > schema_version)
        return version > schema_version ? NotOpened::newer : NotOpened::damaged;
    if (structure_of(m_db) != known_structure(version))
        return NotOpened::changed_structure;
    if (uid().size() != 16)
        return NotOpened::damaged;
    if (put_in_order) {
        pragma_number(m_db, QStringLiteral("journal_mode=DELETE"));
        if (version < schema_version)
            take_steps(m_db);
    }
    return std::nullopt;
}

QByteArray OtherCopy::uid() const {
    RawRows row(m_db, "SELECT uid FROM workbook");
    return row.next() ? row.bytes(0) : QByteArray();
}

tl::expected<std::unique_ptr<OtherCopy>, NotOpened> OtherCopy::open(const Workbook& here, const QString& path) {
    // Before all else: to open and close our own file a second time would drop SQLite's locks on it.
    if (is_same_file(here.path(), path))
        return tl::unexpected(NotOpened::busy);
    if (const auto refused = judge_header(path))
        return tl::unexpected(*refused);
    std::unique_ptr<OtherCopy> copy(new OtherCopy(path));
    copy->m_read_from = path;
    const bool put_in_order = needs_order(path);
    if (put_in_order && !copy->copy_aside())
        return tl::unexpected(NotOpened::not_copied);
    try {
        if (const auto refused = copy->connect(put_in_order))
            return tl::unexpected(*refused);
    } catch (const Busy&) {
        return tl::unexpected(NotOpened::busy);
    } catch (const DiskFull&) {
        return tl::unexpected(NotOpened::not_copied);
    } catch (const ReadOnly&) {
        return tl::unexpected(NotOpened::unreadable);
    } catch (const StoreError&) {
        return tl::unexpected(NotOpened::damaged);
    }
    return copy;
}

} // namespace soakbook::book
