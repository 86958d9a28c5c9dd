// SPDX-License-Identifier: GPL-3.0-or-later
// Decides what stands where on a label of a given size, what has to be left out, and when a size is too small.
//
// The law of omission: a label always carries its code, its use-by day (or the lines to write on), the signal word, the
// pictograms of at least 1 cm2 each and the hazard statements. A size that cannot is refused. Of the rest, pieces go in the
// order of LabelPiece, precautions first, until all that is left fits at a size that can be read; what then still fits
// comes back.
#pragma once

#include "ui/print/label_content.h"
#include "ui/print/label_words.h"
#include "ui/print/paper_text.h"
#include "ui/print/pictograms.h"
#include "ui/print/qr_square.h"

#include <QLineF>
#include <QLocale>
#include <QRectF>
#include <QSizeF>

#include <bitset>
#include <optional>
#include <vector>

#include <tl/expected.hpp>

namespace soakbook::ui {

using LabelPieces = std::bitset<label_piece_count>;

/// Body text is never set smaller, in points.
constexpr double least_body_points = 5.5;
constexpr double most_body_points = 12;

struct LabelStyle {
    QLocale locale;
    maths::StatementSet statements = maths::StatementSet::from_rev_9;
    int dots_per_inch = 300; ///< the grid of the square to scan
    PaperFaces faces;
};

struct PlacedText {
    PaperText text;
    QPointF at;
    double width = 0;
    double notch_height = 0; ///< the part of the top left that belongs to pictograms

    QRectF box() const { return {at.x(), at.y(), width, text.height()}; }
};

struct PlacedPictogram {
    maths::Pictogram picture;
    QRectF square;
};

struct PlacedSquare {
    QrSquare square;
    QPointF top_left; ///< of the dark part; moved to a dot when painted
    int dots = 7;     ///< a module's width
    double module = 0;

    /// With its quiet zone.
    QRectF box() const {
        const double quiet = quiet_modules * module;
        const double side = square.side() * module + 2 * quiet;
        return {top_left.x() - quiet, top_left.y() - quiet, side, side};
    }
};

/// How a label was set: enough to set its neighbours alike.
struct LabelPlan {
    LabelPieces kept;
    double body_points = least_body_points;
    bool roomy = false;           ///< facts in rows of their own
    bool pictograms_below = false; ///< one under the other
};

/// Everything in mm from the label's top left corner.
struct LabelLayout {
    QSizeF size;
    std::vector<PlacedText> texts;
    std::vector<PlacedPictogram> pictograms;
    std::optional<PlacedSquare> square;
    std::vector<QLineF> rules;       ///< strong
    std::vector<QLineF> write_lines; ///< thin, to write on
    std::vector<LabelPiece> left_out;
    LabelPlan plan;
};

/// The size cannot carry the minimum; `least` is the nearest one that can, in mm.
struct LabelTooSmall {
    QSizeF least;
};

/// Sets one label. With `like` the plan of a label alike is tried first, so that a sheet looks of one piece.
tl::expected<LabelLayout, LabelTooSmall> lay_out_label(const LabelContent& content, QSizeF size, const LabelStyle& style,
                                                       const LabelPlan* like = nullptr);
/// The refusal in a sentence with the least size that would do.
QString too_small_words(const LabelTooSmall& refusal, const QLocale& locale);

} // namespace soakbook::ui
