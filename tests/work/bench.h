// SPDX-License-Identifier: GPL-3.0-or-later
// A workbook in a folder that goes away with it, with Set-up done, and the steps from mix to bags in one call each. Its
// figures are the trade's check values: 25 kg of acid and 37.5 kg of glycerine, strips of 11 g that take up 23 g.
#pragma once

#include "core/book/workbook.h"
#include "core/work/bag.h"
#include "core/work/heat.h"
#include "core/work/ids.h"
#include "core/work/leftovers.h"
#include "core/work/materials.h"
#include "core/work/mix.h"
#include "core/work/outcome.h"
#include "core/work/setup.h"
#include "core/work/shed_view.h"
#include "core/work/soak.h"
#include "core/work/weigh.h"

#include <QTemporaryDir>

#include <gtest/gtest.h>
#include <memory>
#include <optional>

namespace soakbook::book {
void PrintTo(const Piece& piece, std::ostream* out);
}
namespace soakbook::work {
void PrintTo(Why why, std::ostream* out);
void PrintTo(const Refusal& refusal, std::ostream* out);
} // namespace soakbook::work

namespace soakbook::tests {

/// The first day of the bench's story: Monday, 3 August 2026.
constexpr maths::Day first_day = maths::day(2026, 8, 3);

/// `n` days after the first day, at that hour on the wall (two hours east of Greenwich), by Ada.
book::Doing on_day(int n, int hour = 12, int minute = 0);
/// The same with a reason, as corrections need.
book::Doing because(const QString& why, int n, int hour = 12, int minute = 0);
maths::Instant moment(int n, int hour, int minute = 0);

/// Whether the workbook is new or has had its welcome.
enum class SetUp { done, nothing };

class Bench {
public:
    explicit Bench(SetUp set_up = SetUp::done);

    book::Workbook& book() { return *m_workbook; }
    const QString& path() const { return m_path; }
    /// Closes the file and opens it again: what is not stored is gone, undo too.
    void reopen();

    // Set-up: strips of 11 g to 34 g +- 0.5 g, 80 a bag; a tank of 80 kg; two bins of 480.
    work::StripKindId strip_kind;
    work::VesselId tank;
    work::VesselId bin;
    work::VesselId second_bin;
    // Deliveries: 100 kg of acid of 100 % in sacks of 25 kg, 200 kg of glycerine in cans of 25 kg, 5000 strips, 500
    // bags.
    work::LotId acid;
    work::LotId glycerine;
    work::LotId strips;
    work::LotId bags;

    work::MixPlan plan() const; ///< 62.5 kg at 40 %, on the first day
    /// 62.5 kg weighed in as planned on day `n` at 18:00.
    work::BatchId mixed_batch(int n = 0, std::optional<maths::Mass> total = std::nullopt,
                              const std::vector<work::PailId>& pails = {});
    /// Read at 52 C and seen clear next morning at 9:00.
    work::BatchId clear_batch(int n = 0, std::optional<maths::Mass> total = std::nullopt,
                              const std::vector<work::PailId>& pails = {});
    /// 480 strips in each bin at 10:00 of day n + 1.
    work::BatchId soaked_batch(int n = 0, int bins = 2);
    work::BatchView view(work::BatchId batch);
    std::vector<work::InputLine> inputs_of(work::BatchId batch);
    std::vector<work::SoakId> soaks_of(work::BatchId batch);
    /// Ten strips of 33.9 g on average out of each bin, taken out, at 10:00 of day n + 2.
    work::BatchId weighed_batch(int n = 0, int bins = 2);
    /// Twelve bags of 80 sealed on day n + 2.
    work::BatchId bagged_batch(int n = 0, int bins = 2);
    std::vector<work::BagId> bags_of(work::BatchId batch);

private:
    QTemporaryDir m_folder;
    QString m_path;
    std::unique_ptr<book::Workbook> m_workbook;
};

/// The result, or a failed test with the refusal in words.
template <class T> T must(work::Outcome<T> outcome) {
    if (!outcome) {
        ADD_FAILURE() << "refused: " << ::testing::PrintToString(outcome.error());
        throw std::runtime_error("refused");
    }
    return std::move(*outcome);
}

/// Matches an outcome that is refused for that reason at that field.
template <class T>
::testing::AssertionResult refused(const work::Outcome<T>& outcome, work::Why why, const QString& field = {}) {
    if (outcome)
        return ::testing::AssertionFailure() << "it was taken";
    if (outcome.error().why != why || (!field.isNull() && outcome.error().field != field))
        return ::testing::AssertionFailure() << ::testing::PrintToString(outcome.error());
    if (outcome.error().can_confirm)
        return ::testing::AssertionFailure() << "only asked: " << ::testing::PrintToString(outcome.error());
    return ::testing::AssertionSuccess();
}
/// Matches an outcome that asks back, so that the same request with `why` confirmed may pass.
template <class T>::testing::AssertionResult asked(const work::Outcome<T>& outcome, work::Why why) {
    if (outcome)
        return ::testing::AssertionFailure() << "it was taken";
    if (outcome.error().why != why || !outcome.error().can_confirm)
        return ::testing::AssertionFailure() << ::testing::PrintToString(outcome.error());
    return ::testing::AssertionSuccess();
}

} // namespace soakbook::tests
