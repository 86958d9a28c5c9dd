// SPDX-License-Identifier: GPL-3.0-or-later
// A store read page by page, below SQLite: for files so damaged that SQLite gives up on them. The file is only read, and
// nothing in it is believed: every length and page number is checked against the file.
// Source of the format: "Database File Format", sqlite.org.
#pragma once

#include <QByteArray>
#include <QFile>

#include <cstdint>
#include <map>
#include <optional>
#include <set>
#include <vector>

namespace soakbook::book {

/// A cell as it is stored: 'n' nothing, 'i' a number, 'f' a floating one, 's' text, 'b' bytes.
struct StoredCell {
    char kind = 'n';
    qint64 number = 0;
    QByteArray bytes; ///< of text and bytes
    bool operator==(const StoredCell&) const = default;
};
struct StoredRow {
    qint64 id = 0;
    std::vector<StoredCell> cells;
    std::vector<std::uint32_t> overflow; ///< pages that it goes on into
};
/// Where a row stands.
struct StoredAt {
    std::uint32_t page = 0;
    std::uint16_t cell = 0;
};

class PageFile {
public:
    /// False when the file cannot be read or holds no page.
    bool open(const QString& path);
    std::uint32_t pages() const { return m_pages; }
    /// Whether the first page tells what the pages are like; otherwise they are taken to be as Soakbook makes them.
    bool has_head() const { return m_has_head; }

    enum class Kind { other, leaf, interior };
    /// What a page is in a table's tree.
    Kind kind(std::uint32_t page);
    /// Whether the page is one of an index.
    bool is_index(std::uint32_t page);
    /// The rows of a leaf; a row that cannot be read is empty.
    std::vector<std::optional<StoredRow>> rows(std::uint32_t leaf);
    std::optional<StoredRow> row(const StoredAt& at);
    /// The pages below an interior page.
    std::vector<std::uint32_t> below(std::uint32_t interior);
    /// Pages that hold nothing any more, as far as the list of them can be read.
    std::set<std::uint32_t> free_pages();

private:
    const QByteArray& page(std::uint32_t number); ///< good until the next one is asked for
    std::optional<StoredRow> read_row(std::uint32_t number, int place);
    bool read_overflow(QByteArray& payload, qint64 size, std::uint32_t first, std::vector<std::uint32_t>& pages);
    int head_of(std::uint32_t number) const { return number == 1 ? 100 : 0; }
    bool is_page(std::uint32_t number) const { return number >= 1 && number <= m_pages; }

    QFile m_file;
    int m_size = 4096;
    int m_usable = 4096;
    std::uint32_t m_pages = 0;
    bool m_has_head = false;
    qint64 m_overflow_left = 0; ///< how many more pages of long rows are followed: a hostile file could name one for ever
    std::map<std::uint32_t, QByteArray> m_cache;
};

} // namespace soakbook::book
