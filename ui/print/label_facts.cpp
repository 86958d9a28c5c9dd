// SPDX-License-Identifier: GPL-3.0-or-later
// The facts of a label, or the lines to write them on.
#include "core/exchange/date_text.h"
#include "ui/print/label_setter.h"

#include <QCoreApplication>

#include <algorithm>

namespace soakbook::ui {

namespace {

struct LabelFactsWords {
    Q_DECLARE_TR_FUNCTIONS(Label)
};

constexpr double caption_gap = 1.5; // mm between a fact's name and the fact

} // namespace

QString LabelSetter::day(const std::optional<maths::Day>& d) const {
    return d ? exchange::write_day(*d, m_style.locale) : QString();
}

std::vector<Fact> LabelSetter::facts() const {
    std::vector<Fact> all;
    if (m_content.sealed && keeps(LabelPiece::sealed)) {
        //: on a label, before a date
        all.push_back({LabelFactsWords::tr("Sealed"), day(m_content.sealed)});
    }
    if (m_content.rest_until && keeps(LabelPiece::rest_until)) {
        //: on a label, before a date
        all.push_back({LabelFactsWords::tr("Rest until"), day(m_content.rest_until)});
    }
    if (m_content.use_by) {
        //: on a label, before a date
        all.push_back({LabelFactsWords::tr("Use by"), day(m_content.use_by), true});
    }
    return all;
}

bool LabelSetter::place_facts_in_rows() {
    struct Row {
        PaperText name;
        PaperText value;
    };
    std::vector<Row> rows;
    double name_width = 0;
    m_y += 0.6;
    for (const Fact& fact : facts()) {
        rows.push_back({PaperText({plain(fact.name)}, Qt::AlignLeft, m_style.faces),
                        PaperText({{fact.value, fact.large ? points(1.75, 10) : m_plan.body_points, true}},
                                  Qt::AlignLeft, m_style.faces)});
        name_width = std::max(name_width, rows.back().name.natural_width());
    }
    for (Row& row : rows) {
        const double value_width = width_at(m_y) - name_width - caption_gap;
        if (row.value.natural_width() > value_width) {
            return false;
        }
        row.name.break_lines(name_width);
        row.value.break_lines(value_width);
        // Names and values stand on one base line, whatever their sizes.
        const double drop = (row.value.height() - row.name.height()) * 0.78;
        m_label.texts.push_back({row.name, {m_margin, m_y + drop}, name_width});
        m_label.texts.push_back({row.value, {m_margin + name_width + caption_gap, m_y}, value_width});
        m_y += row.value.height() + 0.25;
    }
    return true;
}

bool LabelSetter::place_facts_in_lines() {
    QStringList line;
    for (const Fact& fact : facts()) {
        if (!fact.large) {
            //: on a small label: %1 is "Sealed" or "Rest until", %2 a date
            line.append(LabelFactsWords::tr("%1 %2").arg(fact.name.toLower(), fact.value));
        }
    }
    if (keeps(LabelPiece::batch)) {
        line.append(batch_words(m_content));
    }
    if (keeps(LabelPiece::bag_number)) {
        line.append(number_words(m_content));
    }
    if (!place_line({plain(joined(line))})) {
        return false;
    }
    if (!m_content.use_by) {
        return true;
    }
    //: on a label; %1 is a date
    return place_line({{LabelFactsWords::tr("Use by %1").arg(day(m_content.use_by)), points(1.5, 9), true}});
}

std::vector<QString> LabelSetter::names_to_write_on() const {
    std::vector<QString> names;
    if (m_content.kind == LabelKind::bag) {
        //: on a label, before a line to write the number of strips on
        names.push_back(LabelFactsWords::tr("Strips"));
    }
    //: on a label, before a line to write on
    names.push_back(LabelFactsWords::tr("Weight"));
    //: on a label, before a line to write a date on
    names.push_back(LabelFactsWords::tr("Sealed"));
    if (m_content.kind == LabelKind::bag) {
        //: on a label, before a line to write a date on
        names.push_back(LabelFactsWords::tr("Use by"));
    }
    return names;
}

bool LabelSetter::place_write_lines() {
    const double height_of_a_row = m_plan.roomy ? 7.0 : 5.4;
    constexpr double least_line = 13; // mm that a pen needs for a date
    const std::size_t across = m_plan.roomy ? 1 : 2;
    const std::vector<QString> names = names_to_write_on();
    for (std::size_t i = 0; i < names.size(); i += across) {
        const std::size_t here = std::min(across, names.size() - i);
        const double cell = (width_at(m_y) + caption_gap) / static_cast<double>(across);
        for (std::size_t k = 0; k < here; ++k) {
            PaperText name({strong(names[i + k])}, Qt::AlignLeft, m_style.faces);
            const double x = m_margin + static_cast<double>(k) * cell;
            const double from = x + name.natural_width() + 0.8;
            const double to = x + cell - caption_gap;
            if (to - from < least_line) {
                return false;
            }
            name.break_lines(name.natural_width());
            const double base = m_y + height_of_a_row - 0.6;
            m_label.texts.push_back({name, {x, base - name.height() * 0.86}, name.natural_width()});
            m_label.write_lines.emplace_back(from, base, to, base);
        }
        m_y += height_of_a_row;
    }
    return true;
}

} // namespace soakbook::ui
