// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/lock.h"

#include "app/file_place.h"

#include <QFile>
#include <QFileInfo>
#include <QSysInfo>

#include <cerrno>

#include <fcntl.h>
#include <pwd.h>
#include <unistd.h>

namespace soakbook::app {

namespace {

constexpr qint64 most_bytes = 4096;

QString line_of(const QString& path) {
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? QString::fromUtf8(file.read(most_bytes)).trimmed() : QString();
}

/// When a process began: the 22nd word of its line in /proc, proc(5). Its name, the second, may hold blanks and brackets.
std::optional<qint64> start_of(qint64 process) {
    const QString line = line_of(QStringLiteral("/proc/%1/stat").arg(process));
    const QStringList rest = line.mid(line.lastIndexOf(QLatin1Char(')')) + 1).split(QLatin1Char(' '), Qt::SkipEmptyParts);
    bool number = false;
    const qint64 start = rest.value(19).toLongLong(&number);
    // One that has ended and waits to be buried writes nothing more.
    return number && rest.value(0) != QStringLiteral("Z") && rest.value(0) != QStringLiteral("X") ? std::optional<qint64>(start) : std::nullopt;
}

QString user_name() {
    const passwd* entry = ::getpwuid(::getuid());
    return entry ? QString::fromLocal8Bit(entry->pw_name) : QString::number(::getuid());
}

QString room_of_processes() { return QFile::symLinkTarget(QStringLiteral("/proc/self/ns/pid")).section(QLatin1Char('/'), -1); }

QByteArray text_of(const Holder& holder) {
    const QStringList lines{holder.host, holder.user, QString::number(holder.process), QString::number(holder.started), holder.boot,
                            holder.process_room, holder.since.toUTC().toString(Qt::ISODate)};
    QString text = QStringLiteral("Soakbook has this workbook open: computer, user, process, its start, the computer's start, room, since\n");
    for (QString line : lines)
        text += line.replace(QLatin1Char('\n'), QLatin1Char(' ')) + QLatin1Char('\n');
    return text.toUtf8();
}

std::optional<Holder> read_holder(const QString& path) {
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly))
        return std::nullopt;
    const QStringList lines = QString::fromUtf8(file.read(most_bytes)).split(QLatin1Char('\n'));
    bool process = false;
    bool started = false;
    Holder holder;
    holder.host = lines.value(1);
    holder.user = lines.value(2);
    holder.process = lines.value(3).toLongLong(&process);
    holder.started = lines.value(4).toLongLong(&started);
    holder.boot = lines.value(5);
    holder.process_room = lines.value(6);
    holder.since = QDateTime::fromString(lines.value(7), Qt::ISODate);
    // Eight lines, each ended: one that was cut says nothing for sure.
    const bool whole = lines.size() == 9 && process && started && !holder.host.isEmpty() && holder.since.isValid();
    return whole ? std::optional<Holder>(holder) : std::nullopt;
}

enum class Made { yes, there_already, no_place };

/// Makes the lock where none is; of several that try at once one succeeds.
Made make(const QString& path, const Holder& holder) {
    const QByteArray name = QFile::encodeName(path);
    const int file = ::open(name.constData(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, 0644);
    if (file < 0)
        return errno == EEXIST ? Made::there_already : Made::no_place;
    const QByteArray text = text_of(holder);
    const bool written = ::write(file, text.constData(), static_cast<std::size_t>(text.size())) == text.size() && ::fsync(file) == 0;
    ::close(file);
    if (!written)
        ::unlink(name.constData());
    return written ? Made::yes : Made::no_place;
}

/// Takes the lock of `seen` away. Moved aside first, which only one can do; if by then it was another's, it goes back.
bool remove(const QString& path, const std::optional<Holder>& seen) {
    const QString aside = path + QStringLiteral(".%1").arg(::getpid());
    const QByteArray from = QFile::encodeName(path);
    const QByteArray to = QFile::encodeName(aside);
    if (read_holder(path) != seen || ::rename(from.constData(), to.constData()) != 0)
        return false;
    const bool theirs = read_holder(aside) == seen;
    if (!theirs && ::link(to.constData(), from.constData()) != 0 && errno != EEXIST)
        ::rename(to.constData(), from.constData());
    ::unlink(to.constData());
    return theirs;
}

NotLocked held(const QString& path) {
    const auto holder = read_holder(path);
    return holder ? NotLocked{NotLocked::Why::held, holder} : NotLocked{NotLocked::Why::unreadable, {}};
}

} // namespace

Holder Holder::here(const QDateTime& now) {
    Holder holder;
    holder.host = QSysInfo::machineHostName();
    if (holder.host.isEmpty())
        holder.host = QStringLiteral("localhost");
    holder.user = user_name();
    holder.boot = line_of(QStringLiteral("/proc/sys/kernel/random/boot_id"));
    holder.process_room = room_of_processes();
    holder.process = ::getpid();
    holder.started = start_of(holder.process).value_or(0);
    holder.since = QDateTime::fromSecsSinceEpoch(now.toSecsSinceEpoch(), Qt::UTC);
    return holder;
}

Alive is_alive(const Holder& holder, bool local) {
    const Holder here = Holder::here(QDateTime::currentDateTimeUtc());
    if (holder.host != here.host || holder.boot.isEmpty() || here.boot.isEmpty())
        return Alive::unknown;
    // A name alone is no proof: on a network two computers may have the same one. The same start of one computer is; and on
    // its own disk whatever ran before the last start is gone, as after the power failed.
    if (holder.boot != here.boot)
        return local ? Alive::no : Alive::unknown;
    if (holder.process_room != here.process_room || here.process_room.isEmpty())
        return Alive::unknown;
    const auto started = start_of(holder.process);
    return started && *started == holder.started ? Alive::yes : Alive::no;
}

QString Lock::path_of(const QString& file) {
    const QString real = QFileInfo(file).canonicalFilePath();
    return (real.isEmpty() ? file : real) + QStringLiteral(".lock");
}

std::optional<Holder> Lock::holder_of(const QString& file) { return read_holder(path_of(file)); }

tl::expected<std::unique_ptr<Lock>, NotLocked> Lock::take(const QString& file, const QDateTime& now) {
    const QString path = path_of(file);
    const Holder holder = Holder::here(now);
    Made made = make(path, holder);
    if (made == Made::there_already) {
        const auto other = read_holder(path);
        if (other && is_alive(*other, !is_on_network(file)) == Alive::no && remove(path, other))
            made = make(path, holder);
    }
    switch (made) {
    case Made::yes:
        return std::unique_ptr<Lock>(new Lock(path, holder));
    case Made::no_place:
        return tl::unexpected(NotLocked{NotLocked::Why::no_place, {}});
    case Made::there_already:
        break;
    }
    return tl::unexpected(held(path));
}

tl::expected<std::unique_ptr<Lock>, NotLocked> Lock::take_over(const QString& file, const std::optional<Holder>& seen, const QDateTime& now) {
    const QString path = path_of(file);
    if (QFileInfo::exists(path) && !remove(path, seen))
        return tl::unexpected(held(path));
    return take(file, now);
}

bool Lock::is_ours() const { return read_holder(m_path) == m_holder; }

Lock::~Lock() {
    if (is_ours())
        QFile::remove(m_path);
}

} // namespace soakbook::app
