// SPDX-License-Identifier: GPL-3.0-or-later
// The one look of all charts: accent for what was measured, soft ink for axes, a pale area for what is wanted.
#pragma once

#include <QColor>
#include <QFont>

namespace soakbook::ui {

struct ChartLook {
    QColor ground;
    QColor line;     ///< the thin lines behind
    QColor ink;
    QColor soft;     ///< axes and their figures
    QColor measured; ///< lines and bars
    QColor lighter;  ///< a second measure beside the first
    QColor pale;     ///< bars that only stand for stock
    QColor wanted;   ///< the band
    QColor wanted_ink;
    QColor near;
    QColor past;
    QFont text;
    bool on_paper = false;

    bool operator==(const ChartLook&) const = default;
};

/// What the program wears now.
ChartLook chart_look();
/// The same in greys, for print and for pictures that go on paper.
ChartLook printed_chart_look();

} // namespace soakbook::ui
