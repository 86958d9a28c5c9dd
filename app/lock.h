// SPDX-License-Identifier: GPL-3.0-or-later
// One writer a workbook: the file FILE.lock beside it says who has it open. It is never too old to count.
#pragma once

#include <QDateTime>
#include <QString>

#include <memory>
#include <optional>

#include <tl/expected.hpp>

namespace soakbook::app {

/// Who holds a workbook, as the lock says it.
struct Holder {
    QString host;
    QString user;
    QString boot;         ///< which start of that computer it was
    QString process_room; ///< processes in another room of the same computer are not seen from here
    qint64 process = 0;
    qint64 started = 0;   ///< when that process began, in the computer's own ticks: its number may be given again
    QDateTime since;

    bool operator==(const Holder&) const = default;
    /// This process, from now on.
    static Holder here(const QDateTime& now);
};

/// What is known of a holder.
enum class Alive {
    yes,      ///< a process of this computer that runs
    no,       ///< a process of this computer that is gone: proven
    unknown,  ///< on another computer, or not to be seen from here
};
/// `local`: the file lies on a disk of this computer, which no other computer can hold.
Alive is_alive(const Holder& holder, bool local);

/// Why a workbook could not be locked.
struct NotLocked {
    enum class Why {
        held,      ///< by `holder`
        unreadable,///< a lock is there that does not say whose it is
        no_place,  ///< the folder takes no file
    } why{};
    std::optional<Holder> holder;
};

class Lock {
public:
    /// Takes the lock of the workbook at `file`. One of a process that is proven gone is taken over without a word.
    static tl::expected<std::unique_ptr<Lock>, NotLocked> take(const QString& file, const QDateTime& now);
    /// Takes it over from whoever `seen` says, because a person said so; only if that one still holds it. Nothing stands for
    /// a lock that does not say whose it is.
    static tl::expected<std::unique_ptr<Lock>, NotLocked> take_over(const QString& file, const std::optional<Holder>& seen, const QDateTime& now);
    /// Who holds the workbook at `file`, if anybody.
    static std::optional<Holder> holder_of(const QString& file);
    /// Where its lock lies: beside the file itself, whatever link led to it.
    static QString path_of(const QString& file);

    ~Lock();
    Lock(const Lock&) = delete;
    Lock& operator=(const Lock&) = delete;
    /// Whether the lock beside the file is still this one; another may have been told to take it over.
    bool is_ours() const;

private:
    Lock(QString path, Holder holder) : m_path(std::move(path)), m_holder(std::move(holder)) {}
    QString m_path;
    Holder m_holder;
};

} // namespace soakbook::app
