// SPDX-License-Identifier: GPL-3.0-or-later
// Every change of every record stands in the history: added, changed, removed, by whom, why, and what it said before.
#include "core/book/history.h"
#include "core/book/records/yard.h"
#include "core/book/schema.h"
#include "shelf.h"

namespace soakbook::tests {

using namespace book;

TEST(History, holds_every_record_that_was_added) {
    Shelf shelf;
    shelf.fill();
    Raw raw(shelf.path());
    for (const QString& table : record_tables()) {
        const std::string name = table.toStdString();
        EXPECT_NE(raw.cell("SELECT count(*) FROM " + name), "0") << name;
        EXPECT_EQ(raw.cell("SELECT count(*) FROM " + name),
                  raw.cell("SELECT count(*) FROM change WHERE tbl = '" + name +
                           "' AND what = 'added' AND before IS NULL AND after IS NOT NULL"))
            << name;
    }
    EXPECT_EQ(raw.cell("SELECT count(*) FROM change WHERE work = '' OR who <> 'Ada' OR piece IS NULL OR version = ''"),
              "0");
    EXPECT_EQ(raw.cell("SELECT count(*) FROM now_doing"), "0");
}

TEST(History, holds_every_change_and_removal_in_every_table) {
    Shelf shelf;
    shelf.fill();
    Raw raw(shelf.path());
    ASSERT_EQ(raw.run("PRAGMA foreign_keys=OFF"), ""); // so that each table can be tried on its own
    const std::map<std::string, std::string> changes{{"operation", "maker = 'x'"},
                                                     {"person", "name = 'Bo'"},
                                                     {"figure", "value = 1"},
                                                     {"strip_kind", "strips_per_bag = 60"},
                                                     {"material_lot", "supplier = 'x'"},
                                                     {"lot_change", "amount = -2"},
                                                     {"vessel", "name = name || '!'"},
                                                     {"batch", "note = 'x'"},
                                                     {"batch_input", "planned_mg = 1"},
                                                     {"reading", "note = 'x'"},
                                                     {"stir", "minutes = 3"},
                                                     {"soak", "note = 'x'"},
                                                     {"bag", "note = 'x'"},
                                                     {"bag_change", "reason = 'x'"},
                                                     {"pour", "note = 'x'"},
                                                     {"pail", "stands = 'x'"},
                                                     {"batch_loss", "note = 'x'"},
                                                     {"yard", "note = 'x'"},
                                                     {"yard_time", "what = 'x'"},
                                                     {"hive", "frames_of_bees = 7"},
                                                     {"hive_move", "void_reason = 'x'"},
                                                     {"round", "note = 'x'"},
                                                     {"round_yard", "visited_on = '2026-09-01'"},
                                                     {"placement", "placed_by = 'Bo'"},
                                                     {"weigh_in", "note = 'x'"},
                                                     {"weigh_single", "mass_mg = 34001"},
                                                     {"mite_count", "mites = 10"}};
    ASSERT_EQ(static_cast<qsizetype>(changes.size()), record_tables().size());
    const auto counted = [](const std::string& table) {
        return "SELECT count(*) FROM change WHERE tbl = '" + table + "' AND before IS NOT NULL AND ";
    };
    for (const auto& [table, change] : changes) {
        const std::string rows = raw.cell("SELECT count(*) FROM " + table);
        const std::string column = change.substr(0, change.find(" ="));
        EXPECT_EQ(raw.run("UPDATE " + table + " SET " + change), "") << table;
        EXPECT_EQ(raw.cell(counted(table) + "what = 'changed' AND after <> before"), rows) << table;
        EXPECT_EQ(raw.run("UPDATE " + table + " SET " + column + " = " + column), "") << table;
        EXPECT_EQ(raw.cell(counted(table) + "what = 'changed'"), rows) << table << ": a change of nothing is none";
    }
    for (const auto& [table, change] : changes) {
        const std::string rows = raw.cell("SELECT count(*) FROM " + table);
        EXPECT_EQ(raw.run("DELETE FROM " + table), "") << table;
        EXPECT_EQ(raw.cell(counted(table) + "what = 'removed' AND after IS NULL"), rows) << table;
    }
}

TEST(History, tells_what_a_record_said_before_who_changed_it_and_why) {
    Shelf shelf;
    shelf.fill();
    Yard yard = *fetch(shelf.book(), shelf.yard);
    yard.note = QStringLiteral("it's \"here\"\nname=1, über 'das' Tor");
    yard.name = QStringLiteral("under yard");
    shelf.write(
        "yard", [&](Writing& w) { update(w, yard); }, on_day(11, 9, QStringLiteral("renamed")));
    const auto changes = history_of(shelf.book(), QStringLiteral("yard"), shelf.yard.value);
    ASSERT_EQ(changes.size(), 2U);
    EXPECT_EQ(changes[0].what, ChangeWhat::added);
    const Change& change = changes[1];
    EXPECT_EQ(change.what, ChangeWhat::changed);
    EXPECT_EQ(change.who, QStringLiteral("Ada"));
    EXPECT_EQ(change.why, QStringLiteral("renamed"));
    EXPECT_EQ(change.at, moment(11, 9));
    EXPECT_EQ(change.work.key, QStringLiteral("yard"));
    ASSERT_EQ(change.columns.size(), 2U);
    EXPECT_EQ(change.columns[0].column, QStringLiteral("name"));
    EXPECT_EQ(change.columns[0].before, QStringLiteral("lower yard"));
    EXPECT_EQ(change.columns[0].after, QStringLiteral("under yard"));
    EXPECT_EQ(change.columns[1].after, yard.note);
    EXPECT_EQ(changes_with_reason(shelf.book(), 0, shelf.book().last_seq()).size(), 1U);
}

TEST(History, numbers_its_pieces_and_its_changes_without_gaps) {
    Shelf shelf;
    shelf.fill();
    Raw raw(shelf.path());
    EXPECT_EQ(raw.cell("SELECT max(seq) = count(*) AND min(seq) = 1 FROM change"), "1");
    EXPECT_EQ(raw.cell("SELECT count(DISTINCT piece) || ' ' || max(piece) FROM change"), "4 4");
    EXPECT_EQ(std::to_string(shelf.book().last_seq()), raw.cell("SELECT max(seq) FROM change"));
}

TEST(History, keeps_nothing_of_work_that_was_given_up) {
    Shelf shelf;
    shelf.fill();
    const qint64 before = shelf.book().last_seq();
    struct GivenUp {
        explicit operator bool() const { return false; }
    };
    shelf.book().write({QStringLiteral("yard"), 1, {}}, on_day(11), [&](Writing& w) {
        book::insert(w, Yard{{}, QStringLiteral("never"), {}, {}, true});
        return GivenUp{};
    });
    EXPECT_EQ(shelf.book().last_seq(), before);
    EXPECT_THROW(shelf.write("yard",
                             [](Writing& w) {
                                 book::insert(w, Yard{{}, QString(), {}, {}, true});
                             }),
                 LawBroken);
    EXPECT_EQ(shelf.book().last_seq(), before);
    EXPECT_EQ(Raw(shelf.path()).cell("SELECT count(*) FROM now_doing"), "0");
}

} // namespace soakbook::tests
