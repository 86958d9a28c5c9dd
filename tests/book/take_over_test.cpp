// SPDX-License-Identifier: GPL-3.0-or-later
// Two beekeepers wrote in two copies of one workbook. What stands only in the other is taken over, once, with a reason.
#include "core/book/other_copy.h"
#include "core/book/records/batch_loss.h"
#include "core/book/records/person.h"
#include "core/book/records/weigh_in.h"
#include "core/book/schema.h"
#include "core/book/shown.h"
#include "core/book/take_over.h"
#include "core/book/undo_stack.h"
#include "core/book/verify.h"
#include "shelf.h"

#include <QFile>

#include <random>

namespace soakbook::tests {

namespace {

using namespace book;
using maths::days_after;
using maths::kilograms;
using testing::ElementsAre;
using testing::IsEmpty;
using testing::SizeIs;

QString code_of(QChar letter, qint64 number) { return QString(letter) + QString::number(number) + QStringLiteral("A"); }

QString next_of(Writing& w, QChar letter) {
    const qint64 number = last_code_number(w.workbook(), letter) + 1;
    give_code(w, code_of(letter, number), letter, number);
    return code_of(letter, number);
}

template <class F> void piece_of_work(Workbook& book, const char* key, F&& f, int day = 20) {
    ASSERT_TRUE(book.write({QLatin1String(key), 1, {}}, on_day(day), [&](Writing& w) {
        f(w);
        return std::optional(1);
    }));
}

std::vector<std::string> split(const std::string& text, char at) {
    std::vector<std::string> parts;
    std::size_t from = 0;
    while (from < text.size()) {
        const std::size_t to = std::min(text.find(at, from), text.size());
        parts.push_back(text.substr(from, to - from));
        from = to + 1;
    }
    return parts;
}

// Every record by its uid, with the uid in place of every key it holds. Its code and its label may be new here.
std::map<std::string, std::string> by_uid(Raw& raw) {
    std::map<std::string, std::string> all;
    for (const QString& table : record_tables()) {
        const std::string name = table.toStdString();
        std::string line = "''";
        for (const std::string& column : split(raw.cell("SELECT group_concat(name) FROM pragma_table_info('" + name + "') WHERE name NOT IN ('id', 'uid', 'code', 'label')"), ',')) {
            const std::string to = raw.cell("SELECT \"table\" FROM pragma_foreign_key_list('" + name + "') WHERE \"from\" = '" + column + "' AND \"to\" = 'id'");
            line += " || ' " + column + ' ' + (to.empty() ? "' || quote(t." + column + ")" : "' || coalesce((SELECT hex(uid) FROM " + to + " WHERE id = t." + column + "), '-')");
        }
        for (const std::string& one : split(raw.cell("SELECT group_concat(hex(uid) || " + line + ", char(30)) FROM " + name + " t"), '\x1e'))
            all[name + ' ' + one.substr(0, 32)] = one.substr(32);
    }
    return all;
}

class Taking_over : public testing::Test {
protected:
    Taking_over() {
        shelf.fill();
        shelf.close();
        stick = shelf.folder() + QStringLiteral("/stick.soakbook");
        EXPECT_TRUE(QFile::copy(shelf.path(), stick));
        here = opened(shelf.path());
        there = opened(stick);
    }
    static std::unique_ptr<Workbook> opened(const QString& path) {
        auto book = Workbook::open(path);
        if (!book)
            throw std::runtime_error("the workbook did not open");
        return std::move(*book);
    }

    struct Side {
        std::unique_ptr<OtherCopy> copy;
        Comparison comparison;
        std::unique_ptr<TakeOver> work;
        std::set<qint64> all;
    };
    Side side_by_side() {
        there.reset();
        Side side;
        auto copy = OtherCopy::open(*here, stick);
        EXPECT_TRUE(copy);
        side.copy = std::move(*copy);
        side.comparison = compare(*here, *side.copy).value();
        side.work = std::make_unique<TakeOver>(*here, *side.copy, side.comparison);
        for (const LonePiece& piece : side.comparison.only_there)
            side.all.insert(piece.first_seq);
        return side;
    }
    tl::expected<TookOver, NotTakenOver> taken(Side& side, const std::set<qint64>& pieces, const std::set<std::pair<QString, QByteArray>>& theirs = {}) {
        return here->write({QStringLiteral("taken_over"), 1, QStringLiteral("stick")}, on_day(30, 12, QStringLiteral("both wrote")), [&](Writing& w) {
            return side.work->write(w, pieces, theirs, [&](QChar letter) { return next_of(w, letter); });
        });
    }
    tl::expected<TookOver, NotTakenOver> take_all(const std::set<std::pair<QString, QByteArray>>& theirs = {}) {
        Side side = side_by_side();
        return taken(side, side.all, theirs);
    }
    std::string cell_here(const std::string& sql) { return Raw(shelf.path()).cell(sql); }
    bool is_sound() {
        const QString copy = shelf.folder() + QStringLiteral("/checked.soakbook");
        QFile::remove(copy);
        Raw(shelf.path()).run("VACUUM INTO '" + copy.toStdString() + "'");
        return verify(copy).sound();
    }
    Bag filled(Writing& w) const {
        Bag b;
        b.batch = shelf.batch;
        b.soak = shelf.soak;
        b.strip_kind = shelf.kind;
        b.reserved_on = days_after(first_day, 3);
        b.code = next_of(w, QLatin1Char('S'));
        b.packed = 40;
        b.dry = maths::grams(11);
        b.sealed_on = days_after(first_day, 3);
        b.use_months = 12;
        b.use_by = maths::day(2027, 8, 6);
        b.label = LabelState::printed;
        return b;
    }
    Placement hung(Id<Bag> bag, int strips, int day) const {
        Placement p;
        p.hive = shelf.hive;
        p.yard = shelf.yard;
        p.bag = bag;
        p.strips = strips;
        p.placed_on = days_after(first_day, day);
        p.written = moment(day);
        return p;
    }

    Shelf shelf;
    QString stick;
    std::unique_ptr<Workbook> here;
    std::unique_ptr<Workbook> there;
};

} // namespace

TEST_F(Taking_over, strips_hung_in_the_other_copy_are_hung_here_too) {
    piece_of_work(*here, "strips_in", [&](Writing& w) { book::insert(w, hung(shelf.bag, 4, 12)); });
    piece_of_work(*there, "strips_in", [&](Writing& w) { book::insert(w, hung(shelf.bag, 6, 13)); });
    const auto result = take_all();
    ASSERT_TRUE(result);
    EXPECT_EQ(result->added, 1);
    EXPECT_EQ(cell_here("SELECT group_concat(strips) FROM (SELECT strips FROM placement ORDER BY id)"), "8,4,6");
    EXPECT_EQ(cell_here("SELECT group_concat(DISTINCT work || ':' || why) FROM change WHERE piece = (SELECT max(piece) FROM change)"), "taken_over:both wrote");
    EXPECT_TRUE(is_sound());
}

TEST_F(Taking_over, a_second_time_there_is_nothing_new) {
    piece_of_work(*there, "strips_in", [&](Writing& w) { book::insert(w, hung(shelf.bag, 6, 13)); });
    ASSERT_TRUE(take_all());
    Side side = side_by_side();
    EXPECT_THAT(side.work->with_something_new(), IsEmpty());
    const auto again = taken(side, side.all);
    ASSERT_TRUE(again);
    EXPECT_EQ(again->added + again->changed + again->left, 0);
}

TEST_F(Taking_over, what_was_taken_over_can_be_taken_back) {
    piece_of_work(*there, "bags_filled", [&](Writing& w) {
        const auto bag = book::insert(w, filled(w));
        book::insert(w, hung(bag, 6, 13));
    });
    piece_of_work(*there, "bag_opened", [&](Writing& w) {
        auto bag = *fetch(w.workbook(), shelf.bag);
        bag.note = QStringLiteral("torn corner");
        book::update(w, bag);
    });
    const std::string before = records_of(shelf.path());
    ASSERT_TRUE(take_all());
    EXPECT_NE(records_of(shelf.path()), before);
    ASSERT_TRUE(here->undo_stack().undo(on_day(31)));
    EXPECT_EQ(records_of(shelf.path()), before);
    EXPECT_TRUE(is_sound());
}

TEST_F(Taking_over, a_code_given_out_in_both_copies_is_new_for_the_bag_taken_over_and_its_label_is_stale) {
    piece_of_work(*here, "bags_filled", [&](Writing& w) { book::insert(w, filled(w)); });
    piece_of_work(*there, "bags_filled", [&](Writing& w) {
        book::insert(w, filled(w));
        Bag later = filled(w);
        later.note = QStringLiteral("the second");
        book::insert(w, later);
    });
    const auto result = take_all();
    ASSERT_TRUE(result);
    ASSERT_THAT(result->new_codes, SizeIs(1));
    EXPECT_EQ(result->new_codes.front().given_twice, QStringLiteral("S3A"));
    EXPECT_EQ(result->new_codes.front().now, QStringLiteral("S5A"));
    EXPECT_EQ(cell_here("SELECT group_concat(code || ' ' || label) FROM (SELECT * FROM bag WHERE packed = 40 ORDER BY id)"), "S3A printed,S5A stale,S4A printed");
    EXPECT_TRUE(is_sound());
    Side side = side_by_side();
    EXPECT_THAT(side.work->with_something_new(), IsEmpty());
}

TEST_F(Taking_over, a_record_changed_there_alone_says_here_what_it_says_there) {
    piece_of_work(*there, "corrected", [&](Writing& w) {
        auto yard = *fetch(w.workbook(), shelf.yard);
        yard.note = QStringLiteral("gate on the left");
        book::update(w, yard);
    });
    const auto result = take_all();
    ASSERT_TRUE(result);
    EXPECT_EQ(result->changed, 1);
    EXPECT_EQ(cell_here("SELECT note FROM yard WHERE name = 'lower yard'"), "gate on the left");
}

TEST_F(Taking_over, a_record_changed_in_both_stays_as_it_is_here_unless_theirs_is_chosen) {
    const auto say = [&](Workbook& book, const char* note) {
        piece_of_work(book, "corrected", [&](Writing& w) {
            auto yard = *fetch(w.workbook(), shelf.yard);
            yard.note = QLatin1String(note);
            book::update(w, yard);
        });
    };
    say(*here, "gate on the right");
    say(*there, "gate on the left");
    {
        Side side = side_by_side();
        const auto met = side.work->meet(side.all);
        ASSERT_TRUE(met);
        ASSERT_THAT(*met, SizeIs(1));
        EXPECT_EQ(met->front().meets, Meets::differs);
        ASSERT_THAT(met->front().columns, SizeIs(1));
        EXPECT_EQ(met->front().columns.front().column, QStringLiteral("note"));
        EXPECT_EQ(met->front().columns.front().here, QStringLiteral("gate on the right"));
        EXPECT_EQ(met->front().columns.front().there, QStringLiteral("gate on the left"));
        const auto left = taken(side, side.all);
        ASSERT_TRUE(left);
        EXPECT_EQ(left->left, 1);
        EXPECT_EQ(cell_here("SELECT note FROM yard WHERE name = 'lower yard'"), "gate on the right");
    }
    Side side = side_by_side();
    const auto met = side.work->meet(side.all);
    ASSERT_TRUE(taken(side, side.all, {{QStringLiteral("yard"), met->front().uid}}));
    EXPECT_EQ(cell_here("SELECT note FROM yard WHERE name = 'lower yard'"), "gate on the left");
    EXPECT_TRUE(is_sound());
}

TEST_F(Taking_over, what_was_taken_back_there_stays_here) {
    piece_of_work(*there, "strips_in", [&](Writing& w) { book::insert(w, hung(shelf.bag, 6, 13)); });
    ASSERT_TRUE(there->undo_stack().undo(on_day(21)));
    const std::string before = records_of(shelf.path());
    const auto result = take_all();
    ASSERT_TRUE(result);
    EXPECT_EQ(result->added + result->changed, 0);
    EXPECT_EQ(records_of(shelf.path()), before);
}

TEST_F(Taking_over, a_name_entered_in_both_is_one_person) {
    const auto enter = [](Workbook& book) {
        piece_of_work(book, "person", [](Writing& w) { book::insert(w, Person{{}, QStringLiteral("Bea"), true}); });
    };
    enter(*here);
    enter(*there);
    piece_of_work(*there, "hives", [&](Writing& w) {
        const auto yard = book::insert(w, Yard{{}, QStringLiteral("brook"), {}, {}, true});
        Hive hive;
        hive.yard = yard;
        hive.name = QStringLiteral("7");
        book::insert(w, hive);
    });
    piece_of_work(*here, "yard", [&](Writing& w) { book::insert(w, Yard{{}, QStringLiteral("Brook"), {}, {}, true}); });
    const auto result = take_all();
    ASSERT_TRUE(result);
    EXPECT_EQ(cell_here("SELECT count(*) FROM person WHERE name = 'Bea'"), "1");
    EXPECT_EQ(cell_here("SELECT yard.name FROM hive JOIN yard ON yard.id = yard_id WHERE hive.name = '7'"), "Brook");
    EXPECT_EQ(result->left, 1);
    EXPECT_TRUE(is_sound());
}

TEST_F(Taking_over, a_piece_that_stands_on_one_left_out_is_refused_by_name) {
    piece_of_work(*there, "yard", [&](Writing& w) { book::insert(w, Yard{{}, QStringLiteral("brook"), {}, {}, true}); });
    piece_of_work(*there, "hives", [&](Writing& w) {
        Hive hive;
        hive.yard = {3};
        hive.name = QStringLiteral("7");
        book::insert(w, hive);
    });
    Side side = side_by_side();
    const std::string before = records_of(shelf.path());
    const auto refused = taken(side, {*side.all.rbegin()});
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().why, NotTakenOver::Why::stands_on_left_out);
    EXPECT_EQ(refused.error().other_piece, *side.all.begin());
    EXPECT_EQ(refused.error().what, QStringLiteral("brook"));
    EXPECT_EQ(records_of(shelf.path()), before);
    ASSERT_TRUE(taken(side, {*side.all.begin()}));
    ASSERT_TRUE(taken(side, {*side.all.rbegin()}));
    EXPECT_TRUE(is_sound());
}

TEST_F(Taking_over, strips_that_the_bag_has_no_more_are_refused_and_nothing_is_written) {
    piece_of_work(*here, "strips_in", [&](Writing& w) { book::insert(w, hung(shelf.bag, 40, 12)); });
    piece_of_work(*there, "person", [&](Writing& w) { book::insert(w, Person{{}, QStringLiteral("Bea"), true}); });
    piece_of_work(*there, "strips_in", [&](Writing& w) { book::insert(w, hung(shelf.bag, 40, 13)); });
    const std::string before = records_of(shelf.path());
    const qint64 seq = here->last_seq();
    const auto refused = take_all();
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().why, NotTakenOver::Why::does_not_fit);
    EXPECT_EQ(refused.error().table, QStringLiteral("placement"));
    EXPECT_EQ(records_of(shelf.path()), before);
    EXPECT_EQ(here->last_seq(), seq);
    EXPECT_TRUE(is_sound());
}

TEST_F(Taking_over, a_batch_whose_losses_were_left_out_does_not_close) {
    piece_of_work(*there, "loss", [&](Writing& w) { book::insert(w, BatchLoss{{}, shelf.batch, LossKind::spill, kilograms(2), {}, {}}); });
    piece_of_work(*there, "batch_closed", [&](Writing& w) {
        auto batch = *fetch(w.workbook(), shelf.batch);
        batch.closed = moment(14);
        batch.taken = kilograms(30);
        batch.unexplained = kilograms(62.5 - 30 - 20 - 3);
        book::update(w, batch);
    });
    Side side = side_by_side();
    const auto refused = taken(side, {*side.all.rbegin()});
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().why, NotTakenOver::Why::does_not_fit);
    ASSERT_TRUE(taken(side, side.all));
    EXPECT_TRUE(is_sound());
}

TEST_F(Taking_over, a_loss_for_a_batch_that_was_closed_here_is_reported_for_a_new_reckoning) {
    piece_of_work(*here, "batch_closed", [&](Writing& w) {
        auto batch = *fetch(w.workbook(), shelf.batch);
        batch.closed = moment(14);
        batch.taken = kilograms(30);
        batch.unexplained = kilograms(62.5 - 30 - 20 - 1);
        book::update(w, batch);
    });
    piece_of_work(*there, "loss", [&](Writing& w) { book::insert(w, BatchLoss{{}, shelf.batch, LossKind::spill, kilograms(2), {}, {}}); });
    const auto result = take_all();
    ASSERT_TRUE(result);
    EXPECT_THAT(result->unbalanced, ElementsAre(shelf.batch.value));
}

TEST_F(Taking_over, what_was_shown_there_is_shown_here) {
    piece_of_work(*there, "strips_in", [&](Writing& w) { book::insert(w, hung(shelf.bag, 6, 13)); });
    piece_of_work(*here, "strips_in", [&](Writing& w) { book::insert(w, hung(shelf.bag, 4, 12)); });
    piece_of_work(*there, "printed", [&](Writing& w) { note_shown(w, QStringLiteral("placement"), {2}, QStringLiteral("register")); });
    ASSERT_TRUE(take_all());
    EXPECT_EQ(cell_here("SELECT group_concat(p.strips || ' ' || s.paper) FROM shown s JOIN placement p ON p.id = s.row_id WHERE s.tbl = 'placement'"), "6 register");
    EXPECT_TRUE(is_sound());
}

TEST_F(Taking_over, changes_of_another_program_can_be_taken_over_too) {
    there.reset();
    ASSERT_EQ(Raw(stick).run("UPDATE yard SET note = 'by hand' WHERE name = 'lower yard'"), "");
    const auto result = take_all();
    ASSERT_TRUE(result);
    EXPECT_EQ(cell_here("SELECT note FROM yard WHERE name = 'lower yard'"), "by hand");
    EXPECT_TRUE(is_sound());
}

// Random seasons: both copies hire people, fill bags, hang strips, note things, take work back. Afterwards each record of
// the other copy stands here, unless it was changed in both.
TEST_F(Taking_over, seasons_written_apart_come_together_whole) {
    for (unsigned seed = 1; seed <= 12; ++seed) {
        Shelf season;
        season.fill();
        season.close();
        const QString other = season.folder() + QStringLiteral("/stick.soakbook");
        ASSERT_TRUE(QFile::copy(season.path(), other));
        std::mt19937 dice(seed);
        const auto roll = [&dice](int sides) { return static_cast<int>(dice() % static_cast<unsigned>(sides)); };
        const auto live = [&](Workbook& book, const QString& name) {
            std::vector<Id<Bag>> bags{season.bag};
            std::vector<Id<Hive>> hives{season.hive};
            for (int step = 0; step < 25; ++step) {
                const int day = 12 + step;
                switch (roll(7)) {
                case 0:
                    piece_of_work(book, "person", [&](Writing& w) { book::insert(w, Person{{}, name + QString::number(step), true}); }, day);
                    break;
                case 1:
                    piece_of_work(book, "bags_filled", [&](Writing& w) { bags.push_back(book::insert(w, filled(w))); }, day);
                    break;
                case 2:
                    piece_of_work(book, "hives", [&](Writing& w) {
                        Hive hive;
                        hive.yard = season.yard;
                        hive.name = QString::number(roll(4));
                        if (fetch_where<Hive>(w.workbook(), "WHERE name = ?", hive.name).empty())
                            hives.push_back(book::insert(w, hive));
                    }, day);
                    break;
                case 3:
                    piece_of_work(book, "strips_in", [&](Writing& w) {
                        Placement p = hung(bags[static_cast<std::size_t>(roll(static_cast<int>(bags.size())))], 1, day);
                        p.hive = hives[static_cast<std::size_t>(roll(static_cast<int>(hives.size())))];
                        book::insert(w, p);
                    }, day);
                    break;
                case 4:
                    piece_of_work(book, "corrected", [&](Writing& w) {
                        auto bag = *fetch(w.workbook(), bags[static_cast<std::size_t>(roll(static_cast<int>(bags.size())))]);
                        bag.note = name + QString::number(step);
                        book::update(w, bag);
                    }, day);
                    break;
                case 5:
                    piece_of_work(book, "weighing", [&](Writing& w) {
                        WeighIn weighing;
                        weighing.soak = season.soak;
                        weighing.at = moment(day, 10);
                        weighing.written = weighing.at;
                        weighing.strips = 1 + roll(5);
                        weighing.total = maths::grams(30 + roll(9));
                        book::insert(w, weighing);
                    }, day);
                    break;
                default:
                    if (book.undo_stack().next_undo() && book.undo_stack().next_undo()->key == QStringLiteral("corrected")) {
                        ASSERT_TRUE(book.undo_stack().undo(on_day(day)));
                    }
                }
            }
        };
        live(*opened(season.path()), QStringLiteral("Here"));
        live(*opened(other), QStringLiteral("There"));
        const auto mine = opened(season.path());
        const auto copy = OtherCopy::open(*mine, other);
        ASSERT_TRUE(copy);
        const Comparison comparison = compare(*mine, **copy).value();
        TakeOver work(*mine, **copy, comparison);
        std::set<qint64> all;
        for (const LonePiece& piece : comparison.only_there)
            all.insert(piece.first_seq);
        const auto met = work.meet(all);
        ASSERT_TRUE(met);
        Raw raw_there(other);
        const auto was_there = by_uid(raw_there);
        Raw raw_here(season.path());
        const auto was_here = by_uid(raw_here);
        const auto result = mine->write({QStringLiteral("taken_over"), 1, {}}, on_day(60, 12, QStringLiteral("both wrote")), [&](Writing& w) {
            return work.write(w, all, {}, [&](QChar letter) { return next_of(w, letter); });
        });
        ASSERT_TRUE(result) << seed << ' ' << result.error().what.toStdString();
        const auto now = by_uid(raw_here);
        std::map<std::string, Meets> how;
        for (const MetRecord& record : *met)
            how[record.there.table.toStdString() + ' ' + record.uid.toHex().toUpper().toStdString()] = record.meets;
        int compared = 0;
        for (const auto& [key, line] : was_there) {
            const auto meets = how.find(key);
            if (meets == how.end() || meets->second == Meets::same_name)
                continue;
            // A hive of the same number that says the same was entered in both: it is one hive.
            if (meets->second == Meets::here_already && !now.count(key) && key.rfind("hive", 0) == 0)
                continue;
            ASSERT_TRUE(now.count(key)) << seed << ' ' << key;
            if (meets->second == Meets::differs) {
                EXPECT_EQ(now.at(key), was_here.at(key)) << seed << ' ' << key;
            } else if (key.rfind("placement", 0) != 0) {
                // A hive of the same number may have been entered in both: strips hang in the one that stands here.
                EXPECT_EQ(now.at(key), line) << seed << ' ' << key;
            }
            ++compared;
        }
        EXPECT_GT(compared, 5);
        for (const auto& [key, line] : was_here)
            if (!how.count(key)) {
                EXPECT_EQ(now.at(key), line) << seed << ' ' << key;
            }
        EXPECT_EQ(raw_here.cell("SELECT count(*) FROM (SELECT code FROM bag GROUP BY code HAVING count(*) > 1)"), "0");
        const QString checked = season.folder() + QStringLiteral("/checked.soakbook");
        ASSERT_EQ(raw_here.run("VACUUM INTO '" + checked.toStdString() + "'"), "");
        EXPECT_TRUE(verify(checked).sound()) << seed;
        ASSERT_TRUE(mine->undo_stack().undo(on_day(61)));
        EXPECT_EQ(by_uid(raw_here), was_here) << seed;
    }
}

} // namespace soakbook::tests
