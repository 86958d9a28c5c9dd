// SPDX-License-Identifier: GPL-3.0-or-later
#include "bad_disk.h"

#include "tests/book/disk_between.h"

#include <csignal>

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

/// Which one it is: another disk may stand between as well.
struct Bad {};
using Between = tests::DiskBetween<Bad>;
sqlite3_file* real(sqlite3_file* f) { return Between::real(f); }

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

const sqlite3_io_methods methods = [] {
    sqlite3_io_methods m = Between::methods();
    m.xRead = on_read;
    m.xWrite = on_write;
    m.xTruncate = on_truncate;
    m.xSync = on_sync;
    return m;
}();

int on_open(sqlite3_vfs*, const char* name, sqlite3_file* f, int flags, int* out) {
    int rc = SQLITE_OK;
    if (Between::open_real(name, f, flags, out, rc))
        f->pMethods = &methods;
    return rc;
}

int on_remove(sqlite3_vfs*, const char* name, int sync_folder) {
    if (strikes(Act::remove))
        return SQLITE_IOERR_DELETE;
    const int rc = Between::real_disk()->xDelete(Between::real_disk(), name, sync_folder);
    return sync_folder != 0 && strikes(Act::folder_sync) ? SQLITE_IOERR_DIR_FSYNC : rc;
}

} // namespace

BadDisk::BadDisk() {
    plan = {};
    Between::put_between("bad disk", on_open, on_remove);
}

BadDisk::~BadDisk() { Between::take_away(); }

void BadDisk::fail(Act act, int at, How how) { plan = {act, at, how, 0, false}; }
void BadDisk::heal() { plan.at = 0; }
bool BadDisk::came() const { return plan.came; }
int BadDisk::seen() const { return plan.seen; }

} // namespace soakbook::faults
