// SPDX-License-Identifier: GPL-3.0-or-later
// What is remembered of workbooks outside them: how far each was verified in its place, and how far it had come when it was
// last seen there. So a sound one need not be verified anew at every start, and an older copy in its place is noticed.
#pragma once

#include "core/book/verify.h"
#include "core/maths/quantities.h"

#include <QString>

#include <optional>
#include <vector>

namespace soakbook::book {

/// A seal that stood in a workbook, and when.
struct SealThen {
    Seal seal;
    maths::Instant at;
};

/// What is remembered of a workbook in one place.
struct Remembered {
    QString place;                    ///< the file's whole path, without links
    std::optional<SealThen> verified; ///< up to there everything was found sound
    SealThen seen;                    ///< the newest that was seen there
};

/// One small file a workbook, in a folder of this user. A file that is damaged or not there remembers nothing; one that
/// cannot be written is no reason to stop: what it would remember is then verified again.
class VerifiedBefore {
public:
    explicit VerifiedBefore(QString folder) : m_folder(std::move(folder)) {}

    /// The place seen last comes first.
    std::vector<Remembered> of(const QByteArray& uid) const;
    std::optional<Remembered> at(const QByteArray& uid, const QString& place) const;

    /// Which workbook was seen last in that place; empty when none was.
    QByteArray uid_at(const QString& place) const;

    /// A copy of it was found sound up to there. False when it could not be written down.
    bool note_verified(const VerifiedUntil& until, const QString& place, const maths::Instant& at) const;
    /// Its newest seal is this, by work that was done or because it was opened.
    bool note_seen(const QByteArray& uid, const Seal& seal, const QString& place, const maths::Instant& at) const;
    /// What was found sound there is to be looked at again.
    bool forget_verified(const QByteArray& uid, const QString& place) const;

private:
    QString file_of(const QByteArray& uid) const;
    bool write(const QByteArray& uid, const std::vector<Remembered>& places) const;
    template <class F> bool change(const QByteArray& uid, const QString& place, F&& f) const;

    QString m_folder;
};

/// The newest seal of the open workbook. Throws StoreError.
Seal newest_seal_of(const Workbook& workbook);
/// Whether that seal stands in the open workbook. Throws StoreError.
bool stands_in(const Workbook& workbook, const Seal& seal);

} // namespace soakbook::book
