// SPDX-License-Identifier: GPL-3.0-or-later
// Random work, undo and redo on a workbook, with the records compared at each step with those of a model: the list of all
// states it went through. The tables it works on are read at each step through a connection of their own, all at each 50th.
#pragma once

#include "core/book/records/mite_count.h"
#include "core/book/records/person.h"
#include "core/book/schema.h"
#include "core/book/undo_stack.h"
#include "shelf.h"

#include <functional>
#include <random>
#include <sstream>
#include <stdexcept>

#include <sqlite3.h>

namespace soakbook::tests {

class Wanderer {
public:
    explicit Wanderer(Shelf& shelf, unsigned chance = 20260803) : m_shelf(shelf), m_raw(shelf.path()), m_random(chance) {
        if (sqlite3_open_v2(shelf.path().toUtf8().constData(), &m_look, SQLITE_OPEN_READONLY, nullptr) != SQLITE_OK)
            throw std::runtime_error("the file did not open");
        for (const char* table : {"person", "hive", "mite_count", "bag"}) {
            const std::string columns = m_raw.cell("SELECT group_concat('quote(' || name || ')', '||'',''||') FROM pragma_table_info('" + std::string(table) + "')");
            const std::string sql = "SELECT " + columns + " FROM " + table + " ORDER BY id";
            if (sqlite3_prepare_v2(m_look, sql.c_str(), -1, &m_tables.emplace_back(), nullptr) != SQLITE_OK)
                throw std::runtime_error(sqlite3_errmsg(m_look));
        }
        m_states.push_back(state());
        m_rest = rest();
    }
    ~Wanderer() {
        for (sqlite3_stmt* table : m_tables)
            sqlite3_finalize(table);
        sqlite3_close(m_look);
    }
    Wanderer(const Wanderer&) = delete;
    Wanderer& operator=(const Wanderer&) = delete;

    void step() {
        const int what = pick(10);
        book::UndoStack& undo = m_shelf.book().undo_stack();
        if (what < 3 && m_at > 0) {
            ASSERT_TRUE(undo.undo(on_day(11)).has_value());
            --m_at;
        } else if (what < 5 && m_at + 1 < m_states.size()) {
            ASSERT_TRUE(undo.redo(on_day(11)).has_value());
            ++m_at;
        } else {
            m_shelf.write("work", [&](book::Writing& w) {
                for (int i = 0; i <= pick(3); ++i)
                    work(w);
            });
            m_states.resize(m_at + 1);
            m_states.push_back(state());
            ++m_at;
        }
        ASSERT_EQ(state(), m_states.at(m_at)) << "step " << m_steps;
        if (++m_steps % 50 == 0) {
            ASSERT_EQ(rest(), m_rest) << "step " << m_steps;
        }
    }

private:
    /// A number for all that stands in the tables it works on.
    std::size_t state() const {
        std::string all;
        for (sqlite3_stmt* table : m_tables) {
            while (sqlite3_step(table) == SQLITE_ROW)
                all.append(reinterpret_cast<const char*>(sqlite3_column_text(table, 0))).push_back('\n');
            if (sqlite3_reset(table) != SQLITE_OK)
                throw std::runtime_error(sqlite3_errmsg(m_look));
        }
        return std::hash<std::string>{}(all);
    }
    /// What stands in the other tables, which stays as it is.
    std::string rest() {
        std::string all;
        std::string table;
        std::istringstream lines(records_of(m_raw));
        for (std::string line; std::getline(lines, line);) {
            if (line.find(": ") != std::string::npos && line.find(": ") < line.find('\''))
                table = line.substr(0, line.find(": "));
            if (table != "person" && table != "hive" && table != "mite_count" && table != "bag")
                all += line + '\n';
        }
        return all;
    }
    int pick(int below) { return std::uniform_int_distribution<int>(0, below - 1)(m_random); }

    void work(book::Writing& w) {
        const QString name = QStringLiteral("name %1").arg(++m_names);
        const book::Workbook& there = m_shelf.book();
        switch (pick(6)) {
        case 0:
            book::insert(w, book::Person{{}, name, pick(2) == 0});
            break;
        case 1: {
            book::Hive h = *book::fetch(there, m_shelf.hive);
            h.name = name;
            h.frames_of_bees = pick(12);
            book::insert(w, h);
            break;
        }
        case 2: {
            auto hives = book::fetch_all<book::Hive>(there);
            book::Hive& h = hives[static_cast<std::size_t>(pick(static_cast<int>(hives.size())))];
            h.note = name;
            book::update(w, h);
            break;
        }
        case 3: {
            const auto hives = book::fetch_all<book::Hive>(there);
            book::MiteCount count;
            count.hive = hives[static_cast<std::size_t>(pick(static_cast<int>(hives.size())))].id;
            count.on = first_day;
            count.kind = book::CountKind::drop;
            count.days = 1 + pick(7);
            count.mites = pick(50);
            book::insert(w, count);
            break;
        }
        case 4: {
            book::Bag b = *book::fetch(there, m_shelf.empty_label);
            b.code = m_shelf.give(w, 'S');
            b.note = name;
            book::insert(w, b);
            break;
        }
        default: {
            book::Bag b = *book::fetch(there, m_shelf.bag);
            b.stands = name;
            book::update(w, b);
        }
        }
    }

    Shelf& m_shelf;
    Raw m_raw;
    std::mt19937 m_random;
    sqlite3* m_look = nullptr;
    std::vector<sqlite3_stmt*> m_tables;
    std::vector<std::size_t> m_states;
    std::string m_rest;
    std::size_t m_at = 0;
    int m_steps = 0;
    int m_names = 0;
};

} // namespace soakbook::tests
