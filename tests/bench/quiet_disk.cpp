// SPDX-License-Identifier: GPL-3.0-or-later
#include "quiet_disk.h"

#include "tests/book/disk_between.h"

namespace soakbook::tests {

namespace {

struct Quiet {};
using Between = DiskBetween<Quiet>;

const sqlite3_io_methods methods = [] {
    sqlite3_io_methods m = Between::methods();
    m.xSync = [](sqlite3_file*, int) { return SQLITE_OK; };
    return m;
}();

int on_open(sqlite3_vfs*, const char* name, sqlite3_file* f, int flags, int* out) {
    int rc = SQLITE_OK;
    if (Between::open_real(name, f, flags, out, rc))
        f->pMethods = &methods;
    return rc;
}

int on_remove(sqlite3_vfs*, const char* name, int) { return Between::real_disk()->xDelete(Between::real_disk(), name, 0); }

} // namespace

QuietDisk::QuietDisk() { Between::put_between("quiet disk", on_open, on_remove); }

QuietDisk::~QuietDisk() { Between::take_away(); }

} // namespace soakbook::tests
