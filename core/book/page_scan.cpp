// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/page_scan.h"

#include <algorithm>

namespace soakbook::book {

namespace {

class PageScanner {
public:
    PageScanner(PageFile& file, TableShapes& shapes, const std::function<bool(int)>& go_on)
        : m_file(file), m_shapes(shapes), m_go_on(go_on), m_seen(file.pages() + 1, false), m_tables(shapes.tables()) {}

    PageScan scan() {
        std::map<QString, std::uint32_t> roots = roots_from_tree();
        for (std::uint32_t page = 1; page <= m_file.pages() && static_cast<qsizetype>(roots.size()) < m_tables.size(); ++page)
            if (!m_seen[page])
                note_roots(page, roots);
        for (const auto& [table, root] : roots)
            walk(table, root);
        beside_the_trees();
        for (auto& [table, rows] : m_result.rows)
            std::stable_sort(rows.begin(), rows.end(), [](const FoundRow& a, const FoundRow& b) {
                return a.id != b.id ? a.id < b.id : a.in_tree && !b.in_tree;
            });
        return std::move(m_result);
    }

private:
    using Rows = std::vector<std::optional<StoredRow>>;

    // The schema's own table has its root on the first page.
    std::map<QString, std::uint32_t> roots_from_tree() {
        std::map<QString, std::uint32_t> roots;
        std::vector<std::uint32_t> open{1};
        while (!open.empty()) {
            const std::uint32_t page = open.back();
            open.pop_back();
            if (m_seen[page])
                continue;
            if (m_file.kind(page) == PageFile::Kind::leaf && note_roots(page, roots))
                m_seen[page] = true;
            if (m_file.kind(page) == PageFile::Kind::interior) {
                m_seen[page] = true;
                for (const std::uint32_t below : m_file.below(page))
                    open.push_back(below);
            }
        }
        return roots;
    }

    // A row of the schema: what it is, its name, its table, its root, its text.
    bool note_roots(std::uint32_t page, std::map<QString, std::uint32_t>& roots) {
        bool any = false;
        for (const auto& row : m_file.rows(page)) {
            if (!row || row->cells.size() != 5 || row->cells[0].kind != 's' || row->cells[1].kind != 's' || row->cells[3].kind != 'i')
                continue;
            any = true;
            for (const std::uint32_t more : row->overflow)
                m_seen[more] = true;
            const QString name = QString::fromUtf8(row->cells[1].bytes);
            const qint64 root = row->cells[3].number;
            if (row->cells[0].bytes == "table" && m_tables.contains(name) && root >= 1 && root <= m_file.pages())
                roots.emplace(name, static_cast<std::uint32_t>(root));
        }
        return any;
    }

    void walk(const QString& table, std::uint32_t root) {
        std::vector<std::uint32_t> open{root};
        while (!open.empty() && !m_result.stopped) {
            const std::uint32_t page = open.back();
            open.pop_back();
            if (m_seen[page])
                continue;
            const PageFile::Kind kind = m_file.kind(page);
            if (kind == PageFile::Kind::interior) {
                m_seen[page] = true;
                const auto below = m_file.below(page);
                open.insert(open.end(), below.rbegin(), below.rend());
            } else if (kind == PageFile::Kind::leaf) {
                const Rows rows = m_file.rows(page);
                const auto fit = std::count_if(rows.begin(), rows.end(), [&](const auto& row) { return row && m_shapes.looks_like(table, *row); });
                // A damaged number may have led into another table.
                if (fit == 0 && !rows.empty())
                    continue;
                take(table, page, rows, true, true);
            }
        }
    }

    void take(const QString& table, std::uint32_t page, const Rows& rows, bool in_tree, bool alone) {
        m_seen[page] = true;
        for (std::size_t place = 0; place < rows.size(); ++place) {
            if (!rows[place] || !m_shapes.looks_like(table, *rows[place]))
                continue;
            for (const std::uint32_t more : rows[place]->overflow)
                m_seen[more] = true;
            m_result.rows[table].push_back({rows[place]->id, {page, static_cast<std::uint16_t>(place)}, in_tree, alone});
        }
        if (++m_taken % 64 == 0 && m_go_on && !m_go_on(static_cast<int>(100 * m_taken / m_file.pages())))
            m_result.stopped = true;
    }

    void beside_the_trees() {
        const std::set<std::uint32_t> free = m_file.free_pages();
        for (std::uint32_t page = 1; page <= m_file.pages() && !m_result.stopped; ++page) {
            if (m_seen[page] || free.count(page))
                continue;
            if (m_file.kind(page) != PageFile::Kind::leaf) {
                m_other.push_back(page);
                continue;
            }
            const Rows rows = m_file.rows(page);
            QStringList could_be;
            for (const QString& table : m_tables)
                if (fits_all(table, rows))
                    could_be << table;
            for (const QString& table : could_be)
                take(table, page, rows, false, could_be.size() == 1);
            if (could_be.isEmpty() && !note_highest(rows) && !rows.empty())
                ++m_result.pages_lost;
        }
        // Pages of indexes hold nothing that is not in the tables; a page that long rows go on into was seen with them.
        for (const std::uint32_t page : m_other)
            if (!m_seen[page] && !m_file.is_index(page))
                ++m_result.pages_lost;
    }

    // A row of the store's count of numbers: a table and its highest.
    bool note_highest(const Rows& rows) {
        bool any = false;
        for (const auto& row : rows) {
            if (!row || row->cells.size() != 2 || row->cells[0].kind != 's' || row->cells[1].kind != 'i')
                continue;
            const QString table = QString::fromUtf8(row->cells[0].bytes);
            if (!m_tables.contains(table))
                continue;
            any = true;
            qint64& highest = m_result.highest[table];
            highest = std::max(highest, row->cells[1].number);
        }
        return any;
    }

    bool fits_all(const QString& table, const Rows& rows) {
        bool any = false;
        for (const auto& row : rows) {
            if (!row)
                continue;
            if (!m_shapes.fits(table, *row))
                return false;
            any = true;
        }
        return any;
    }

    PageFile& m_file;
    TableShapes& m_shapes;
    const std::function<bool(int)>& m_go_on;
    std::vector<bool> m_seen;
    std::vector<std::uint32_t> m_other;
    QStringList m_tables;
    PageScan m_result;
    qint64 m_taken = 0;
};

} // namespace

PageScan scan_pages(PageFile& file, TableShapes& shapes, const std::function<bool(int)>& go_on) { return PageScanner(file, shapes, go_on).scan(); }

} // namespace soakbook::book
