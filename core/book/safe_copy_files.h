// SPDX-License-Identifier: GPL-3.0-or-later
// Safe copies as files in a folder: their names, which of them are of one workbook, and which stay.
#pragma once

#include "core/book/seal.h"
#include "core/maths/quantities.h"

#include <QSqlDatabase>
#include <QString>

#include <vector>

namespace soakbook::book {

/// "<stem> <mark> <number of the newest entry>-<beginning of the newest seal>.soakbook". The seal tells copies of a state
/// that was left behind, when an older copy was put back, from those of the workbook as it went on.
struct CopyFile {
    QString path;
    qint64 last_seq = 0;
    QString seal; ///< 8 hex digits; empty in the name of an older copy
};

/// The part of a copy's name that tells whose it is.
QString mark_of_copies(const QByteArray& uid);
QString copy_file_name(const QString& stem, const QString& mark, qint64 last_seq, const Seal& head);
/// The copies of the workbook with that mark in a folder, the highest number first. `live`, the open workbook, is never
/// among them, even if it lies there.
std::vector<CopyFile> copy_files(const QString& folder, const QString& mark, const QString& live = {});
/// Removes what copies that were broken off left behind.
void sweep_copy_parts(const QString& folder, const QString& mark);

/// The newest seal of a store of any version.
Seal head_of(const QSqlDatabase& db);
/// When the workbook was made.
maths::Instant made_at(const QSqlDatabase& db);
/// Whether the store of `db` went through the state that the copy holds.
bool is_of_line(const QSqlDatabase& db, const CopyFile& copy);

/// Removes the copies that need not stay (see copy_rotation.h); those of states that were left behind are counted by
/// themselves. To be called once the newest one has its name: `newest`, which is opened to tell them apart. Never throws:
/// what could go stays until the next time.
void rotate_copies(const QString& folder, const QString& mark, const QString& newest, const QString& live);

/// Waits until a file or the entries of a folder are on the disk.
bool sync_to_disk(const QString& path);
/// The same for a file, and lets go of what of it is in memory, so that it is read back from the disk.
bool settle_on_disk(const QString& path);

} // namespace soakbook::book
