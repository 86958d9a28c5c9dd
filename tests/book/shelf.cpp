// SPDX-License-Identifier: GPL-3.0-or-later
#include "shelf.h"

#include "core/book/records/bag_change.h"
#include "core/book/records/batch_loss.h"
#include "core/book/records/figure.h"
#include "core/book/records/hive_move.h"
#include "core/book/records/lot_change.h"
#include "core/book/records/mite_count.h"
#include "core/book/records/operation.h"
#include "core/book/records/person.h"
#include "core/book/records/reading.h"
#include "core/book/records/round.h"
#include "core/book/records/round_yard.h"
#include "core/book/records/stir.h"
#include "core/book/records/weigh_in.h"
#include "core/book/records/weigh_single.h"
#include "core/book/records/yard_time.h"
#include "core/book/schema.h"

#include <sqlite3.h>

namespace soakbook::tests {

using namespace book;
using maths::days_after;
using maths::grams;
using maths::kilograms;

maths::Instant moment(int n, int hour) {
    const auto local = days_after(first_day, n).time_since_epoch() + std::chrono::hours(hour);
    return {std::chrono::duration_cast<std::chrono::milliseconds>(local).count(), 0};
}

Doing on_day(int n, int hour, const QString& why) {
    return {moment(n, hour), QStringLiteral("Ada"), why, false};
}

Shelf::Shelf() : m_path(m_folder.filePath(QStringLiteral("shelf.soakbook"))) {
    auto made = Workbook::create(m_path, on_day(0, 0));
    if (!made)
        throw std::runtime_error("the workbook was not made");
    m_workbook = std::move(*made);
}

QString Shelf::give(Writing& writing, char letter) {
    const qint64 number = ++m_numbers[letter];
    const QString code = QLatin1Char(letter) + QString::number(number) + QStringLiteral("A");
    give_code(writing, code, QLatin1Char(letter), number);
    return code;
}

void Shelf::fill() {
    write("set_up", [&](Writing& w) {
        book::insert(w, Operation{{}, QStringLiteral("Shelf"), {}, {}});
        book::insert(w, Person{{}, QStringLiteral("Ada"), true});
        book::insert(w, Figure{{}, QStringLiteral("strength"), 400'000, {}});
        StripKind k;
        k.name = QStringLiteral("card");
        k.dry = grams(11);
        k.target = grams(34);
        k.strips_per_bag = 80;
        kind = book::insert(w, k);
        Vessel v;
        v.name = QStringLiteral("tank");
        v.capacity = kilograms(80);
        tank = book::insert(w, v);
        v = {};
        v.kind = VesselKind::bin;
        v.name = QStringLiteral("bin");
        v.strips_held = 480;
        bin = book::insert(w, v);
        MaterialLot lot;
        lot.name = QStringLiteral("acid");
        lot.received_on = first_day;
        lot.amount = kilograms(100).count;
        lot.acid_form = AcidForm::dihydrate;
        lot.assay = maths::percent(100);
        acid = book::insert(w, lot);
        lot = {};
        lot.material = Material::glycerine;
        lot.name = QStringLiteral("glycerine");
        lot.received_on = first_day;
        lot.amount = kilograms(100).count;
        glycerine = book::insert(w, lot);
        book::insert(w, LotChange{{}, glycerine, ChangeKind::recount, -1000, first_day, QStringLiteral("spilt")});
    });
    write("mix_weighed", [&](Writing& w) {
        Batch b;
        b.tank = tank;
        b.strip_kind = kind;
        b.planned_on = first_day;
        b.strength = maths::percent(40);
        b.ceiling = maths::celsius(60);
        b.mixed = moment(0, 18);
        b.code = give(w, 'B');
        batch = book::insert(w, b);
        BatchInput i;
        i.batch = batch;
        i.lot = acid;
        i.planned = kilograms(25);
        i.mass = kilograms(25);
        i.acid = kilograms(25);
        input = book::insert(w, i);
        i.lot = glycerine;
        i.planned = kilograms(37.5);
        i.mass = kilograms(37.5);
        i.acid = maths::Mass{};
        book::insert(w, i);
        b.code = give(w, 'B');
        b.mixed = moment(5, 18);
        other_batch = book::insert(w, b);
        Reading r;
        r.batch = batch;
        r.at = moment(1, 8);
        r.written = r.at;
        r.probe = maths::celsius(52);
        book::insert(w, r);
        Stir s;
        s.batch = batch;
        s.at = moment(1, 9);
        s.written = s.at;
        s.clear = true;
        book::insert(w, s);
    });
    write("bags_filled", [&](Writing& w) {
        Soak s;
        s.batch = batch;
        s.bin = bin;
        s.strips = 480;
        s.dry = grams(11);
        s.target = grams(34);
        s.started = moment(1, 10);
        s.written = s.started;
        soak = book::insert(w, s);
        Bag b;
        b.batch = batch;
        b.soak = soak;
        b.strip_kind = kind;
        b.reserved_on = days_after(first_day, 2);
        b.code = give(w, 'S');
        empty_label = book::insert(w, b);
        b.code = give(w, 'S');
        b.packed = 80;
        b.dry = grams(11);
        b.sealed_on = days_after(first_day, 2);
        b.rest_days = 7;
        b.rest_until = days_after(first_day, 9);
        b.use_months = 12;
        b.use_by = maths::day(2027, 8, 5);
        bag = book::insert(w, b);
        book::insert(w,
                     BagChange{{}, bag, ChangeKind::discard, -2, days_after(first_day, 3), QStringLiteral("torn"), {}});
        WeighIn weighing;
        weighing.soak = soak;
        weighing.at = moment(2, 10);
        weighing.written = weighing.at;
        weighing.strips = 2;
        weighing.total = grams(68);
        const auto weigh_in = book::insert(w, weighing);
        book::insert(w, WeighSingle{{}, weigh_in, 1, grams(34)});
        Pour p;
        p.batch = batch;
        p.at = moment(2, 15);
        p.warm_and_clear = true;
        p.scraped = true;
        pour = book::insert(w, p);
        Pail one;
        one.code = give(w, 'P');
        one.pour = pour;
        one.batch = batch;
        one.mass = kilograms(20);
        one.strength = maths::percent(40);
        one.sealed_on = days_after(first_day, 2);
        one.oldest_on = first_day;
        pail = book::insert(w, one);
        book::insert(w, BatchLoss{{}, batch, LossKind::drips, kilograms(1), {}, {}});
    });
    write("strips_in", [&](Writing& w) {
        yard = book::insert(w, Yard{{}, QStringLiteral("lower yard"), {}, {}, true});
        const auto upper = book::insert(w, Yard{{}, QStringLiteral("upper yard"), {}, {}, true});
        book::insert(
            w,
            YardTime{{}, yard, YardTimeKind::flow, QStringLiteral("lime"), first_day, days_after(first_day, 20), {}});
        Hive h;
        h.yard = yard;
        h.name = QStringLiteral("1");
        hive = book::insert(w, h);
        book::insert(w, HiveMove{{}, hive, upper, yard, first_day, {}});
        Round r;
        r.name = QStringLiteral("late summer");
        r.strip_kind = kind;
        r.planned_on = first_day;
        r.dose_strips = 4;
        r.pull_from_days = 42;
        r.pull_by_days = 56;
        const auto round = book::insert(w, r);
        book::insert(w, RoundYard{{}, round, yard, first_day, {}, {}});
        Placement p;
        p.round = round;
        p.hive = hive;
        p.yard = yard;
        p.bag = bag;
        p.strips = 8;
        p.placed_on = days_after(first_day, 9);
        p.written = moment(9);
        placement = book::insert(w, p);
        MiteCount count;
        count.hive = hive;
        count.on = first_day;
        count.kind = CountKind::wash;
        count.mites = 9;
        count.bees = 300;
        book::insert(w, count);
    });
}

Raw::Raw(const QString& path) {
    if (sqlite3_open_v2(path.toUtf8().constData(), &m_handle, SQLITE_OPEN_READWRITE, nullptr) != SQLITE_OK)
        throw std::runtime_error("the file did not open");
    run("PRAGMA foreign_keys=ON");
}
Raw::~Raw() {
    sqlite3_close(m_handle);
}

std::string Raw::run(const std::string& sql) {
    char* message = nullptr;
    if (sqlite3_exec(m_handle, sql.c_str(), nullptr, nullptr, &message) == SQLITE_OK)
        return {};
    const std::string text = message ? message : "refused without a word";
    sqlite3_free(message);
    sqlite3_exec(m_handle, "ROLLBACK", nullptr, nullptr, nullptr);
    return text;
}

std::string Raw::cell(const std::string& sql) {
    sqlite3_stmt* statement = nullptr;
    std::string text;
    if (sqlite3_prepare_v2(m_handle, sql.c_str(), -1, &statement, nullptr) != SQLITE_OK)
        throw std::runtime_error(sqlite3_errmsg(m_handle));
    if (sqlite3_step(statement) == SQLITE_ROW && sqlite3_column_text(statement, 0))
        text = reinterpret_cast<const char*>(sqlite3_column_text(statement, 0));
    sqlite3_finalize(statement);
    return text;
}

std::string records_of(Raw& raw) {
    static std::map<std::string, std::string> lines;
    std::string all;
    for (const QString& table : record_tables()) {
        const std::string name = table.toStdString();
        std::string& columns = lines[name];
        if (columns.empty())
            columns = raw.cell("SELECT group_concat('quote(' || name || ')', '||'',''||') FROM pragma_table_info('" +
                               name + "')");
        all += name + ": " +
               raw.cell("SELECT group_concat(line, char(10)) FROM (SELECT " + columns + " AS line FROM " + name +
                        " ORDER BY id)") +
               "\n";
    }
    return all;
}

std::string records_of(const QString& path) {
    Raw raw(path);
    return records_of(raw);
}

} // namespace soakbook::tests
