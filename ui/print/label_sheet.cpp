// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/label_sheet.h"

#include <QCoreApplication>
#include <QLocale>

#include <cmath>

namespace soakbook::ui {

namespace {

struct LabelSheetWords {
    Q_DECLARE_TR_FUNCTIONS(LabelSheet)
};

constexpr double inch = 25.4;
// Half a printer's dot at 300 to the inch: below this two lengths are the same.
constexpr double hair = 0.05;

bool same(QSizeF a, QSizeF b) {
    return std::abs(a.width() - b.width()) < hair && std::abs(a.height() - b.height()) < hair;
}

QString number(double value, int decimals) {
    QString text = QLocale().toString(value, 'f', decimals);
    const QString point = QLocale().decimalPoint();
    if (text.contains(point)) {
        while (text.endsWith(QLatin1Char('0'))) {
            text.chop(1);
        }
        if (text.endsWith(point)) {
            text.chop(point.size());
        }
    }
    return text;
}

} // namespace

QRectF LabelSheet::label_at(int n) const {
    const int in_page = n % std::max(1, labels_a_page());
    const int row = in_page / std::max(1, columns);
    const int column = in_page % std::max(1, columns);
    return {QPointF(left + column * pitch_x + offset_x, top + row * pitch_y + offset_y), label};
}

LabelSheet roll_label(QSizeF label) {
    return {.page = label,
            .label = label,
            .columns = 1,
            .rows = 1,
            .left = 0,
            .top = 0,
            .pitch_x = label.width(),
            .pitch_y = label.height()};
}

std::vector<LabelSheet> stock_sheets() {
    const QSizeF a4(210, 297);
    const QSizeF letter(8.5 * inch, 11 * inch);
    return {
        {.page = a4,
         .label = {63.5, 38.1},
         .columns = 3,
         .rows = 7,
         .left = 7.25,
         .top = 15.15,
         .pitch_x = 66.0,
         .pitch_y = 38.1},
        {.page = a4,
         .label = {99.1, 67.7},
         .columns = 2,
         .rows = 4,
         .left = 4.65,
         .top = 13.1,
         .pitch_x = 101.6,
         .pitch_y = 67.7},
        {.page = a4, .label = {70, 37}, .columns = 3, .rows = 8, .left = 0, .top = 0.5, .pitch_x = 70, .pitch_y = 37},
        {.page = letter,
         .label = {4 * inch, 2 * inch},
         .columns = 2,
         .rows = 5,
         .left = 0.15625 * inch,
         .top = 0.5 * inch,
         .pitch_x = 4.1875 * inch,
         .pitch_y = 2 * inch},
    };
}

QString sheet_name(const LabelSheet& sheet) {
    //: a label's width and height
    const QString size =
        LabelSheetWords::tr("%1 x %2 mm").arg(number(sheet.label.width(), 1), number(sheet.label.height(), 1));
    if (sheet.is_roll()) {
        //: %1 is a size such as "62 x 100 mm"
        return LabelSheetWords::tr("%1, roll").arg(size);
    }
    if (same(sheet.page, {210, 297})) {
        //: %1 is a label's size, %2 how many of them are on one sheet of A4 paper
        return LabelSheetWords::tr("%1, %2 on A4").arg(size).arg(sheet.labels_a_page());
    }
    if (same(sheet.page, {8.5 * inch, 11 * inch})) {
        //: %1 and %2 are a label's width and height in inches, %3 how many of them are on one sheet of Letter paper
        return LabelSheetWords::tr("%1 x %2 in, %3 on Letter")
            .arg(number(sheet.label.width() / inch, 3), number(sheet.label.height() / inch, 3))
            .arg(sheet.labels_a_page());
    }
    //: %1 is a label's size, %2 how many are on a sheet, %3 and %4 the sheet's width and height in mm
    return LabelSheetWords::tr("%1, %2 on %3 x %4 mm")
        .arg(size)
        .arg(sheet.labels_a_page())
        .arg(number(sheet.page.width(), 1), number(sheet.page.height(), 1));
}

std::optional<SheetFault> fault_of(const LabelSheet& sheet) {
    if (sheet.columns < 1 || sheet.rows < 1 || sheet.columns > 100 || sheet.rows > 200) {
        return SheetFault::no_labels;
    }
    if (!(sheet.label.width() >= 10) || !(sheet.label.height() >= 10)) {
        return SheetFault::label_too_small;
    }
    if (!(sheet.page.width() <= 2000) || !(sheet.page.height() <= 2000)) {
        return SheetFault::page_too_large;
    }
    if (!(std::abs(sheet.offset_x) <= 20) || !(std::abs(sheet.offset_y) <= 20)) {
        return SheetFault::offset_too_far;
    }
    if ((sheet.columns > 1 && !(sheet.pitch_x > sheet.label.width() - hair)) ||
        (sheet.rows > 1 && !(sheet.pitch_y > sheet.label.height() - hair))) {
        return SheetFault::overlap;
    }
    LabelSheet at_rest = sheet;
    at_rest.offset_x = 0;
    at_rest.offset_y = 0;
    const QRectF all = at_rest.label_at(0).united(at_rest.label_at(sheet.labels_a_page() - 1));
    const QRectF page = QRectF(QPointF(), sheet.page).adjusted(-hair, -hair, hair, hair);
    return page.contains(all) ? std::nullopt : std::optional(SheetFault::off_the_page);
}

QString sheet_fault_words(SheetFault fault) {
    switch (fault) {
    case SheetFault::no_labels:
        //: why labels cannot be printed on a sheet of these dimensions
        return LabelSheetWords::tr("A sheet needs at least one column and one row of labels.");
    case SheetFault::label_too_small:
        //: why labels cannot be printed on a sheet of these dimensions
        return LabelSheetWords::tr("A label must be at least 10 mm wide and 10 mm high.");
    case SheetFault::page_too_large:
        //: why labels cannot be printed on a sheet of these dimensions
        return LabelSheetWords::tr("The sheet is larger than two metres: check its width and height.");
    case SheetFault::off_the_page:
        //: why labels cannot be printed on a sheet of these dimensions
        return LabelSheetWords::tr(
            "Labels reach over the edge of the sheet: check the margins, the steps and how many there are.");
    case SheetFault::overlap:
        //: why labels cannot be printed on a sheet of these dimensions
        return LabelSheetWords::tr(
            "Labels lie over each other: the step from one to the next must be at least the label's size.");
    case SheetFault::offset_too_far:
        //: why labels cannot be printed on a sheet of these dimensions
        return LabelSheetWords::tr("The offset is for what a printer is off: 20 mm at the most.");
    }
    return {};
}

} // namespace soakbook::ui
