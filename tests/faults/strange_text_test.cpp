// SPDX-License-Identifier: GPL-3.0-or-later
// Texts that files and programs stumble over: kept exactly, in the record and in the history, or refused; never cut.
#include "core/book/connection.h"
#include "core/book/history.h"
#include "core/book/record_io.h"
#include "core/book/statement.h"
#include "ground.h"

#include <sqlite3.h>

namespace soakbook::faults {

namespace {

struct StrangeText : ::testing::Test {
    Ground ground;
    QString path = ground.file("book.soakbook");
    std::unique_ptr<book::Workbook> workbook;
    void SetUp() override {
        put(path, filled_workbook());
        workbook = std::move(*book::Workbook::open(path));
    }
    /// The record as it is read back, with its last image in the history; throws as the store does.
    std::pair<QString, QString> kept(const QString& text, const book::Doing& doing = on_day(10)) {
        book::Id<book::Yard> id;
        struct Done {
            explicit operator bool() const { return true; }
        };
        workbook->write({QStringLiteral("yard"), 1, {}}, doing, [&](book::Writing& writing) {
            id = book::insert(writing, book::Yard{{}, QStringLiteral("yard %1").arg(++m_number), {}, text, true});
            return Done{};
        });
        QString image;
        const auto history = book::history_of(*workbook, QStringLiteral("yard"), id.value);
        for (const auto& column : history.back().columns)
            if (column.column == QStringLiteral("note"))
                image = column.after.value_or(QString());
        return {book::fetch(*workbook, id)->note, image};
    }

private:
    int m_number = 0;
};

} // namespace

TEST_F(StrangeText, is_the_same_in_the_record_and_in_its_history) {
    const QString bee = QStringLiteral("\U0001F41D");
    for (const QString& text :
         {QString(4'000, QLatin1Char('x')), bee.repeated(4'000), QStringLiteral("\u202Eturned\u202C \u05E9\u05DC\u05D5\u05DD \u200F12"),
          QStringLiteral("it's ''quoted'' \"twice\"; DROP TABLE yard; --"), QStringLiteral("line\nafter\r\nline\n\nname='x'\nid=7"),
          QStringLiteral("\t\x01\x1f\x7f"), QStringLiteral("e\u0301 \u00e9 \ufb01 \ufeffmarked \ufffd"), QStringLiteral("'"), QStringLiteral("''"), QStringLiteral("NULL"),
          QStringLiteral("\\n%s%n{}\\0")}) {
        const auto [record, image] = kept(text);
        EXPECT_EQ(record, text) << text.left(40).toStdString();
        EXPECT_EQ(image, text) << text.left(40).toStdString();
    }
    workbook.reset();
    expect_sound(path, "with strange texts");
}

TEST_F(StrangeText, that_the_history_could_not_hold_whole_is_refused_and_nothing_is_written) {
    const qint64 before = workbook->last_seq();
    for (const QString& text : QStringList{QStringLiteral("before") + QChar(0) + QStringLiteral("after"), QString(QChar(0)),
                                QStringLiteral("half") + QChar(0xD83D), QChar(0xDC1D) + QStringLiteral("half"), QStringLiteral("no letter \uffff"), QStringLiteral("\ufffe"), QString(4'001, QLatin1Char('x')),
                                QString(1'000'000, QLatin1Char('x'))})
        EXPECT_THROW(kept(text), book::LawBroken) << text.size();
    EXPECT_EQ(workbook->last_seq(), before);
    // A correction goes through the same door.
    auto yard = book::fetch_all<book::Yard>(*workbook).front();
    yard.note = QStringLiteral("a") + QChar(0);
    struct Done {
        explicit operator bool() const { return true; }
    };
    EXPECT_THROW(workbook->write({QStringLiteral("yard"), 1, {}}, on_day(10),
                                 [&](book::Writing& writing) {
                                     book::update(writing, yard);
                                     return Done{};
                                 }),
                 book::LawBroken);
    EXPECT_EQ(workbook->last_seq(), before);
    workbook.reset();
    expect_sound(path, "after refusals");
}

TEST_F(StrangeText, as_a_reason_is_in_the_history_as_it_was_said) {
    for (const QString& why : {QString(100'000, QLatin1Char('r')), QStringLiteral("\u202Eno"), QStringLiteral("it's\n'so'")}) {
        (void)kept({}, on_day(10, 12, why));
        EXPECT_EQ(book::newest_changes(*workbook, 1).front().why, why);
    }
    workbook.reset();
    expect_sound(path, "with strange reasons");
}

TEST_F(StrangeText, too_long_for_the_store_is_refused_and_the_workbook_unharmed) {
    // A thousand million letters is SQLite's own limit; a lower one here stands for it.
    sqlite3_limit(static_cast<sqlite3*>(book::raw_handle(workbook->db())), SQLITE_LIMIT_LENGTH, 100'000);
    const qint64 before = workbook->last_seq();
    EXPECT_THROW(kept({}, on_day(10, 12, QString(200'000, QLatin1Char('x')))), book::StoreError);
    EXPECT_EQ(workbook->last_seq(), before);
    (void)kept({}, on_day(10, 12, QString(20'000, QLatin1Char('x'))));
    EXPECT_EQ(book::newest_changes(*workbook, 1).front().why.size(), 20'000);
    workbook.reset();
    expect_sound(path, "after one too long");
}

TEST_F(StrangeText, of_SQL_reaches_neither_the_schema_nor_a_file) {
    // Defensive mode: not even our own mistake can write over the schema.
    EXPECT_THROW(book::run_script(workbook->db(), "PRAGMA writable_schema=ON; DELETE FROM sqlite_schema WHERE name = 'change_kept'"), book::StoreError);
    EXPECT_THROW(book::run_script(workbook->db(), "SELECT load_extension('x')"), book::StoreError);
    workbook.reset();
    expect_sound(path, "after SQL");
}

} // namespace soakbook::faults
