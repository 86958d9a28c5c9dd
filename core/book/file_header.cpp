// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/file_header.h"

#include "core/book/schema.h"

#include <QFile>
#include <QFileInfo>
#include <QtEndian>

namespace soakbook::book {

std::optional<NotOpened> judge_header(const QString& path) {
    const QFileInfo info(path);
    if (!info.exists())
        return NotOpened::not_there;
    if (!info.isFile())
        return NotOpened::not_a_file;
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly))
        return NotOpened::unreadable;
    const QByteArray head = file.read(100);
    if (head.isEmpty())
        return NotOpened::empty_file;
    if (head.size() < 100 || !head.startsWith(QByteArray("SQLite format 3\0", 16)))
        return NotOpened::not_a_workbook;
    // Offsets 60 and 68: user version and application id, "Database File Format", sqlite.org.
    const auto version = qFromBigEndian<qint32>(head.constData() + 60);
    const auto application = qFromBigEndian<qint32>(head.constData() + 68);
    if (application != application_id)
        return NotOpened::other_program;
    if (version > schema_version)
        return NotOpened::newer;
    if (version < 1)
        return NotOpened::damaged;
    return std::nullopt;
}

} // namespace soakbook::book
