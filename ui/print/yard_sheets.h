// SPDX-License-Identifier: GPL-3.0-or-later
// The papers that go to a yard: run sheet, pull list, load-out. Codes and dates are texts as the user reads them.
#pragma once

#include "ui/print/sheet_head.h"

#include <vector>

namespace soakbook::ui {

struct BagToTake {
    QString code;
    QString strips;  ///< left in it
    QString use_by;
    QString place;   ///< where it stands
    QString note;    ///< "still resting until 3 Oct"
};

struct RunLine {
    QString hive;    ///< or group: "Row C, 12 hives"
    QString bees;    ///< frames of bees, or what the dose rule goes by
    QString strips;  ///< to hang
    QString note;    ///< state of the hive, clash, supers
};

/// For hanging strips in one yard: a line for every hive and room to write.
struct RunSheet {
    QString yard;
    QString round;
    QString day;
    QString supers;      ///< what the yard's calendar says of that day; empty: nothing
    QString total;       ///< strips, all hives
    std::vector<BagToTake> bags;
    std::vector<RunLine> lines;
    int spare_lines = 3; ///< for hives that nobody had on the list
};
PaperSheet sheet_of(const RunSheet& run, const SheetHead& head);

struct PullLine {
    QString hive;
    QString strips;   ///< hanging
    QString bag;
    QString since;
    QString window;   ///< "12 Oct to 26 Oct"
    QString state;    ///< "past", "open"
    QString note;
};

/// For pulling strips in one yard.
struct PullList {
    QString yard;
    QString day;
    QString total;
    std::vector<PullLine> lines;
};
PaperSheet sheet_of(const PullList& pull, const SheetHead& head);

struct YardStop {
    QString yard;
    QString hives;
    QString strips;
    QString day;
    QString note;
};

/// For loading the car for a round.
struct LoadOut {
    QString round;
    QString day;
    QString total;
    std::vector<BagToTake> bags;
    std::vector<YardStop> yards;
};
PaperSheet sheet_of(const LoadOut& load, const SheetHead& head);

} // namespace soakbook::ui
