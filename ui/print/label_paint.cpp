// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/label_paint.h"

#include <QCoreApplication>

#include <cmath>

namespace soakbook::ui {

namespace {

struct LabelPaintWords {
    Q_DECLARE_TR_FUNCTIONS(LabelTestPage)
};

void draw_ruler(QPainter& painter, double length, bool down) {
    painter.setPen(QPen(Qt::black, 0.1));
    const double start = 10; // printers leave the rim of the paper white
    for (int mm = static_cast<int>(start); mm < length - start; ++mm) {
        const double tick = mm % 10 == 0 ? 4 : mm % 5 == 0 ? 2.5 : 1.2;
        const double edge = 5;
        painter.drawLine(down ? QLineF(edge, mm, edge + tick, mm) : QLineF(mm, edge, mm, edge + tick));
        if (mm % 10 == 0 && mm > 10) {
            PaperText number({{QString::number(mm), 6}});
            number.draw(painter, down ? QPointF(edge + tick + 0.5, mm - number.height() / 2)
                                      : QPointF(mm - number.natural_width() / 2, edge + tick + 0.2));
        }
    }
}

} // namespace

void count_in_millimetres(QPainter& painter, int dots_per_inch_x, int dots_per_inch_y) {
    painter.setWorldTransform(QTransform::fromScale(dots_per_inch_x / 25.4, dots_per_inch_y / 25.4));
}

void paint_label(QPainter& painter, const LabelLayout& label, QPointF corner, int dots_per_inch) {
    painter.save();
    painter.setPen(Qt::black);
    for (const PlacedText& placed : label.texts) {
        placed.text.draw(painter, corner + placed.at);
    }
    for (const PlacedPictogram& placed : label.pictograms) {
        draw_pictogram(painter, placed.picture, placed.square.translated(corner));
    }
    painter.setPen(QPen(Qt::black, 0.3));
    for (const QLineF& rule : label.rules) {
        painter.drawLine(rule.translated(corner));
    }
    painter.setPen(QPen(Qt::black, 0.15));
    for (const QLineF& line : label.write_lines) {
        painter.drawLine(line.translated(corner));
    }
    if (label.square) {
        draw_qr(painter, label.square->square, corner + label.square->top_left, label.square->dots, dots_per_inch);
    }
    painter.restore();
}

void paint_test_page(QPainter& painter, const LabelSheet& sheet) {
    painter.save();
    painter.setBrush(Qt::NoBrush);
    for (int n = 0; n < sheet.labels_a_page(); ++n) {
        const QRectF label = sheet.label_at(n);
        painter.setPen(QPen(Qt::black, 0.15));
        painter.drawRect(label);
        const QPointF middle = label.center();
        painter.drawLine(QLineF(middle - QPointF(2, 0), middle + QPointF(2, 0)));
        painter.drawLine(QLineF(middle - QPointF(0, 2), middle + QPointF(0, 2)));
        PaperText number({{QString::number(n + 1), 10, true}});
        number.draw(painter, label.topLeft() + QPointF(label.width() - number.natural_width() - 2, 1));
    }
    if (!sheet.is_roll()) {
        draw_ruler(painter, sheet.page.width(), false);
        draw_ruler(painter, sheet.page.height(), true);
    }
    //: on a test page for label sheets; the person holds the print against an empty label sheet
    PaperText how(
        {{LabelPaintWords::tr(
              "Hold this page against a sheet of labels and a window. Measure how far the lines are off, and enter "
              "it as the offset: right and down are positive."),
          sheet.label.height() > 34 ? 7.5 : 6.0}});
    // In the second column, clear of the ruler, the label's number and its middle.
    const int where = sheet.columns > 1 ? 1 : 0;
    const QRectF label = sheet.label_at(sheet.rows > 1 ? sheet.columns + where : where);
    const double left = where == 1 || sheet.is_roll() ? 2 : 14;
    how.break_lines(std::max(10.0, label.width() - left - 10));
    how.draw(painter, label.topLeft() + QPointF(left, 1));
    painter.restore();
}

} // namespace soakbook::ui
