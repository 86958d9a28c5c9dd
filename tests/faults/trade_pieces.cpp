// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/statement.h"
#include "core/work/count.h"
#include "piece_of_work.h"
#include "tests/work/yards_bench.h"

#include <QFile>

namespace soakbook::faults {

namespace {

using namespace work;
using tests::must;
using tests::on_day;

/// Closes the bench and gives its file.
QByteArray bytes_of_bench(tests::Bench& bench) {
    bench.reopen();
    QFile in(bench.path());
    return in.open(QIODevice::ReadOnly) ? in.readAll() : QByteArray();
}

/// How it was refused. What could not be read while the entry was checked is thrown before anything is written; the window
/// words it (app/application.h), and the form stays as it is.
template <class F> std::optional<std::string> said(F&& f) {
    try {
        const auto outcome = f();
        return outcome ? std::nullopt : std::optional<std::string>("refused: " + ::testing::PrintToString(outcome.error()));
    } catch (const book::DiskFailed& unread) {
        return std::string("not read: ") + unread.what();
    }
}

/// `prepare(bench)` does what comes before and gives the piece; the file is made once.
template <class BenchKind, class Prepare> PieceOfWork piece_at(const char* name, Prepare&& prepare) {
    BenchKind bench;
    auto work = prepare(bench);
    const QByteArray bytes = bytes_of_bench(bench);
    return {name, [bytes] { return bytes; }, {}, std::move(work)};
}

using Work = std::function<std::optional<std::string>(book::Workbook&)>;

Work mix_weighed(tests::Bench& bench) {
    WeighedMix mix;
    mix.batch = must(plan_mix(bench.book(), bench.plan(), on_day(0, 17))).batch;
    for (const InputLine& input : bench.inputs_of(mix.batch))
        mix.masses.push_back({input.id, input.planned});
    return [mix](book::Workbook& book) { return said([&] { return weigh_mix(book, mix, on_day(0, 18)); }); };
}

Work bags_filled(tests::Bench& bench) {
    BagEntry entry;
    entry.batch = bench.weighed_batch();
    entry.bags = 12;
    entry.bag_lot = bench.bags;
    entry.stands = QStringLiteral("shelf 1");
    return [entry](book::Workbook& book) { return said([&] { return fill_bags(book, entry, on_day(2, 14)); }); };
}

Work strips_in(tests::YardsBench& bench) {
    (void)bench.bagged_batch();
    const VisitEntry entry = bench.as_planned(bench.round(10), bench.yard, 10);
    return [entry](book::Workbook& book) { return said([&] { return enter_visit(book, entry, on_day(10)); }); };
}

Work pulled(tests::YardsBench& bench) {
    (void)bench.bagged_batch();
    (void)bench.visit(bench.round(10), 10);
    PullEntry entry;
    for (const PullLine& line : hanging(bench.book(), bench.yard, tests::day_n(55)))
        entry.rows.push_back({line.placement, {}, {}, {}});
    return [entry](book::Workbook& book) { return said([&] { return enter_pull(book, entry, on_day(55)); }); };
}

Work counted(tests::YardsBench& bench) {
    CountEntry entry;
    entry.kind = MiteCountKind::wash;
    for (const HiveId hive : bench.hives)
        entry.rows.push_back({hive, 9, 300, {}, {}});
    return [entry](book::Workbook& book) { return said([&] { return enter_counts(book, entry, on_day(3)); }); };
}

Work corrected(tests::Bench& bench) {
    const BatchId batch = bench.bagged_batch();
    const BagCorrection correction{bench.bags_of(batch).front(), 79, {}, {}};
    return [correction](book::Workbook& book) {
        return said([&] { return correct_bag(book, correction, tests::because(QStringLiteral("one strip fell out"), 3)); });
    };
}

} // namespace

const std::vector<PieceOfWork>& pieces_of_the_trade() {
    static const std::vector<PieceOfWork> pieces{
        piece_at<tests::Bench>("a mix weighed", mix_weighed), piece_at<tests::Bench>("bags filled", bags_filled),
        piece_at<tests::YardsBench>("strips in", strips_in),  piece_at<tests::YardsBench>("strips pulled", pulled),
        piece_at<tests::YardsBench>("mites counted", counted), piece_at<tests::Bench>("a bag corrected", corrected),
    };
    return pieces;
}

} // namespace soakbook::faults
