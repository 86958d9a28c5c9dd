// SPDX-License-Identifier: GPL-3.0-or-later
#include "bad_disk.h"

#include <csignal>
#include <cstring>

#include <sqlite3.h>
#include <unistd.h>

namespace soakbook::faults {

namespace {

struct Plan {
    Act act{};
    int at = 0; // 0: none
    BadDisk::How how{};
    int seen = 0;
    bool came = false;
};
Plan plan;
sqlite3_vfs* real_disk = nullptr;

/// True when this act is to fail.
bool strikes(Act act) {
    if (plan.at == 0 || act != plan.act)
        return false;
    ++plan.seen;
    const bool now = plan.seen == plan.at || (plan.seen > plan.at && plan.how == BadDisk::How::fails_from_then_on);
    plan.came = plan.came || now;
    if (now && plan.how == BadDisk::How::process_dies)
        ::kill(::getpid(), SIGKILL);
    return now;
}

struct File {
    sqlite3_file base;
    sqlite3_file* real() { return reinterpret_cast<sqlite3_file*>(this + 1); }
};
sqlite3_file* real(sqlite3_file* f) { return reinterpret_cast<File*>(f)->real(); }

int on_close(sqlite3_file* f) { return real(f)->pMethods->xClose(real(f)); }
int on_read(sqlite3_file* f, void* to, int amount, sqlite3_int64 at) {
    return strikes(Act::read) ? SQLITE_IOERR_READ : real(f)->pMethods->xRead(real(f), to, amount, at);
}
int on_write(sqlite3_file* f, const void* from, int amount, sqlite3_int64 at) {
    if (!strikes(Act::write))
        return real(f)->pMethods->xWrite(real(f), from, amount, at);
    // A write that fails may have got half way.
    real(f)->pMethods->xWrite(real(f), from, amount / 2, at);
    return SQLITE_IOERR_WRITE;
}
int on_truncate(sqlite3_file* f, sqlite3_int64 size) {
    return strikes(Act::truncate) ? SQLITE_IOERR_TRUNCATE : real(f)->pMethods->xTruncate(real(f), size);
}
int on_sync(sqlite3_file* f, int flags) { return strikes(Act::sync) ? SQLITE_IOERR_FSYNC : real(f)->pMethods->xSync(real(f), flags); }
int on_size(sqlite3_file* f, sqlite3_int64* size) { return real(f)->pMethods->xFileSize(real(f), size); }
int on_lock(sqlite3_file* f, int level) { return real(f)->pMethods->xLock(real(f), level); }
int on_unlock(sqlite3_file* f, int level) { return real(f)->pMethods->xUnlock(real(f), level); }
int on_reserved(sqlite3_file* f, int* is) { return real(f)->pMethods->xCheckReservedLock(real(f), is); }
int on_control(sqlite3_file* f, int what, void* with) { return real(f)->pMethods->xFileControl(real(f), what, with); }
int on_sector(sqlite3_file* f) { return real(f)->pMethods->xSectorSize(real(f)); }
int on_traits(sqlite3_file* f) { return real(f)->pMethods->xDeviceCharacteristics(real(f)); }

const sqlite3_io_methods methods = [] {
    sqlite3_io_methods m;
    std::memset(&m, 0, sizeof m);
    m.iVersion = 1;
    m.xClose = on_close;
    m.xRead = on_read;
    m.xWrite = on_write;
    m.xTruncate = on_truncate;
    m.xSync = on_sync;
    m.xFileSize = on_size;
    m.xLock = on_lock;
    m.xUnlock = on_unlock;
    m.xCheckReservedLock = on_reserved;
    m.xFileControl = on_control;
    m.xSectorSize = on_sector;
    m.xDeviceCharacteristics = on_traits;
    return m;
}();

int on_open(sqlite3_vfs*, const char* name, sqlite3_file* f, int flags, int* out) {
    f->pMethods = nullptr;
    const int rc = real_disk->xOpen(real_disk, name, real(f), flags, out);
    if (real(f)->pMethods != nullptr)
        f->pMethods = &methods;
    return rc;
}

int on_remove(sqlite3_vfs*, const char* name, int sync_folder) {
    if (strikes(Act::remove))
        return SQLITE_IOERR_DELETE;
    const int rc = real_disk->xDelete(real_disk, name, sync_folder);
    return sync_folder != 0 && strikes(Act::folder_sync) ? SQLITE_IOERR_DIR_FSYNC : rc;
}

sqlite3_vfs bad_disk;

} // namespace

BadDisk::BadDisk() {
    plan = {};
    real_disk = sqlite3_vfs_find(nullptr);
    bad_disk = *real_disk;
    bad_disk.zName = "bad disk";
    bad_disk.szOsFile = static_cast<int>(sizeof(File)) + real_disk->szOsFile;
    bad_disk.xOpen = on_open;
    bad_disk.xDelete = on_remove;
    sqlite3_vfs_register(&bad_disk, 1);
}

BadDisk::~BadDisk() {
    sqlite3_vfs_unregister(&bad_disk);
    sqlite3_vfs_register(real_disk, 1);
}

void BadDisk::fail(Act act, int at, How how) { plan = {act, at, how, 0, false}; }
void BadDisk::heal() { plan.at = 0; }
bool BadDisk::came() const { return plan.came; }
int BadDisk::seen() const { return plan.seen; }

} // namespace soakbook::faults
