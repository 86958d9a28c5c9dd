// SPDX-License-Identifier: GPL-3.0-or-later
// The hand that sets one label: inner part of label_setting.
#pragma once

#include "ui/print/label_setting.h"

namespace soakbook::ui {

struct Fact {
    QString name;
    QString value;
    bool large = false;
};

/// Sets a label from the top down: the square and the code, the facts or the lines to write on; and the hazard block from
/// the bottom up.
class LabelSetter {
public:
    LabelSetter(const LabelContent& content, QSizeF size, const LabelStyle& style, const LabelPlan& plan);
    std::optional<LabelLayout> set(bool airy);

private:
    bool keeps(LabelPiece piece) const { return m_plan.kept.test(static_cast<std::size_t>(piece)); }
    double points(double factor, double least) const { return std::max(least, m_plan.body_points * factor); }
    TextRun plain(const QString& text) const { return {text, m_plan.body_points}; }
    TextRun strong(const QString& text) const { return {text, m_plan.body_points, true}; }
    QString day(const std::optional<maths::Day>& d) const;

    static QString joined(QStringList facts);

    bool place_square();
    double width_at(double y) const;
    bool place_code();
    bool place_line(const std::vector<TextRun>& runs);
    bool place_amount();
    bool place_facts_in_rows();
    bool place_facts_in_lines();
    bool place_write_lines();
    std::vector<Fact> facts() const;
    std::vector<QString> names_to_write_on() const;
    QSizeF place_pictograms();
    std::vector<TextRun> hazard_runs() const;
    bool place_hazard_block(bool airy);

    const LabelContent& m_content;
    const LabelStyle& m_style;
    const LabelPlan& m_plan;
    LabelLayout m_label;
    double m_margin;
    double m_y;
};

} // namespace soakbook::ui
