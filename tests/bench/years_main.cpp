// SPDX-License-Identifier: GPL-3.0-or-later
// soakbook_bench_years FILE [--years N] [--hives H] [--rounds R] [--seed S]: makes the workbook and says what is in it.
#include "quiet_disk.h"
#include "years.h"

#include <QCommandLineParser>
#include <QCoreApplication>
#include <QFileInfo>

#include <chrono>
#include <cstdio>
#include <exception>

namespace {

int make(const QString& path, soakbook::tests::YearsWish wish) {
    using Clock = std::chrono::steady_clock;
    const auto begun = Clock::now();
    const auto seconds = [&begun] { return std::chrono::duration<double>(Clock::now() - begun).count(); };
    wish.told = [&](int season) { std::fprintf(stderr, "season %d, %.0f s, %.1f MB\n", season, seconds(), static_cast<double>(QFileInfo(path).size()) / 1e6); };
    soakbook::tests::YearsMade made;
    soakbook::tests::workbook_of_years(path, wish, &made);
    const std::pair<const char*, int> lines[] = {
        {"pieces of work", made.pieces}, {"yards", made.yards},
        {"hives", made.hives}, {"hives found dead", made.hives_dead},
        {"hives moved", made.hives_moved}, {"deliveries", made.lots},
        {"batches", made.batches}, {"soaks", made.soaks},
        {"weighings", made.weighings}, {"bags", made.bags},
        {"pails", made.pails}, {"rounds", made.rounds},
        {"visits", made.visits}, {"strips hung", made.strips_hung},
        {"strips pulled", made.strips_out}, {"strips missing", made.strips_missing},
        {"mite counts", made.counts}, {"corrections and voids", made.corrections},
        {"undone", made.undone},
    };
    for (const auto& [name, number] : lines)
        std::printf("%-22s %9d\n", name, number);
    std::printf("%-22s %9.1f MB in %.0f s\n", "file", static_cast<double>(QFileInfo(path).size()) / 1e6, seconds());
    return 0;
}

} // namespace

int main(int argc, char** argv) {
    QCoreApplication application(argc, argv);
    QCommandLineParser parser;
    const auto number = [&parser](const char* name, const char* what, int otherwise) {
        const QCommandLineOption option(QLatin1String(name), QLatin1String(what), QStringLiteral("number"), QString::number(otherwise));
        parser.addOption(option);
        return option;
    };
    const soakbook::tests::YearsWish usual;
    const auto years = number("years", "Seasons in it.", usual.years);
    const auto hives = number("hives", "Hives that stand at a time.", usual.hives);
    const auto rounds = number("rounds", "Rounds in a season, 1 to 10.", usual.rounds);
    const auto seed = number("seed", "Another number gives other odd days.", static_cast<int>(usual.seed));
    parser.addPositionalArgument(QStringLiteral("FILE"), QStringLiteral("The workbook to make; it must not exist."));
    parser.addHelpOption();
    parser.process(application);
    if (parser.positionalArguments().size() != 1)
        parser.showHelp(2);
    soakbook::tests::YearsWish wish;
    wish.years = parser.value(years).toInt();
    wish.hives = parser.value(hives).toInt();
    wish.rounds = parser.value(rounds).toInt();
    wish.seed = parser.value(seed).toUInt();
    try {
        const soakbook::tests::QuietDisk quiet;
        return make(parser.positionalArguments().first(), wish);
    } catch (const std::exception& failure) {
        std::fprintf(stderr, "%s\n", failure.what());
        return 1;
    }
}
