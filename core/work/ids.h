// SPDX-License-Identifier: GPL-3.0-or-later
// The keys by which ui and work speak of records, without their structs.
#pragma once

#include "core/book/id.h"

namespace soakbook::book {
struct Person;
struct StripKind;
struct MaterialLot;
struct Vessel;
struct Batch;
struct BatchInput;
struct Reading;
struct Stir;
struct Soak;
struct WeighIn;
struct Bag;
struct Pour;
struct Pail;
struct BatchLoss;
struct Yard;
struct YardTime;
struct Hive;
struct Round;
struct Placement;
struct MiteCount;
class Workbook;
} // namespace soakbook::book

namespace soakbook::work {

using PersonId = book::Id<book::Person>;
using StripKindId = book::Id<book::StripKind>;
using LotId = book::Id<book::MaterialLot>;
using VesselId = book::Id<book::Vessel>;
using BatchId = book::Id<book::Batch>;
using BatchInputId = book::Id<book::BatchInput>;
using ReadingId = book::Id<book::Reading>;
using StirId = book::Id<book::Stir>;
using SoakId = book::Id<book::Soak>;
using WeighInId = book::Id<book::WeighIn>;
using BagId = book::Id<book::Bag>;
using PourId = book::Id<book::Pour>;
using PailId = book::Id<book::Pail>;
using LossId = book::Id<book::BatchLoss>;
using YardId = book::Id<book::Yard>;
using YardTimeId = book::Id<book::YardTime>;
using HiveId = book::Id<book::Hive>;
using RoundId = book::Id<book::Round>;
using PlacementId = book::Id<book::Placement>;
using MiteCountId = book::Id<book::MiteCount>;

/// The materials one buys.
enum class MaterialKind { acid, glycerine, strips, bags };
/// How acid is counted on its label.
enum class FormOfAcid { dihydrate, anhydrous };
enum class DoseRule { fixed, brood_boxes, frames_of_bees };

} // namespace soakbook::work
