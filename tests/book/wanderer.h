// SPDX-License-Identifier: GPL-3.0-or-later
// Random work, undo and redo on a workbook, with the records compared at each step with those of a model: the list of all
// states it went through.
#pragma once

#include "core/book/records/mite_count.h"
#include "core/book/records/person.h"
#include "core/book/schema.h"
#include "core/book/undo_stack.h"
#include "shelf.h"

#include <random>

namespace soakbook::tests {

class Wanderer {
public:
    explicit Wanderer(Shelf& shelf, unsigned chance = 20260803) : m_shelf(shelf), m_raw(shelf.path()), m_random(chance) { m_states.push_back(records_of(m_raw)); }

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
            m_states.push_back(records_of(m_raw));
            ++m_at;
        }
        ASSERT_EQ(records_of(m_raw), m_states.at(m_at));
    }

private:
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
    std::vector<std::string> m_states;
    std::size_t m_at = 0;
    int m_names = 0;
};

} // namespace soakbook::tests
