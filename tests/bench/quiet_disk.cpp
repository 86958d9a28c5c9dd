// SPDX-License-Identifier: GPL-3.0-or-later
#include "quiet_disk.h"

#include <cstring>

#include <sqlite3.h>

namespace soakbook::tests {

namespace {

sqlite3_vfs* slow_disk = nullptr;
sqlite3_vfs quiet_disk;

struct File {
    sqlite3_file base;
    sqlite3_file* real() { return reinterpret_cast<sqlite3_file*>(this + 1); }
};
sqlite3_file* real(sqlite3_file* f) { return reinterpret_cast<File*>(f)->real(); }

int on_sync(sqlite3_file*, int) { return SQLITE_OK; }

const sqlite3_io_methods methods = [] {
    sqlite3_io_methods m;
    std::memset(&m, 0, sizeof m);
    m.iVersion = 1;
    m.xClose = [](sqlite3_file* f) { return real(f)->pMethods->xClose(real(f)); };
    m.xRead = [](sqlite3_file* f, void* to, int amount, sqlite3_int64 at) { return real(f)->pMethods->xRead(real(f), to, amount, at); };
    m.xWrite = [](sqlite3_file* f, const void* from, int amount, sqlite3_int64 at) { return real(f)->pMethods->xWrite(real(f), from, amount, at); };
    m.xTruncate = [](sqlite3_file* f, sqlite3_int64 size) { return real(f)->pMethods->xTruncate(real(f), size); };
    m.xSync = on_sync;
    m.xFileSize = [](sqlite3_file* f, sqlite3_int64* size) { return real(f)->pMethods->xFileSize(real(f), size); };
    m.xLock = [](sqlite3_file* f, int level) { return real(f)->pMethods->xLock(real(f), level); };
    m.xUnlock = [](sqlite3_file* f, int level) { return real(f)->pMethods->xUnlock(real(f), level); };
    m.xCheckReservedLock = [](sqlite3_file* f, int* is) { return real(f)->pMethods->xCheckReservedLock(real(f), is); };
    m.xFileControl = [](sqlite3_file* f, int what, void* with) { return real(f)->pMethods->xFileControl(real(f), what, with); };
    m.xSectorSize = [](sqlite3_file* f) { return real(f)->pMethods->xSectorSize(real(f)); };
    m.xDeviceCharacteristics = [](sqlite3_file* f) { return real(f)->pMethods->xDeviceCharacteristics(real(f)); };
    return m;
}();

int on_open(sqlite3_vfs*, const char* name, sqlite3_file* f, int flags, int* out) {
    f->pMethods = nullptr;
    const int rc = slow_disk->xOpen(slow_disk, name, real(f), flags, out);
    if (real(f)->pMethods != nullptr)
        f->pMethods = &methods;
    return rc;
}

int on_remove(sqlite3_vfs*, const char* name, int) { return slow_disk->xDelete(slow_disk, name, 0); }

} // namespace

QuietDisk::QuietDisk() {
    slow_disk = sqlite3_vfs_find(nullptr);
    quiet_disk = *slow_disk;
    quiet_disk.zName = "quiet disk";
    quiet_disk.szOsFile = static_cast<int>(sizeof(File)) + slow_disk->szOsFile;
    quiet_disk.xOpen = on_open;
    quiet_disk.xDelete = on_remove;
    sqlite3_vfs_register(&quiet_disk, 1);
}

QuietDisk::~QuietDisk() {
    sqlite3_vfs_unregister(&quiet_disk);
    sqlite3_vfs_register(slow_disk, 1);
}

} // namespace soakbook::tests
