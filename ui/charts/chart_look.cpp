// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/charts/chart_look.h"

#include "ui/parts/theme.h"

namespace soakbook::ui {

namespace {

QColor mixed(const QColor& a, const QColor& b, float part) {
    const auto between = [part](float x, float y) { return x + (y - x) * part; };
    return QColor::fromRgbF(between(a.redF(), b.redF()), between(a.greenF(), b.greenF()),
                            between(a.blueF(), b.blueF()));
}

} // namespace

ChartLook chart_look() {
    const Colours& c = colours();
    ChartLook chart;
    chart.ground = c.card;
    chart.line = c.line;
    chart.ink = c.ink;
    chart.soft = c.soft_ink;
    chart.measured = c.accent;
    chart.lighter = mixed(c.accent, c.card, 0.5F);
    chart.pale = mixed(c.accent, c.card, 0.75F);
    chart.wanted = mixed(c.ready, c.card, 0.86F);
    chart.wanted_ink = c.ready;
    chart.near = c.near_limit;
    chart.past = c.past;
    chart.text = type_font(Type::small);
    return chart;
}

ChartLook printed_chart_look() {
    const auto grey = [](int level) { return QColor(level, level, level); };
    ChartLook chart;
    chart.ground = grey(255);
    chart.line = grey(205);
    chart.ink = grey(0);
    chart.soft = grey(70);
    chart.measured = grey(0);
    chart.lighter = grey(120);
    chart.pale = grey(205);
    chart.wanted = grey(230);
    chart.wanted_ink = grey(60);
    chart.near = grey(40);
    chart.past = grey(0);
    chart.text = QFont(QStringLiteral("Noto Sans"));
    chart.text.setPointSizeF(9.5);
    chart.on_paper = true;
    return chart;
}

} // namespace soakbook::ui
