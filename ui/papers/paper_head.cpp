// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/papers/paper_head.h"

#include "core/work/setup.h"
#include "core/work/watch.h"

#include <QCoreApplication>

namespace soakbook::ui {

namespace {

struct PaperHead {
    Q_DECLARE_TR_FUNCTIONS(PaperHead)
};

bool wants_letter(const Desk& desk) {
    if (!desk.preferences().paper.isEmpty())
        return desk.preferences().paper == QLatin1String("letter");
    const QLocale::Territory territory = desk.locale().territory();
    return territory == QLocale::UnitedStates || territory == QLocale::Canada || territory == QLocale::Mexico;
}

} // namespace

SheetHead paper_head(const Desk& desk) {
    const QString operation = work::operation_name(desk.workbook());
    SheetHead head;
    head.workbook = operation.isEmpty() ? work::workbook_name(desk.workbook()) : operation;
    //: At the foot of a sheet: how many entries the workbook held; %1 a number
    head.entry = PaperHead::tr("Entry %1").arg(work::entry_number(desk.workbook()));
    if (desk.looking())
        //: At the foot of a sheet, behind how many entries the workbook held; %1 those words
        head.entry = PaperHead::tr("%1, from a workbook open for looking alone").arg(head.entry);
    head.printed = desk.day(desk.today());
    head.paper = wants_letter(desk) ? PaperSize::letter : PaperSize::a4;
    return head;
}

QStringList maker_lines(const Desk& desk) {
    const work::Operation operation = work::operation(desk.workbook());
    QStringList lines{operation.name};
    lines += operation.maker.split(QLatin1Char('\n'), Qt::SkipEmptyParts);
    lines.removeAll(QString());
    return lines;
}

} // namespace soakbook::ui
