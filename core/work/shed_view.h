// SPDX-License-Identifier: GPL-3.0-or-later
// What the Shed shows: every batch with its state, and one batch as its course.
#pragma once

#include "core/work/leftovers.h"
#include "core/work/mix.h"
#include "core/work/weigh.h"

namespace soakbook::work {

/// Where a batch stands; found here alone and never stored.
enum class BatchState { planned, warming, clear, soaking, bagging, to_close, closed, made_void };

struct BatchLine {
    BatchId id;
    QString code;
    maths::Day day{};        ///< mixed, or planned
    QString tank;
    QString strip_kind;
    int strips = 0;          ///< soaked
    int bags = 0;            ///< filled
    int resting = 0;         ///< bags that still rest
    BatchState state{};
};
/// Open ones first, newest first.
std::vector<BatchLine> batches(const book::Workbook& workbook, maths::Day today, bool also_void = false);

struct ReadingLine {
    ReadingId id;
    maths::Instant at;
    std::optional<maths::Temperature> probe;
    std::optional<maths::Temperature> dial;
    std::optional<maths::Temperature> room;
    std::optional<bool> jacket_seen;
    bool over_ceiling = false;
    bool written_late = false; ///< more than an hour after
    QString note;
};
struct StirLine {
    StirId id;
    maths::Instant at;
    std::optional<int> minutes;
    bool clear = false;
    std::optional<bool> outlet_poured_back;
    QString note;
};
struct WeighLine {
    WeighInId id;
    maths::Instant at;
    double hours = 0;          ///< since the soak began
    int strips = 0;
    maths::Mass total{};
    bool one_by_one = false;
    std::optional<int> drip_minutes;
    WeighFigures figures;
    bool corrected = false;    ///< its first writing said something else
    QString note;
};
struct SoakLine {
    SoakId id;
    VesselId bin;
    QString bin_name;
    int strips = 0;
    int bagged = 0;
    maths::Mass dry{};
    maths::Mass target{};
    maths::Mass tolerance{};
    std::optional<maths::Temperature> room;
    maths::Instant started;
    std::optional<maths::Instant> ended;
    std::vector<WeighLine> weighings; ///< oldest first
};
struct BatchBag {
    BagId id;
    QString code;
    std::optional<int> packed;
    std::optional<maths::Mass> net;
    std::optional<maths::Day> sealed_on;
    std::optional<maths::Day> rest_until;
    std::optional<maths::Day> use_by;
    QString label;
    bool made_void = false;
};
struct BatchPail {
    PailId id;
    QString code;
    maths::Mass mass{};
    std::optional<maths::Fraction> strength;
    QString went_to; ///< code of the batch it went into
};
struct LossLine {
    LossId id;
    NamedLoss kind{};
    maths::Mass mass{};
    QString note;
};
struct BatchView {
    BatchLine line;
    VesselId tank;
    std::optional<maths::Mass> tank_capacity;
    StripKindId strip_kind;
    maths::Fraction wanted{};
    std::optional<maths::Fraction> strength; ///< of what was weighed in
    maths::Mass total{};                     ///< weighed, or planned
    maths::Mass planned_total{};
    maths::Temperature ceiling{};
    std::optional<maths::Instant> mixed;
    std::optional<maths::Instant> closed;
    std::vector<InputLine> inputs;
    std::optional<MixResult> mix;
    std::vector<ReadingLine> readings;       ///< oldest first
    std::optional<maths::Temperature> highest;
    std::vector<StirLine> stirs;
    std::optional<maths::Instant> clear_at;
    std::vector<SoakLine> soaks;
    int strips_soaked = 0;
    int strips_bagged = 0;
    std::vector<BatchBag> bags;
    int labels_reserved = 0;
    std::vector<BatchPail> pails;
    std::vector<LossLine> losses;
    std::optional<Balance> balance;
    QString note;
    QString void_reason;
};
/// Nothing when there is no such batch.
std::optional<BatchView> batch_view(const book::Workbook& workbook, BatchId batch, maths::Day today);

/// What a new form is filled with: the vessel and lots used last, the strength of Set-up, pails that can go in.
struct MixStart {
    MixPlan plan;
    std::vector<PailId> pails_that_can; ///< whole, known strength, oldest first
};
MixStart mix_start(const book::Workbook& workbook, maths::Day today);

} // namespace soakbook::work
