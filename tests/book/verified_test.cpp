// SPDX-License-Identifier: GPL-3.0-or-later
// What was verified before is not verified again; what came since is; and an older copy in its place is noticed.
#include "core/book/verified.h"
#include "shelf.h"

#include <QDir>
#include <QFile>

namespace soakbook::tests {

using namespace book;

namespace {

struct VerifiedBefore : ::testing::Test {
    Shelf shelf;
    QTemporaryDir folder;
    book::VerifiedBefore memory{folder.filePath(QStringLiteral("verified"))};
    const QString place = QStringLiteral("/srv/ida/treatments.soakbook");

    void SetUp() override { shelf.fill(); }
    VerifiedUntil now() { return {shelf.book().uid(), newest_seal_of(shelf.book())}; }
    void add_yard(const char* name) {
        shelf.write("yard", [&](Writing& w) { insert(w, Yard{{}, QString::fromUtf8(name), {}, {}, true}); });
    }
    /// Changes cells past the triggers, which stand there again afterwards as if nothing had been.
    static void spoil(const QString& path, const std::string& sql) {
        Raw raw(path);
        ASSERT_EQ(raw.run("BEGIN"), "");
        ASSERT_EQ(raw.run("CREATE TEMP TABLE kept AS SELECT name, sql FROM sqlite_schema WHERE type = 'trigger'"), "");
        const int triggers = std::stoi(raw.cell("SELECT count(*) FROM kept"));
        std::vector<std::string> texts;
        for (int i = 0; i < triggers; ++i) {
            const std::string one = " FROM kept ORDER BY name LIMIT 1 OFFSET " + std::to_string(i);
            texts.push_back(raw.cell("SELECT sql" + one));
            ASSERT_EQ(raw.run("DROP TRIGGER " + raw.cell("SELECT name" + one)), "");
        }
        ASSERT_EQ(raw.run(sql), "");
        for (const std::string& text : texts)
            ASSERT_EQ(raw.run(text), "");
        ASSERT_EQ(raw.run("COMMIT"), "");
    }
    static qint64 bad(const Verdict& verdict, Check check) {
        for (const CheckResult& r : verdict.checks)
            if (r.check == check)
                return r.bad;
        return -1;
    }
};

} // namespace

TEST_F(VerifiedBefore, is_remembered_for_each_place_and_comes_back_as_it_was) {
    const VerifiedUntil until = now();
    EXPECT_FALSE(memory.at(until.uid, place));
    ASSERT_TRUE(memory.note_verified(until, place, moment(3)));
    ASSERT_TRUE(memory.note_seen(until.uid, {until.seal.last_seq + 2, QByteArray(32, 'x')}, QStringLiteral("/media/stick/treatments.soakbook"), moment(4)));
    const auto there = memory.at(until.uid, place);
    ASSERT_TRUE(there && there->verified);
    EXPECT_EQ(there->verified->seal, until.seal);
    EXPECT_EQ(there->verified->at.utc_ms, moment(3).utc_ms);
    EXPECT_EQ(there->verified->at.offset_minutes, moment(3).offset_minutes);
    EXPECT_EQ(there->seen.seal, until.seal);
    const auto all = memory.of(until.uid);
    ASSERT_EQ(all.size(), 2U);
    EXPECT_EQ(all[0].place, QStringLiteral("/media/stick/treatments.soakbook"));
    EXPECT_FALSE(all[0].verified);
    ASSERT_TRUE(memory.forget_verified(until.uid, place));
    EXPECT_FALSE(memory.at(until.uid, place)->verified);
    EXPECT_TRUE(memory.of(QByteArray(16, 'o')).empty());
    EXPECT_EQ(memory.uid_at(place), until.uid);
    EXPECT_TRUE(memory.uid_at(QStringLiteral("/srv/ida/other.soakbook")).isEmpty());
}

TEST_F(VerifiedBefore, a_later_verdict_does_not_take_back_what_was_seen_since) {
    const VerifiedUntil until = now();
    const Seal later{until.seal.last_seq + 5, QByteArray(32, 'l')};
    ASSERT_TRUE(memory.note_seen(until.uid, later, place, moment(5)));
    ASSERT_TRUE(memory.note_verified(until, place, moment(6)));
    EXPECT_EQ(memory.at(until.uid, place)->seen.seal, later);
    EXPECT_EQ(memory.at(until.uid, place)->verified->seal, until.seal);
}

TEST_F(VerifiedBefore, a_damaged_memory_counts_as_none) {
    const VerifiedUntil until = now();
    ASSERT_TRUE(memory.note_verified(until, place, moment(3)));
    const QString path = QDir(folder.filePath(QStringLiteral("verified"))).filePath(QString::fromLatin1(until.uid.toHex()) + QStringLiteral(".json"));
    QByteArray text;
    {
        QFile in(path);
        ASSERT_TRUE(in.open(QIODevice::ReadOnly));
        text = in.readAll();
    }
    const auto put = [&](const QByteArray& bytes) {
        QFile out(path);
        ASSERT_TRUE(out.open(QIODevice::WriteOnly));
        ASSERT_EQ(out.write(bytes), bytes.size());
    };
    for (qsizetype size = 0; size + 3 < text.size(); size += 7) {
        put(text.left(size));
        EXPECT_FALSE(memory.at(until.uid, place)) << size;
    }
    put(QByteArray(text).replace("\"hash\": \"", "\"hash\": \"q"));
    EXPECT_FALSE(memory.at(until.uid, place));
    put(text);
    EXPECT_TRUE(memory.at(until.uid, place));
}

TEST_F(VerifiedBefore, a_memory_that_cannot_be_written_says_so_and_harms_nothing) {
    QFile in_the_way(folder.filePath(QStringLiteral("verified")));
    ASSERT_TRUE(in_the_way.open(QIODevice::WriteOnly));
    EXPECT_FALSE(memory.note_verified(now(), place, moment(3)));
    EXPECT_TRUE(memory.of(now().uid).empty());
}

TEST_F(VerifiedBefore, only_what_came_since_is_looked_at) {
    const VerifiedUntil before = now();
    const auto nothing_new = verify_since(shelf.book(), before);
    ASSERT_TRUE(nothing_new);
    EXPECT_TRUE(nothing_new->sound());
    EXPECT_EQ(nothing_new->until.seal, before.seal);
    add_yard("third");
    add_yard("fourth");
    shelf.write("bags_filled", [&](Writing& w) { shelf.give(w, 'S'); });
    const auto since = verify_since(shelf.book(), before);
    ASSERT_TRUE(since);
    EXPECT_TRUE(since->sound());
    EXPECT_EQ(since->until.seal, newest_seal_of(shelf.book()));
    EXPECT_EQ(since->last_seq, shelf.book().last_seq());
    for (const CheckResult& r : since->checks) {
        if (r.check != Check::anchor) {
            EXPECT_EQ(r.looked_at, 3) << static_cast<int>(r.check);
        }
    }
    EXPECT_FALSE(verify_since(shelf.book(), before, 2)) << "three entries are more than two";
    EXPECT_TRUE(verify_since(shelf.book(), before, 3));
}

TEST_F(VerifiedBefore, what_was_spoilt_since_is_found) {
    const VerifiedUntil before = now();
    add_yard("third");
    shelf.write("bags_filled", [&](Writing& w) { shelf.give(w, 'S'); });
    shelf.close();
    struct Spoilt {
        std::string sql;
        Check check;
    };
    for (const Spoilt& spoilt : {Spoilt{"UPDATE yard SET note = 'spoilt' WHERE name = 'third'", Check::records},
                                 Spoilt{"DELETE FROM yard WHERE name = 'third'", Check::records},
                                 Spoilt{"UPDATE given_code SET given_ms = given_ms + 1 WHERE number = (SELECT max(number) FROM given_code WHERE kind = 'S') AND kind = 'S'", Check::records},
                                 Spoilt{"UPDATE change SET who = 'nobody' WHERE seq = (SELECT max(seq) FROM change)", Check::seals},
                                 Spoilt{"UPDATE seal SET hash = zeroblob(32) WHERE last_seq = (SELECT max(last_seq) FROM seal)", Check::seals},
                                 Spoilt{"DELETE FROM change WHERE seq = (SELECT max(seq) FROM change)", Check::numbers}}) {
        const QString path = shelf.folder() + QStringLiteral("/spoilt.soakbook");
        QFile::remove(path);
        ASSERT_TRUE(QFile::copy(shelf.path(), path));
        spoil(path, spoilt.sql);
        const auto opened = Workbook::open(path);
        ASSERT_TRUE(opened.has_value()) << spoilt.sql;
        const auto verdict = verify_since(**opened, before);
        ASSERT_TRUE(verdict) << spoilt.sql;
        EXPECT_FALSE(verdict->sound()) << spoilt.sql;
        EXPECT_GT(bad(*verdict, spoilt.check), 0) << spoilt.sql;
    }
}

TEST_F(VerifiedBefore, an_older_copy_in_its_place_lacks_the_seal) {
    const QString older = shelf.folder() + QStringLiteral("/older.soakbook");
    shelf.close();
    ASSERT_TRUE(QFile::copy(shelf.path(), older));
    auto newer = Workbook::open(shelf.path());
    ASSERT_TRUE(newer.has_value());
    struct Done {
        explicit operator bool() const { return true; }
    };
    (*newer)->write({QStringLiteral("yard"), 1, {}}, on_day(11), [](Writing& w) {
        insert(w, Yard{{}, QStringLiteral("third"), {}, {}, true});
        return Done{};
    });
    const VerifiedUntil until{(*newer)->uid(), newest_seal_of(**newer)};
    EXPECT_TRUE(stands_in(**newer, until.seal));
    const auto put_back = Workbook::open(older);
    ASSERT_TRUE(put_back.has_value());
    EXPECT_FALSE(stands_in(**put_back, until.seal));
    const auto verdict = verify_since(**put_back, until);
    ASSERT_TRUE(verdict);
    EXPECT_FALSE(verdict->sound());
    ASSERT_TRUE(verdict->first_bad());
    EXPECT_EQ(verdict->first_bad()->check, Check::anchor);
    const auto stranger = Workbook::create(shelf.folder() + QStringLiteral("/stranger.soakbook"), on_day(0));
    ASSERT_TRUE(stranger.has_value());
    const auto foreign = verify_since(**stranger, until);
    ASSERT_TRUE(foreign);
    EXPECT_FALSE(foreign->sound());
}

} // namespace soakbook::tests
