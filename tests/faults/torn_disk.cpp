// SPDX-License-Identifier: GPL-3.0-or-later
#include "torn_disk.h"

#include "tests/book/disk_between.h"

#include <algorithm>
#include <csignal>
#include <cstring>
#include <fstream>
#include <iterator>
#include <map>
#include <random>
#include <string>
#include <vector>

#include <sqlite3.h>
#include <unistd.h>

namespace soakbook::faults {

namespace {

constexpr std::size_t sector = 512;

/// A write, or with no bytes a truncation to `at`.
struct Pending {
    std::size_t at = 0;
    std::string bytes;
    bool truncates = false;
};
struct Held {
    std::string down; ///< what is on the disk for good
    std::vector<Pending> pending;
    bool name_is_down = true; ///< false: made since the folder was last synced
};
std::map<std::string, Held> held;
/// Removed, but the folder was not synced since: what would be back.
std::map<std::string, std::string> may_be_back;

int acts_seen = 0;
int cut_at = 0; // 0: never
std::mt19937 choose;

bool heads() { return choose() % 2 == 0; }

void write_into(std::string& file, std::size_t at, const char* bytes, std::size_t size) {
    if (file.size() < at + size)
        file.resize(at + size, '\0');
    file.replace(at, size, bytes, size);
}

void settle(std::string& file, const Pending& act, bool torn) {
    if (act.truncates) {
        if (!torn || heads())
            file.resize(std::min(file.size(), act.at));
        return;
    }
    for (std::size_t done = 0; done < act.bytes.size();) {
        const std::size_t end = std::min(act.bytes.size(), done + sector - (act.at + done) % sector);
        if (!torn || heads())
            write_into(file, act.at + done, act.bytes.data() + done, end - done);
        done = end;
    }
}

void put_on_disk(const std::string& path, const std::string& bytes) {
    std::ofstream out(path, std::ios::binary | std::ios::trunc);
    out.write(bytes.data(), static_cast<std::streamsize>(bytes.size()));
}

void cut_power() {
    for (auto& [path, file] : held) {
        if (::access(path.c_str(), F_OK) != 0)
            continue;
        // In one cut of four nothing of it came down, in another one all did: torn to pieces is not the only way.
        const unsigned how = choose() % 4;
        for (const Pending& act : file.pending)
            if (how != 0)
                settle(file.down, act, how != 1);
        if (!file.name_is_down && heads())
            ::unlink(path.c_str());
        else
            put_on_disk(path, file.down);
    }
    for (const auto& [path, bytes] : may_be_back)
        if (heads())
            put_on_disk(path, bytes);
    ::kill(::getpid(), SIGKILL);
}

void act() {
    if (++acts_seen == cut_at)
        cut_power();
}

void folder_is_synced() {
    may_be_back.clear();
    for (auto& [path, file] : held)
        file.name_is_down = true;
}

struct Torn {
    char* path;
};
using BetweenTorn = tests::DiskBetween<Torn>;
sqlite3_file* real_of(sqlite3_file* f) { return BetweenTorn::real(f); }
Held& of(sqlite3_file* f) { return held[BetweenTorn::own(f).path]; }

int on_close(sqlite3_file* f) {
    delete[] BetweenTorn::own(f).path;
    return real_of(f)->pMethods->xClose(real_of(f));
}
int on_write(sqlite3_file* f, const void* from, int amount, sqlite3_int64 at) {
    act();
    of(f).pending.push_back({static_cast<std::size_t>(at), std::string(static_cast<const char*>(from), static_cast<std::size_t>(amount)), false});
    return real_of(f)->pMethods->xWrite(real_of(f), from, amount, at);
}
int on_truncate(sqlite3_file* f, sqlite3_int64 size) {
    act();
    of(f).pending.push_back({static_cast<std::size_t>(size), {}, true});
    return real_of(f)->pMethods->xTruncate(real_of(f), size);
}
int on_sync(sqlite3_file* f, int) {
    act();
    Held& file = of(f);
    for (const Pending& one : file.pending)
        settle(file.down, one, false);
    file.pending.clear();
    // SQLite syncs the folder together with the first sync of a journal that it made.
    if (!file.name_is_down)
        folder_is_synced();
    return SQLITE_OK;
}

const sqlite3_io_methods torn_methods = [] {
    sqlite3_io_methods m = BetweenTorn::methods();
    m.xClose = on_close;
    m.xWrite = on_write;
    m.xTruncate = on_truncate;
    m.xSync = on_sync;
    return m;
}();

int on_open(sqlite3_vfs*, const char* name, sqlite3_file* f, int flags, int* out) {
    const std::string path = name ? name : "";
    const bool was_there = ::access(path.c_str(), F_OK) == 0;
    int rc = SQLITE_OK;
    if (!BetweenTorn::open_real(name, f, flags, out, rc) || rc != SQLITE_OK)
        return rc;
    Torn& own = BetweenTorn::own(f);
    own.path = new char[path.size() + 1];
    std::memcpy(own.path, path.c_str(), path.size() + 1);
    if (!was_there) {
        held[path] = {{}, {}, false};
    } else if (held.count(path) == 0) {
        std::ifstream in(path, std::ios::binary);
        held[path].down.assign(std::istreambuf_iterator<char>(in), {});
    }
    f->pMethods = &torn_methods;
    return rc;
}

int on_remove(sqlite3_vfs*, const char* name, int sync_folder) {
    act();
    const int rc = BetweenTorn::real_disk()->xDelete(BetweenTorn::real_disk(), name, sync_folder);
    if (rc != SQLITE_OK)
        return rc;
    const auto file = held.find(name);
    // One that was never there for good does not come back.
    if (file != held.end() && file->second.name_is_down)
        may_be_back[name] = file->second.down;
    held.erase(name);
    if (sync_folder != 0)
        folder_is_synced();
    return rc;
}

} // namespace

TornDisk::TornDisk() {
    held.clear();
    may_be_back.clear();
    acts_seen = cut_at = 0;
    BetweenTorn::put_between("torn disk", on_open, on_remove);
}

TornDisk::~TornDisk() { BetweenTorn::take_away(); }

void TornDisk::cut_power_at(int act, unsigned chance) {
    acts_seen = 0;
    cut_at = act;
    choose.seed(chance);
}

int TornDisk::acts() const { return acts_seen; }

} // namespace soakbook::faults
