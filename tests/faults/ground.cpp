// SPDX-License-Identifier: GPL-3.0-or-later
#include "ground.h"

#include <QFile>
#include <QFileInfo>

#include <algorithm>
#include <vector>

#include <sqlite3.h>

namespace soakbook::faults {

namespace {
QString where() {
    const QFileInfo memory(QStringLiteral("/dev/shm"));
    return (memory.isDir() && memory.isWritable() ? memory.filePath() : QDir::tempPath()) + QStringLiteral("/soakbook-XXXXXX");
}

/// Rows of a statement as text, one a line; throws what SQLite says.
std::string rows_of(sqlite3* db, const std::string& sql) {
    sqlite3_stmt* s = nullptr;
    std::string text;
    int rc = sqlite3_prepare_v2(db, sql.c_str(), -1, &s, nullptr);
    while (rc == SQLITE_OK || rc == SQLITE_ROW) {
        rc = sqlite3_step(s);
        if (rc != SQLITE_ROW)
            break;
        const auto* cell = sqlite3_column_text(s, 0);
        text += cell ? std::string(reinterpret_cast<const char*>(cell), static_cast<std::size_t>(sqlite3_column_bytes(s, 0))) : "(nothing)";
        text += '\n';
    }
    sqlite3_finalize(s);
    if (rc != SQLITE_DONE)
        throw std::runtime_error(sqlite3_errmsg(db));
    return text;
}
} // namespace

int cases(int quick, int many) { return qEnvironmentVariableIsSet("SOAKBOOK_LONG") ? many : quick; }

Ground::Ground() : m_folder(where()) {}

QByteArray bytes_of(const QString& path) {
    QFile in(path);
    return in.open(QIODevice::ReadOnly) ? in.readAll() : QByteArray();
}

void put(const QString& path, const QByteArray& bytes) {
    QFile out(path);
    if (!out.open(QIODevice::WriteOnly) || out.write(bytes) != bytes.size())
        throw std::runtime_error("a test file was not written");
}

const QByteArray& filled_workbook() {
    static const QByteArray bytes = [] {
        tests::Shelf shelf;
        shelf.fill();
        for (int n = 1; n <= 30; ++n)
            make_entry(shelf.book(), n);
        shelf.close();
        return bytes_of(shelf.path());
    }();
    return bytes;
}

QByteArray workbook_of_version_1() {
    return qUncompress(bytes_of(QStringLiteral(SOAKBOOK_SOURCE_DIR "/tests/book/data/version_1.qz")));
}

void make_entry(book::Workbook& workbook, int n, const book::Doing& doing) {
    struct Done {
        explicit operator bool() const { return true; }
    };
    const QString name = QStringLiteral("entry %1").arg(n);
    workbook.write({QStringLiteral("yard"), 1, name}, doing, [&](book::Writing& writing) {
        book::Hive hive;
        hive.yard = book::insert(writing, book::Yard{{}, name, {}, QString(200, QLatin1Char('n')), true});
        hive.name = name;
        book::insert(writing, hive);
        return Done{};
    });
}

std::set<int> entries_in(const QString& path) {
    tests::Raw raw(path);
    const std::string yards = raw.cell("SELECT group_concat(substr(name, 7)) FROM (SELECT name FROM yard WHERE name LIKE 'entry %' ORDER BY id)");
    EXPECT_EQ(yards, raw.cell("SELECT group_concat(substr(y.name, 7)) FROM (SELECT h.name FROM hive h JOIN yard y ON y.id = h.yard_id AND y.name = h.name "
                              "WHERE h.name LIKE 'entry %' ORDER BY y.id) y"))
        << "half an entry";
    std::set<int> numbers;
    for (const QString& number : QString::fromStdString(yards).split(QLatin1Char(','), Qt::SkipEmptyParts))
        numbers.insert(number.toInt());
    return numbers;
}

std::string everything_in(const QString& path) {
    sqlite3* db = nullptr;
    std::string all;
    try {
        if (sqlite3_open_v2(path.toUtf8().constData(), &db, SQLITE_OPEN_READWRITE, nullptr) != SQLITE_OK)
            throw std::runtime_error("it does not open");
        std::string tables = rows_of(db, "SELECT name FROM sqlite_schema WHERE type = 'table' AND name NOT IN ('seal', 'sqlite_stat1') ORDER BY name");
        while (!tables.empty()) {
            const std::string table = tables.substr(0, tables.find('\n'));
            tables.erase(0, table.size() + 1);
            // The uid is by chance; in the history it is the second line of each image.
            std::string columns = rows_of(db, "SELECT group_concat(CASE WHEN name IN ('before', 'after') THEN "
                                              "'quote(substr(' || name || ', 1, instr(' || name || ', ''uid='')) || substr(' || name || ', instr(' || name || ', ''uid='') + 40))' "
                                              "ELSE 'quote(' || name || ')' END, '||'',''||') FROM pragma_table_info('" +
                                                  table + "') WHERE name <> 'uid'");
            columns.pop_back();
            all += table + ":\n" + rows_of(db, "SELECT " + columns + " FROM " + table + " ORDER BY 1");
        }
    } catch (const std::exception&) {
        all.clear();
    }
    sqlite3_close(db);
    return all;
}

book::Verdict expect_sound(const QString& path, const std::string& when) {
    auto opened = book::Workbook::open(path);
    EXPECT_TRUE(opened.has_value()) << when << ": it does not open, " << (opened ? 0 : static_cast<int>(opened.error()));
    if (opened)
        opened->reset();
    const book::Verdict verdict = book::verify(path);
    EXPECT_TRUE(verdict.sound()) << when << ": check " << (verdict.first_bad() ? static_cast<int>(verdict.first_bad()->check) : -1);
    return verdict;
}

} // namespace soakbook::faults
