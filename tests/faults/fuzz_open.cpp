// SPDX-License-Identifier: GPL-3.0-or-later
// For libFuzzer: any bytes as a workbook. packaging/check --long builds and runs it, with the seeds that test_faults writes.
#include "open_and_list.h"

#include <QCoreApplication>
#include <QFile>

#include <cstddef>
#include <cstdint>

#include <sys/stat.h>
#include <unistd.h>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    static int one = 1;
    static char name[] = "fuzz_open";
    static char* arguments[] = {name, nullptr};
    static QCoreApplication application(one, arguments);
    static const QString path = (::access("/dev/shm", W_OK) == 0 ? QStringLiteral("/dev/shm/soakbook-fuzz-") : QStringLiteral("/tmp/soakbook-fuzz-")) +
                                QString::number(::getpid()) + QStringLiteral(".soakbook");
    {
        QFile file(path);
        if (!file.open(QIODevice::WriteOnly | QIODevice::Truncate))
            return 0;
        file.write(reinterpret_cast<const char*>(data), static_cast<qint64>(size));
    }
    QFile::remove(path + QStringLiteral("-journal"));
    QFile::remove(path + QStringLiteral("-wal"));
    (void)soakbook::faults::open_and_list(path);
    QFile::remove(path);
    return 0;
}
