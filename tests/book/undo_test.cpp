// SPDX-License-Identifier: GPL-3.0-or-later
// Undo and redo: the records are exactly as before, the history is longer, codes are not given back, what was shown is
// made void.
#include "core/book/history.h"
#include "core/book/records/bag_change.h"
#include "core/book/records/mite_count.h"
#include "core/book/records/person.h"
#include "core/book/shown.h"
#include "core/book/undo_stack.h"
#include "shelf.h"
#include "wanderer.h"

namespace soakbook::tests {

using namespace book;

TEST(Undo, takes_the_last_piece_back_and_redo_does_it_again) {
    Shelf shelf;
    shelf.fill();
    const std::string before = records_of(shelf.path());
    shelf.write("person", [](Writing& w) { insert(w, Person{{}, QStringLiteral("Bo"), true}); });
    const std::string after = records_of(shelf.path());
    UndoStack& undo = shelf.book().undo_stack();
    ASSERT_TRUE(undo.next_undo());
    EXPECT_EQ(undo.next_undo()->key, QStringLiteral("person"));
    EXPECT_TRUE(undo.undo(on_day(11)).has_value());
    EXPECT_EQ(records_of(shelf.path()), before);
    EXPECT_EQ(undo.next_redo()->key, QStringLiteral("person"));
    EXPECT_TRUE(undo.redo(on_day(11)).has_value());
    EXPECT_EQ(records_of(shelf.path()), after);
    EXPECT_FALSE(undo.next_redo());
}

TEST(Undo, goes_back_to_an_empty_book_and_forth_again) {
    Shelf shelf;
    const std::string empty = records_of(shelf.path());
    shelf.fill();
    const std::string full = records_of(shelf.path());
    UndoStack& undo = shelf.book().undo_stack();
    int steps = 0;
    while (undo.next_undo() && steps < 20) {
        ASSERT_TRUE(undo.undo(on_day(11)).has_value());
        ++steps;
    }
    EXPECT_EQ(steps, 4);
    EXPECT_EQ(records_of(shelf.path()), empty);
    EXPECT_EQ(undo.undo(on_day(11)).error(), NotUndone::nothing);
    while (undo.next_redo())
        ASSERT_TRUE(undo.redo(on_day(11)).has_value());
    EXPECT_EQ(records_of(shelf.path()), full);
}

TEST(Undo, stands_in_the_history_under_its_own_name) {
    Shelf shelf;
    shelf.fill();
    const qint64 before = shelf.book().last_seq();
    shelf.write("person", [](Writing& w) { insert(w, Person{{}, QStringLiteral("Bo"), true}); });
    ASSERT_TRUE(shelf.book().undo_stack().undo(on_day(11)).has_value());
    ASSERT_TRUE(shelf.book().undo_stack().redo(on_day(11)).has_value());
    EXPECT_EQ(shelf.book().last_seq(), before + 3);
    const auto newest = newest_changes(shelf.book(), 3);
    EXPECT_EQ(newest[0].work.key, QStringLiteral("redo:person"));
    EXPECT_EQ(newest[1].work.key, QStringLiteral("undo:person"));
    EXPECT_EQ(newest[1].what, ChangeWhat::removed);
    EXPECT_EQ(newest[2].work.key, QStringLiteral("person"));
}

TEST(Undo, new_work_ends_what_could_be_redone) {
    Shelf shelf;
    shelf.fill();
    ASSERT_TRUE(shelf.book().undo_stack().undo(on_day(11)).has_value());
    shelf.write("person", [](Writing& w) { insert(w, Person{{}, QStringLiteral("Bo"), true}); });
    EXPECT_FALSE(shelf.book().undo_stack().next_redo());
    EXPECT_EQ(shelf.book().undo_stack().redo(on_day(11)).error(), NotUndone::nothing);
}

TEST(Undo, gives_no_code_back) {
    Shelf shelf;
    shelf.fill();
    ASSERT_TRUE(shelf.book().undo_stack().undo(on_day(11)).has_value()); // strips in
    ASSERT_TRUE(shelf.book().undo_stack().undo(on_day(11)).has_value()); // bags and pails
    EXPECT_EQ(Raw(shelf.path()).cell("SELECT count(*) FROM bag"), "0");
    EXPECT_EQ(last_code_number(shelf.book(), QLatin1Char('S')), 2);
    EXPECT_EQ(code_given(shelf.book(), QStringLiteral("S2A")), moment(10));
    EXPECT_FALSE(code_given(shelf.book(), QStringLiteral("S3A")));
}

TEST(Undo, makes_void_what_was_shown_and_takes_the_rest_away) {
    Shelf shelf;
    shelf.fill();
    Id<Bag> shown;
    Id<Bag> unseen;
    shelf.write("labels_reserved", [&](Writing& w) {
        Bag b = *fetch(shelf.book(), shelf.empty_label);
        b.code = shelf.give(w, 'S');
        shown = insert(w, b);
        b.code = shelf.give(w, 'S');
        unseen = insert(w, b);
    });
    shelf.write("printed",
                [&](Writing& w) { note_shown(w, QStringLiteral("bag"), {shown.value}, QStringLiteral("bag label")); });
    EXPECT_TRUE(was_shown(shelf.book(), QStringLiteral("bag"), shown.value));
    EXPECT_FALSE(was_shown(shelf.book(), QStringLiteral("bag"), unseen.value));
    // A print changes no record: the piece to take back is still the reserving of labels.
    EXPECT_EQ(shelf.book().undo_stack().next_undo()->key, QStringLiteral("labels_reserved"));
    ASSERT_TRUE(shelf.book().undo_stack().undo(on_day(11)).has_value());
    EXPECT_EQ(fetch(shelf.book(), shown)->void_reason, QStringLiteral("undone"));
    EXPECT_FALSE(fetch(shelf.book(), unseen));
    ASSERT_TRUE(shelf.book().undo_stack().redo(on_day(11)).has_value());
    EXPECT_FALSE(fetch(shelf.book(), shown)->void_reason);
    EXPECT_TRUE(fetch(shelf.book(), unseen));
}

TEST(Undo, of_what_cannot_be_taken_back_leaves_it_off_the_stack) {
    Shelf shelf;
    shelf.fill();
    const auto before = shelf.book().undo_stack().next_undo();
    shelf.write("printed", [&](Writing& w) {
        w.keep_from_undo();
        Bag b = *fetch(shelf.book(), shelf.bag);
        b.label = LabelState::printed;
        update(w, b);
    });
    EXPECT_EQ(shelf.book().undo_stack().next_undo(), before);
}

TEST(Undo, is_refused_after_another_program_changed_the_file) {
    Shelf shelf;
    shelf.fill();
    ASSERT_EQ(Raw(shelf.path()).run("UPDATE yard SET note = 'x'"), "");
    EXPECT_EQ(shelf.book().undo_stack().undo(on_day(11)).error(), NotUndone::changed_outside);
    EXPECT_FALSE(shelf.book().undo_stack().next_undo());
}

TEST(Undo, that_a_law_forbids_is_refused_and_changes_nothing) {
    Shelf shelf;
    shelf.fill();
    shelf.write("bag_recounted", [&](Writing& w) {
        insert(
            w,
            BagChange{
                {}, shelf.bag, ChangeKind::recount, 5, maths::days_after(first_day, 9), QStringLiteral("found"), {}});
    });
    // Work that leaves no step of its own, and now stands on the strips that were found.
    shelf.write("strips_in", [&](Writing& w) {
        w.keep_from_undo();
        Placement p = *fetch(shelf.book(), shelf.placement);
        p.strips = 75;
        insert(w, p);
    });
    const std::string before = records_of(shelf.path());
    EXPECT_EQ(shelf.book().undo_stack().undo(on_day(11)).error(), NotUndone::blocked);
    EXPECT_EQ(records_of(shelf.path()), before);
    EXPECT_EQ(shelf.book().undo_stack().next_undo()->key, QStringLiteral("bag_recounted"));
}

TEST(Undo, of_a_change_whose_record_changed_since_is_refused) {
    Shelf shelf;
    shelf.fill();
    const auto rename = [&](const QString& name, bool undoable) {
        shelf.write("yard", [&](Writing& w) {
            if (!undoable)
                w.keep_from_undo();
            Yard y = *fetch(shelf.book(), shelf.yard);
            y.name = name;
            update(w, y);
        });
    };
    rename(QStringLiteral("a"), true);
    rename(QStringLiteral("b"), false);
    EXPECT_EQ(shelf.book().undo_stack().undo(on_day(11)).error(), NotUndone::blocked);
    EXPECT_EQ(fetch(shelf.book(), shelf.yard)->name, QStringLiteral("b"));
}

TEST(Undo, of_random_work_leaves_the_records_as_the_model_has_them_at_each_of_a_thousand_steps) {
    Shelf shelf;
    shelf.fill();
    shelf.book().undo_stack().forget();
    Wanderer wanderer(shelf);
    for (int i = 0; i < 1000 && !::testing::Test::HasFatalFailure(); ++i)
        wanderer.step();
    Raw raw(shelf.path());
    EXPECT_EQ(raw.cell("PRAGMA integrity_check"), "ok");
    EXPECT_EQ(raw.cell("SELECT count(*) FROM pragma_foreign_key_check"), "0");
    EXPECT_EQ(raw.cell("SELECT max(seq) = count(*) FROM change"), "1");
}

TEST(Telling, whoever_listens_is_told_once_for_each_commit_with_the_tables_it_touched) {
    Shelf shelf;
    shelf.fill();
    std::vector<Changed> told;
    auto stop = shelf.book().subscribe([&](const Changed& changed) { told.push_back(changed); });
    shelf.write("person", [](Writing& w) {
        insert(w, Person{{}, QStringLiteral("Bo"), true});
        insert(w, Person{{}, QStringLiteral("Cleo"), true});
    });
    ASSERT_EQ(told.size(), 1U);
    EXPECT_EQ(told[0].tables, std::set<QString>{QStringLiteral("person")});
    EXPECT_EQ(told[0].last_seq, shelf.book().last_seq());
    ASSERT_TRUE(shelf.book().undo_stack().undo(on_day(11)).has_value());
    EXPECT_EQ(told.size(), 2U);
    stop();
    ASSERT_TRUE(shelf.book().undo_stack().redo(on_day(11)).has_value());
    EXPECT_EQ(told.size(), 2U);
}

} // namespace soakbook::tests
