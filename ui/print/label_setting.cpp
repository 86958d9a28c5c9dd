// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/label_setter.h"

#include <algorithm>
#include <cmath>

namespace soakbook::ui {

// Lines break between facts, never inside one.
QString LabelSetter::joined(QStringList facts) {
    facts.removeAll(QString());
    for (QString& fact : facts) {
        fact.replace(QLatin1Char(' '), QChar::Nbsp);
    }
    return facts.join(QStringLiteral(" · "));
}

LabelSetter::LabelSetter(const LabelContent& content, QSizeF size, const LabelStyle& style, const LabelPlan& plan)
    : m_content(content), m_style(style), m_plan(plan),
      m_margin(std::clamp(std::min(size.width(), size.height()) * 0.05, 1.8, 4.0)), m_y(m_margin) {
    m_label.size = size;
    m_label.plan = plan;
}

bool LabelSetter::place_square() {
    if (!keeps(LabelPiece::square)) {
        return true;
    }
    const double wanted = std::clamp(0.423 + (m_plan.body_points - least_body_points) * 0.08, 0.423, 0.76);
    const int dots = std::max(least_dots(m_style.dots_per_inch), static_cast<int>(std::lround(wanted * m_style.dots_per_inch / 25.4)));
    const double module = module_width(dots, m_style.dots_per_inch);
    QrSquare square(m_content.code);
    const double side = square.side() * module;
    // Half a dot more, since the square moves to the nearest dot when it is painted.
    const double edge = std::max(m_margin, quiet_modules * module + 0.05);
    const QPointF top_left(m_label.size.width() - edge - side, edge);
    m_label.square = PlacedSquare{std::move(square), top_left, dots, module};
    const QRectF box = m_label.square->box();
    if (box.left() < m_margin || box.bottom() > m_label.size.height()) {
        return false;
    }
    if (!m_plan.roomy) {
        return true;
    }
    // The quiet zone stays clear of letters; the air above them may reach into it.
    double y = box.bottom() - 0.22 * points(0.9, least_body_points) * millimetres_per_point;
    for (const QString& words : {keeps(LabelPiece::batch) ? batch_words(m_content) : QString(),
                                 keeps(LabelPiece::bag_number) ? number_words(m_content) : QString()}) {
        if (words.isEmpty()) {
            continue;
        }
        PaperText caption({{words, points(0.9, least_body_points)}}, Qt::AlignRight, m_style.faces);
        // The caption must not reach further left than the square, or the facts beside it would be run over.
        if (caption.natural_width() > box.width() + m_margin) {
            return false;
        }
        const double width = box.width() + m_margin;
        caption.break_lines(width);
        const double right = m_label.size.width() - m_margin;
        m_label.texts.push_back({caption, {right - width, y}, width});
        y += caption.height();
    }
    return true;
}

double LabelSetter::width_at(double y) const {
    double right = m_label.size.width() - m_margin;
    if (m_label.square) {
        double bottom = m_label.square->box().bottom();
        for (const PlacedText& caption : m_label.texts) {
            if (caption.at.x() > m_label.square->box().left() - 2 * m_margin) {
                bottom = std::max(bottom, caption.box().bottom());
            }
        }
        if (y < bottom) {
            right = m_label.square->box().left() - (m_plan.roomy ? m_margin : 0.0);
        }
    }
    return right - m_margin;
}

bool LabelSetter::place_code() {
    PaperText code({{m_content.code, points(2.5, 11), true, true}}, Qt::AlignLeft, m_style.faces);
    const double width = width_at(m_y);
    if (code.natural_width() > width) {
        return false;
    }
    code.break_lines(width);
    m_label.texts.push_back({code, {m_margin, m_y - 0.6}, width});
    m_y += code.height() * 0.93 - 0.6;
    return true;
}

bool LabelSetter::place_line(const std::vector<TextRun>& runs) {
    PaperText text(runs, Qt::AlignLeft, m_style.faces);
    const double width = width_at(m_y);
    if (text.empty()) {
        return true;
    }
    if (text.longest_word() > width) {
        return false;
    }
    text.break_lines(width);
    m_label.texts.push_back({text, {m_margin, m_y}, width});
    m_y += text.height();
    return true;
}

bool LabelSetter::place_amount() {
    QStringList parts;
    if (keeps(LabelPiece::amount)) {
        parts.append(amount_words(m_content));
    }
    if (keeps(LabelPiece::acid_per_strip)) {
        parts.append(acid_words(m_content));
    }
    return place_line({{joined(parts), points(1.15, 6), true}});
}

std::optional<LabelLayout> LabelSetter::set(bool airy) {
    if (!place_square() || !place_code() || !place_amount()) {
        return std::nullopt;
    }
    if (m_content.reserved) {
        QStringList line;
        if (!m_plan.roomy || !m_label.square) {
            if (keeps(LabelPiece::batch)) {
                line.append(batch_words(m_content));
            }
            if (keeps(LabelPiece::bag_number)) {
                line.append(number_words(m_content));
            }
        }
        if (!place_line({plain(joined(line))}) || !place_write_lines()) {
            return std::nullopt;
        }
    } else if (!(m_plan.roomy ? place_facts_in_rows() : place_facts_in_lines())) {
        return std::nullopt;
    }
    return place_hazard_block(airy) ? std::optional(m_label) : std::nullopt;
}

LabelPieces pieces_of(const LabelContent& content, const LabelStyle& style) {
    const maths::Hazard& hazard = content.hazard(style.statements);
    LabelPieces pieces;
    const auto say = [&](LabelPiece piece, bool it) { pieces.set(static_cast<std::size_t>(piece), it); };
    say(LabelPiece::handling, !handling_words(hazard).isEmpty());
    say(LabelPiece::protection, !protection_words(hazard).isEmpty());
    for (const LabelPiece piece : {LabelPiece::first_aid_skin, LabelPiece::first_aid_swallowed, LabelPiece::first_aid_eyes}) {
        say(piece, !first_aid(piece, hazard).text.isEmpty());
    }
    say(LabelPiece::maker, !content.maker.isEmpty());
    say(LabelPiece::bag_number, content.number > 0);
    say(LabelPiece::rest_until, content.rest_until.has_value() && !content.reserved);
    say(LabelPiece::batch, !content.batch_code.isEmpty());
    say(LabelPiece::strength, !content.strength.isEmpty());
    say(LabelPiece::sealed, content.sealed.has_value() && !content.reserved);
    say(LabelPiece::own_use, true);
    say(LabelPiece::acid_per_strip, !content.acid_per_strip.isEmpty());
    say(LabelPiece::amount, true);
    say(LabelPiece::square, true);
    return pieces;
}

std::optional<LabelLayout> set_label(const LabelContent& content, QSizeF size, const LabelStyle& style, const LabelPlan& plan,
                                     bool airy) {
    return LabelSetter(content, size, style, plan).set(airy);
}

} // namespace soakbook::ui
