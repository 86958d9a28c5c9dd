// SPDX-License-Identifier: GPL-3.0-or-later
// A workbook whose disk failed, or that was cut on a stick: what can be read of it is read, and nothing is made up.
#include "core/book/records/person.h"
#include "core/book/salvage.h"
#include "core/book/schema.h"
#include "shelf.h"

#include <QFile>

#include <random>

namespace soakbook::tests {

namespace {

using namespace book;

// A season of some hundred records, of which the file has a copy to be damaged.
class Damaged_workbooks : public testing::Test {
protected:
    static void SetUpTestSuite() {
        season = new Shelf;
        season->fill();
        season->write("hives", [](Writing& w) {
            for (int i = 2; i < 160; ++i) {
                Hive hive;
                hive.yard = season->yard;
                hive.name = QString::number(i);
                hive.note = QStringLiteral("stands in row %1, isn't level").arg(i % 7);
                book::insert(w, hive);
            }
        });
        for (int day = 10; day < 30; ++day)
            season->write("strips_in", [day](Writing& w) {
                for (int i = 0; i < 3; ++i) {
                    Placement p;
                    p.hive = {1 + (day * 3 + i) % 150};
                    p.yard = season->yard;
                    p.bag = season->bag;
                    p.strips = 1;
                    p.placed_on = maths::days_after(first_day, day);
                    p.written = moment(day);
                    // Long enough to go on into further pages.
                    p.note = i == 0 ? QString(3900, QLatin1Char('x')) : QStringLiteral("fits");
                    book::insert(w, p);
                }
            }, on_day(day));
        season->write("corrected", [](Writing& w) {
            auto hive = *fetch(w.workbook(), season->hive);
            hive.note = QStringLiteral("the old queen's");
            book::update(w, hive);
        });
        season->close();
        QFile file(season->path());
        if (!file.open(QIODevice::ReadOnly))
            throw std::runtime_error("the workbook cannot be read");
        sound = file.readAll();
    }
    static void TearDownTestSuite() { delete season; }

    static std::unique_ptr<Salvage> salvaged(const QByteArray& bytes) {
        const QString path = season->folder() + QStringLiteral("/damaged.soakbook");
        QFile file(path);
        EXPECT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(bytes);
        file.close();
        auto read = Salvage::read(path);
        EXPECT_TRUE(file.open(QIODevice::ReadOnly));
        EXPECT_EQ(file.readAll(), bytes);
        return read ? std::move(*read) : nullptr;
    }

    using Rows = std::map<std::string, std::vector<std::optional<QString>>>;
    struct Told {
        Rows sure;
        Rows unproven;
        qint64 from_history = 0;
    };
    static Told told(const Salvage& salvage) {
        Told told;
        for (std::size_t t = 0; t < salvage.tables().size(); ++t) {
            const SalvagedTable& table = salvage.tables()[t];
            EXPECT_EQ(table.rows, table.agreeing + table.from_history + table.unproven);
            told.from_history += table.from_history;
            for (qint64 place = 0; place < table.rows; ++place) {
                const SalvagedRow row = salvage.row(t, place);
                const std::string key = table.name.toStdString() + ' ' + row.cells.front().value_or(QString()).toStdString();
                EXPECT_TRUE((row.sure == Sure::unproven ? told.unproven : told.sure).emplace(key, row.cells).second) << key << " twice";
            }
        }
        return told;
    }
    static const Rows& original() {
        static const Rows rows = told(*salvaged(sound)).sure;
        return rows;
    }
    // What is said to be sure is what stood there, to the letter; the rest has at least a record to belong to.
    static void expect_nothing_made_up(const Told& found, const std::string& what) {
        for (const auto& [key, cells] : found.sure) {
            const auto was = original().find(key);
            ASSERT_NE(was, original().end()) << what << ": " << key;
            EXPECT_EQ(cells, was->second) << what << ": " << key;
        }
        for (const auto& [key, cells] : found.unproven)
            EXPECT_TRUE(original().count(key)) << what << ": " << key;
    }

    inline static Shelf* season = nullptr;
    inline static QByteArray sound;
};

int page_size() { return 4096; }

} // namespace

TEST_F(Damaged_workbooks, a_sound_one_is_read_whole_and_agrees_with_its_history) {
    const auto salvage = salvaged(sound);
    ASSERT_TRUE(salvage);
    Raw raw(season->path());
    for (std::size_t t = 0; t < salvage->tables().size(); ++t) {
        const SalvagedTable& table = salvage->tables()[t];
        const std::string name = table.name.toStdString();
        EXPECT_EQ(std::to_string(table.agreeing), raw.cell("SELECT count(*) FROM " + name)) << name;
        EXPECT_EQ(table.rows, table.agreeing) << name;
        EXPECT_EQ(table.lost, 0) << name;
        for (qint64 place = 0; place < table.rows; ++place) {
            const SalvagedRow row = salvage->row(t, place);
            for (qsizetype c = 0; c < table.columns.size(); ++c) {
                const std::string from = " FROM " + name + " WHERE id = " + row.cells.front()->toStdString();
                const auto& cell = row.cells[static_cast<std::size_t>(c)];
                EXPECT_EQ(cell.value_or(QStringLiteral("NULL")).toStdString(), raw.cell("SELECT coalesce(" + table.columns.at(c).toStdString() + ", 'NULL')" + from));
            }
        }
    }
    EXPECT_EQ(std::to_string(salvage->entries_read()), raw.cell("SELECT max(seq) FROM change"));
    EXPECT_EQ(salvage->entries_there_were(), salvage->entries_read());
    EXPECT_EQ(salvage->pages_lost(), 0);
}

TEST_F(Damaged_workbooks, without_the_page_that_says_what_stands_where_most_is_still_read) {
    QByteArray bytes = sound;
    bytes.replace(0, page_size(), QByteArray(page_size(), '\0'));
    const auto salvage = salvaged(bytes);
    ASSERT_TRUE(salvage);
    const Told found = told(*salvage);
    expect_nothing_made_up(found, "no schema");
    EXPECT_GE(found.sure.size() + found.unproven.size(), original().size() * 9 / 10);
    EXPECT_GE(found.sure.size(), original().size() * 9 / 10);
}

TEST_F(Damaged_workbooks, records_that_are_lost_are_told_by_the_sealed_history) {
    // Every leaf of the hives goes; the history is whole.
    Raw raw(season->path());
    QByteArray bytes = sound;
    int lost = 0;
    for (int at = page_size(); at + page_size() <= bytes.size(); at += page_size())
        if (bytes.mid(at, page_size()).count("isn't level") > 5 && !bytes.mid(at, page_size()).contains("note='")) {
            bytes.replace(at, page_size(), QByteArray(page_size(), '\0'));
            ++lost;
        }
    ASSERT_GT(lost, 1);
    const auto salvage = salvaged(bytes);
    ASSERT_TRUE(salvage);
    const Told found = told(*salvage);
    expect_nothing_made_up(found, "no hives");
    EXPECT_GT(found.from_history, 100);
    EXPECT_EQ(found.sure.size(), original().size());
    EXPECT_EQ(salvage->pages_lost(), lost);
}

TEST_F(Damaged_workbooks, a_record_with_a_changed_letter_is_told_as_the_history_has_it) {
    QByteArray bytes = sound;
    Raw raw(season->path());
    // The note stands once in the record and once in the history, with its quote doubled there.
    const qsizetype at = bytes.indexOf("the old queen's");
    ASSERT_GT(at, 0);
    bytes[at] = 'T';
    const Told found = told(*salvaged(bytes));
    expect_nothing_made_up(found, "a letter");
    EXPECT_EQ(found.sure.size(), original().size());
}

TEST_F(Damaged_workbooks, two_hundred_damaged_ones_are_read_without_a_crash_and_nothing_is_made_up) {
    std::mt19937 dice(7);
    const auto roll = [&dice](qint64 below) { return static_cast<qint64>(dice() % static_cast<std::uint32_t>(below)); };
    qint64 read = 0;
    qint64 there = 0;
    for (int n = 0; n < 200; ++n) {
        QByteArray bytes = sound;
        const std::string what = "damage " + std::to_string(n);
        switch (n % 5) {
        case 0: // single bits
            for (qint64 i = 0; i <= n / 10; ++i)
                bytes[roll(bytes.size())] = static_cast<char>(bytes.at(roll(bytes.size())) ^ (1 << roll(8)));
            break;
        case 1: // cut
            bytes.truncate(roll(bytes.size()));
            break;
        case 2: // whole pages gone
            for (qint64 i = 0; i <= roll(8); ++i)
                bytes.replace(roll(bytes.size() / page_size()) * page_size(), page_size(), QByteArray(page_size(), '\0'));
            break;
        case 3: // a stretch of rubbish
            for (qint64 i = 0, from = roll(bytes.size() - 9000); i < 9000; ++i)
                bytes[from + i] = static_cast<char>(roll(256));
            break;
        default: // pages in each other's place
            for (int i = 0; i < 3; ++i) {
                const qint64 one = roll(bytes.size() / page_size()) * page_size();
                const qint64 other = roll(bytes.size() / page_size()) * page_size();
                const QByteArray moved = bytes.mid(one, page_size());
                bytes.replace(one, page_size(), bytes.mid(other, page_size()));
                bytes.replace(other, page_size(), moved);
            }
        }
        const auto salvage = salvaged(bytes);
        if (!salvage)
            continue;
        const Told found = told(*salvage);
        expect_nothing_made_up(found, what);
        read += static_cast<qint64>(found.sure.size() + found.unproven.size());
        there += static_cast<qint64>(original().size());
    }
    // Measured with these damages: 86 of 100.
    EXPECT_GT(read * 10, there * 7) << read << " of " << there;
    RecordProperty("rows_read", std::to_string(read));
    RecordProperty("rows_there", std::to_string(there));
}

TEST_F(Damaged_workbooks, what_never_was_a_workbook_is_said_so) {
    const auto refused = [](const QByteArray& bytes) {
        const QString path = season->folder() + QStringLiteral("/other");
        QFile file(path);
        EXPECT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(bytes);
        file.close();
        const auto read = Salvage::read(path);
        return read ? -1 : static_cast<int>(read.error());
    };
    EXPECT_EQ(refused({}), static_cast<int>(NotOpened::empty_file));
    EXPECT_EQ(refused(QByteArray(100'000, 'x')), static_cast<int>(NotOpened::not_a_workbook));
    EXPECT_EQ(refused(QByteArray(100'000, '\x0d')), static_cast<int>(NotOpened::not_a_workbook));
    EXPECT_FALSE(Salvage::read(season->folder() + QStringLiteral("/gone")));
}

TEST_F(Damaged_workbooks, one_of_an_older_version_is_read_too) {
    QFile packed(QStringLiteral(SOAKBOOK_SOURCE_DIR "/tests/book/data/version_1.qz"));
    ASSERT_TRUE(packed.open(QIODevice::ReadOnly));
    QByteArray bytes = qUncompress(packed.readAll());
    const auto whole = salvaged(bytes);
    ASSERT_TRUE(whole);
    const Told all = told(*whole);
    EXPECT_GT(all.sure.size(), 20U);
    // In version 1 a change of a name's case alone did not reach the history.
    EXPECT_LE(all.unproven.size(), 1U);
    bytes.replace(0, page_size(), QByteArray(page_size(), '\0'));
    const auto damaged = salvaged(bytes);
    ASSERT_TRUE(damaged);
    EXPECT_EQ(told(*damaged).sure, all.sure);
}

TEST_F(Damaged_workbooks, reading_can_be_stopped) {
    const QString path = season->folder() + QStringLiteral("/stopped.soakbook");
    ASSERT_TRUE(QFile::copy(season->path(), path));
    int told_so_far = 0;
    const auto read = Salvage::read(path, [&](int) { return ++told_so_far < 1; });
    EXPECT_FALSE(read);
}

} // namespace soakbook::tests
