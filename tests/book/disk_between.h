// SPDX-License-Identifier: GPL-3.0-or-later
// What stands between SQLite and the system's files: each file keeps `Own` beside the real one, and whatever is not taken
// over is handed on.
#pragma once

#include <cstring>
#include <type_traits>

#include <sqlite3.h>

namespace soakbook::tests {

template <class Own> class DiskBetween {
public:
    /// SQLite gives raw memory and never destroys it.
    static_assert(std::is_trivial_v<Own>);

    static sqlite3_file* real(sqlite3_file* f) { return reinterpret_cast<sqlite3_file*>(reinterpret_cast<File*>(f) + 1); }
    static Own& own(sqlite3_file* f) { return reinterpret_cast<File*>(f)->own; }

    /// Methods that hand everything on; take over what is to be otherwise.
    static sqlite3_io_methods methods() {
        sqlite3_io_methods m;
        std::memset(&m, 0, sizeof m);
        m.iVersion = 1;
        m.xClose = [](sqlite3_file* f) { return real(f)->pMethods->xClose(real(f)); };
        m.xRead = [](sqlite3_file* f, void* to, int amount, sqlite3_int64 at) { return real(f)->pMethods->xRead(real(f), to, amount, at); };
        m.xWrite = [](sqlite3_file* f, const void* from, int amount, sqlite3_int64 at) { return real(f)->pMethods->xWrite(real(f), from, amount, at); };
        m.xTruncate = [](sqlite3_file* f, sqlite3_int64 size) { return real(f)->pMethods->xTruncate(real(f), size); };
        m.xSync = [](sqlite3_file* f, int flags) { return real(f)->pMethods->xSync(real(f), flags); };
        m.xFileSize = [](sqlite3_file* f, sqlite3_int64* size) { return real(f)->pMethods->xFileSize(real(f), size); };
        m.xLock = [](sqlite3_file* f, int level) { return real(f)->pMethods->xLock(real(f), level); };
        m.xUnlock = [](sqlite3_file* f, int level) { return real(f)->pMethods->xUnlock(real(f), level); };
        m.xCheckReservedLock = [](sqlite3_file* f, int* is) { return real(f)->pMethods->xCheckReservedLock(real(f), is); };
        m.xFileControl = [](sqlite3_file* f, int what, void* with) { return real(f)->pMethods->xFileControl(real(f), what, with); };
        m.xSectorSize = [](sqlite3_file* f) { return real(f)->pMethods->xSectorSize(real(f)); };
        m.xDeviceCharacteristics = [](sqlite3_file* f) { return real(f)->pMethods->xDeviceCharacteristics(real(f)); };
        return m;
    }

    /// Puts a disk named `name` in the place of the one that is there, which is `real_disk()` until `take_away`.
    static void put_between(const char* name, decltype(sqlite3_vfs::xOpen) open, decltype(sqlite3_vfs::xDelete) remove) {
        s_real = sqlite3_vfs_find(nullptr);
        s_disk = *s_real;
        s_disk.zName = name;
        s_disk.szOsFile = static_cast<int>(sizeof(File)) + s_real->szOsFile;
        s_disk.xOpen = open;
        s_disk.xDelete = remove;
        sqlite3_vfs_register(&s_disk, 1);
    }
    static void take_away() {
        sqlite3_vfs_unregister(&s_disk);
        sqlite3_vfs_register(s_real, 1);
    }
    static sqlite3_vfs* real_disk() { return s_real; }

    /// Opens the real file; true where there is one to hand on to.
    static bool open_real(const char* name, sqlite3_file* f, int flags, int* out, int& rc) {
        f->pMethods = nullptr;
        rc = s_real->xOpen(s_real, name, real(f), flags, out);
        return real(f)->pMethods != nullptr;
    }

private:
    struct File {
        sqlite3_file base;
        Own own;
    };
    static inline sqlite3_vfs* s_real = nullptr;
    static inline sqlite3_vfs s_disk;
};

} // namespace soakbook::tests
