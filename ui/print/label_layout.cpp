// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/label_layout.h"

#include "ui/print/label_setting.h"

#include <QCoreApplication>

#include <algorithm>
#include <array>
#include <cmath>

namespace soakbook::ui {

namespace {

struct LabelLayoutWords {
    Q_DECLARE_TR_FUNCTIONS(Label)
};

constexpr double point_step = 0.5;
constexpr double size_step = 0.5;     // mm, in the search for the least size
constexpr double largest_label = 400; // mm

std::optional<LabelLayout> set_at_least(const LabelContent& content, QSizeF size, const LabelStyle& style,
                                        LabelPieces kept) {
    for (const bool below : {false, true}) {
        if (auto label = set_label(content, size, style, {kept, least_body_points, false, below})) {
            return label;
        }
    }
    return std::nullopt;
}

// What has to go so that the rest fits at the least size of text; nothing when not even the minimum fits.
std::optional<LabelPieces> pieces_that_fit(const LabelContent& content, QSizeF size, const LabelStyle& style) {
    const LabelPieces all = pieces_of(content, style);
    LabelPieces kept = all;
    std::size_t gone = 0;
    while (!set_at_least(content, size, style, kept)) {
        while (gone < kept.size() && !kept.test(gone)) {
            ++gone;
        }
        if (gone == kept.size()) {
            return std::nullopt;
        }
        kept.reset(gone);
    }
    // What went early may still fit where something large went after it; the most wanted comes back first.
    for (std::size_t i = gone + 1; i-- > 0;) {
        if (all.test(i) && !kept.test(i)) {
            kept.set(i);
            if (!set_at_least(content, size, style, kept)) {
                kept.reset(i);
            }
        }
    }
    return kept;
}

LabelLayout largest_setting(const LabelContent& content, QSizeF size, const LabelStyle& style, LabelPieces kept) {
    for (double points = most_body_points; points >= least_body_points; points -= point_step) {
        const bool airy = points > 7;
        for (const bool roomy : {true, false}) {
            if (roomy && points < 6.5) {
                continue;
            }
            for (const bool below : {false, true}) {
                if (auto label = set_label(content, size, style, {kept, points, roomy, below}, airy)) {
                    return *label;
                }
            }
        }
    }
    return *set_at_least(content, size, style, kept);
}

std::vector<LabelPiece> missing(LabelPieces all, LabelPieces kept) {
    std::vector<LabelPiece> pieces;
    for (std::size_t i = 0; i < all.size(); ++i) {
        if (all.test(i) && !kept.test(i)) {
            pieces.push_back(static_cast<LabelPiece>(i));
        }
    }
    return pieces;
}

bool minimum_fits(const LabelContent& content, QSizeF size, const LabelStyle& style) {
    return set_at_least(content, size, style, {}).has_value();
}

QSizeF least_size(const LabelContent& content, QSizeF size, const LabelStyle& style) {
    const auto rounded_up = [](double length) { return std::ceil(length / size_step) * size_step; };
    const QSizeF from(rounded_up(size.width()), rounded_up(size.height()));
    std::optional<QSizeF> best;
    const auto try_it = [&](QSizeF candidate) {
        const bool nearer = !best || candidate.width() * candidate.height() < best->width() * best->height();
        if (nearer) {
            best = candidate;
        }
    };
    // Taller with the same width, wider with the same height, and both together.
    for (double grow = 0; grow <= largest_label; grow += size_step) {
        const std::array<QSizeF, 3> candidates = {QSizeF(from.width(), from.height() + grow),
                                                  QSizeF(from.width() + grow, from.height()),
                                                  QSizeF(from.width() + grow, from.height() + grow)};
        for (const QSizeF& candidate : candidates) {
            if (minimum_fits(content, candidate, style)) {
                try_it(candidate);
            }
        }
        if (best && (from.width() + grow) * (from.height() + grow) > best->width() * best->height() &&
            std::min(from.width() * (from.height() + grow), from.height() * (from.width() + grow)) >
                best->width() * best->height()) {
            break;
        }
    }
    return best.value_or(QSizeF(largest_label, largest_label));
}

} // namespace

tl::expected<LabelLayout, LabelTooSmall> lay_out_label(const LabelContent& content, QSizeF size,
                                                       const LabelStyle& style, const LabelPlan* like) {
    const LabelPieces all = pieces_of(content, style);
    if (like != nullptr) {
        if (auto label = set_label(content, size, style, *like)) {
            label->left_out = missing(all, like->kept);
            return *label;
        }
    }
    const std::optional<LabelPieces> kept = pieces_that_fit(content, size, style);
    if (!kept) {
        return tl::unexpected(LabelTooSmall{least_size(content, size, style)});
    }
    LabelLayout label = largest_setting(content, size, style, *kept);
    label.left_out = missing(all, *kept);
    return label;
}

QString too_small_words(const LabelTooSmall& refusal, const QLocale& locale) {
    const auto length = [&](double mm) {
        return locale.toString(mm, 'f', std::abs(mm - std::round(mm)) < 0.01 ? 0 : 1);
    };
    //: refusal of a label size; %1 and %2 are a width and a height in mm
    return LabelLayoutWords::
        tr("This label is too small: code, use by, signal word, pictograms and hazard statements must all be on it and "
           "readable. The least that would do is %1 x %2 mm.")
            .arg(length(refusal.least.width()), length(refusal.least.height()));
}

} // namespace soakbook::ui
