// SPDX-License-Identifier: GPL-3.0-or-later
// The lower part of a label: pictograms, signal word, statements, first aid, who made it.
#include "ui/print/label_setter.h"

#include <algorithm>

namespace soakbook::ui {

namespace {

constexpr double rule_gap = 1.0;      // mm over and under the rule
constexpr double pictogram_gap = 1.2; // mm from the pictograms to the text beside them

} // namespace

QSizeF LabelSetter::place_pictograms() {
    const maths::Hazard& hazard = m_content.hazard(m_style.statements);
    const auto n = static_cast<double>(hazard.pictograms.size());
    if (hazard.pictograms.empty()) {
        return {0, 0};
    }
    const double side = std::clamp(m_plan.body_points * 2.6, least_pictogram_square, 26.0);
    for (const maths::Pictogram picture : hazard.pictograms) {
        const auto i = static_cast<double>(m_label.pictograms.size());
        const QPointF at = m_plan.pictograms_below ? QPointF(0, i * side) : QPointF(i * side, 0);
        m_label.pictograms.push_back({picture, QRectF(at, QSizeF(side, side))});
    }
    return m_plan.pictograms_below ? QSizeF(side, n * side) : QSizeF(n * side, side);
}

std::vector<TextRun> LabelSetter::hazard_runs() const {
    const maths::Hazard& hazard = m_content.hazard(m_style.statements);
    std::vector<TextRun> runs;
    const auto add = [&](const QString& text, bool bold, double factor = 1) {
        if (!text.isEmpty()) {
            runs.push_back({text + QLatin1Char(' '), m_plan.body_points * factor, bold});
        }
    };
    add(signal_word(hazard.word), true, 1.3);
    if (keeps(LabelPiece::strength)) {
        add(strength_words(m_content), false);
    }
    add(hazard_statements(hazard), false);
    if (keeps(LabelPiece::protection)) {
        add(protection_words(hazard), false);
    }
    for (const LabelPiece piece : {LabelPiece::first_aid_eyes, LabelPiece::first_aid_skin, LabelPiece::first_aid_swallowed}) {
        if (keeps(piece)) {
            const LedText aid = first_aid(piece, hazard);
            add(aid.lead, true);
            add(aid.text, false);
        }
    }
    if (keeps(LabelPiece::handling)) {
        add(handling_words(hazard), false);
    }
    if (keeps(LabelPiece::own_use)) {
        add(own_use_words(), false);
    }
    if (!runs.empty()) {
        runs.back().text.chop(1);
    }
    return runs;
}

bool LabelSetter::place_hazard_block(bool airy) {
    const double width = m_label.size.width() - 2 * m_margin;
    const QSizeF pictures = place_pictograms();
    if (pictures.width() > width) {
        return false;
    }
    PaperText flow(hazard_runs(), Qt::AlignLeft, m_style.faces);
    PaperText maker({{keeps(LabelPiece::maker) ? maker_words(m_content) : QString(), points(0.92, least_body_points)}}, Qt::AlignLeft,
                    m_style.faces);
    Notch notch;
    double text_top = 0;
    if (!pictures.isEmpty()) {
        const double beside = width - pictures.width() - pictogram_gap;
        const double needed = std::max({flow.longest_word(), maker.longest_word(), m_plan.body_points * millimetres_per_point * 6});
        if (beside >= needed) {
            notch = {pictures.width() + pictogram_gap, pictures.height()};
        } else {
            text_top = pictures.height() + 0.5;
        }
    }
    flow.break_lines(width, notch);
    const double notch_left = std::max(0.0, notch.height - flow.height());
    maker.break_lines(width, {notch.width, notch_left});
    const double height = std::max(pictures.height(), text_top + flow.height() + maker.height());
    const double top = m_label.size.height() - m_margin - height;
    const double spare = airy ? m_label.size.height() / 12 : 0;
    if (top - 2 * rule_gap < m_y + spare) {
        return false;
    }
    if (m_label.square && top - rule_gap < m_label.square->box().bottom() - 0.2) {
        return false;
    }
    m_label.rules.emplace_back(m_margin, top - rule_gap, m_label.size.width() - m_margin, top - rule_gap);
    for (PlacedPictogram& placed : m_label.pictograms) {
        placed.square.translate(m_margin, top);
    }
    if (!flow.empty()) {
        m_label.texts.push_back({flow, {m_margin, top + text_top}, width, notch.height});
    }
    if (!maker.empty()) {
        m_label.texts.push_back({maker, {m_margin, top + text_top + flow.height()}, width, notch_left});
    }
    return true;
}

} // namespace soakbook::ui
