// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/file_place.h"

#include <QFile>
#include <QFileInfo>
#include <QTextStream>

#include <algorithm>
#include <array>

#include <sys/stat.h>
#include <sys/statvfs.h>
#include <sys/vfs.h>
#include <unistd.h>

namespace soakbook::app {

namespace {

QByteArray real_name(const QString& file) {
    const QString real = QFileInfo(file).canonicalFilePath();
    return QFile::encodeName(real.isEmpty() ? file : real);
}

// Numbers of file systems that reach over a network: statfs(2); SMB2 from the kernel's magic.h.
constexpr std::array<unsigned long, 8> network_kinds{0x6969, 0x517B, 0xFF534D42, 0xFE534D42, 0x564C, 0x73757245, 0x5346414F, 0x00C36400};
constexpr unsigned long fuse = 0x65735546;

/// A file system made by a program says only in the list of mounts which one it is.
bool is_network_program(const QByteArray& name) {
    QFile mounts(QStringLiteral("/proc/self/mounts"));
    if (!mounts.open(QIODevice::ReadOnly))
        return false;
    QString kind;
    qsizetype longest = -1;
    const QString path = QFile::decodeName(name);
    for (const QString& line : QString::fromUtf8(mounts.readAll()).split(QLatin1Char('\n'), Qt::SkipEmptyParts)) {
        const QStringList words = line.split(QLatin1Char(' '));
        QString at = words.value(1);
        at.replace(QStringLiteral("\\040"), QStringLiteral(" "));
        const bool holds = at == QStringLiteral("/") || path == at || path.startsWith(at + QLatin1Char('/'));
        if (holds && at.size() > longest) {
            longest = at.size();
            kind = words.value(2);
        }
    }
    const QStringList programs{QStringLiteral("fuse.sshfs"), QStringLiteral("fuse.smbnetfs"), QStringLiteral("fuse.gvfsd-fuse"), QStringLiteral("fuse.davfs"),
                               QStringLiteral("fuse.rclone"), QStringLiteral("fuse.glusterfs"), QStringLiteral("fuse.s3fs")};
    return programs.contains(kind);
}

} // namespace

Writable writable(const QString& file) {
    const QByteArray name = real_name(file);
    const QByteArray folder = QFile::encodeName(QFileInfo(QFile::decodeName(name)).absolutePath());
    struct statvfs medium {};
    if (::statvfs(folder.constData(), &medium) == 0 && (medium.f_flag & ST_RDONLY) != 0)
        return Writable::medium_kept;
    if (::access(name.constData(), W_OK) != 0)
        return Writable::file_kept;
    if (::access(folder.constData(), W_OK) != 0)
        return Writable::folder_kept;
    return Writable::yes;
}

bool is_on_network(const QString& file) {
    const QByteArray name = real_name(file);
    struct statfs place {};
    if (::statfs(name.constData(), &place) != 0)
        return false;
    const auto kind = static_cast<unsigned long>(place.f_type) & 0xFFFFFFFFUL;
    return std::find(network_kinds.begin(), network_kinds.end(), kind) != network_kinds.end() || (kind == fuse && is_network_program(name));
}

QString identity_of(const QString& file) {
    struct stat found {};
    if (::stat(QFile::encodeName(file).constData(), &found) != 0)
        return {};
    return QString::number(found.st_dev, 16) + QLatin1Char('-') + QString::number(found.st_ino, 16);
}

bool is_same_file(const QString& one, const QString& other) {
    const QString identity = identity_of(one);
    return !identity.isEmpty() && identity == identity_of(other);
}

} // namespace soakbook::app
