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
    head.entry = entry_and_seal(desk);
    if (desk.looking())
        //: At the foot of a sheet, behind how many entries the workbook held; %1 those words
        head.entry = PaperHead::tr("%1, from a workbook open only to be looked at").arg(head.entry);
    head.printed = desk.day(desk.today());
    head.paper = wants_letter(desk) ? PaperSize::letter : PaperSize::a4;
    return head;
}

QString entry_and_seal(const Desk& desk) {
    const work::Anchor anchor = work::anchor(desk.workbook());
    if (anchor.entry == 0)
        //: At the foot of a sheet: how many entries the workbook held; %1 a number
        return PaperHead::tr("Entry %1").arg(work::entry_number(desk.workbook()));
    //: At the foot of a sheet: how far the workbook had come; %1 the number of the newest entry, %2 the beginning of its seal
    return PaperHead::tr("Entry %1, seal %2").arg(anchor.entry).arg(anchor.seal);
}

QString seal_words() {
    //: In the register, after "Entry 1234, seal 0f3a2b4c5d6e7f80": what that line is good for, and what it is not
    return PaperHead::tr("Kept on paper or in another place, this line shows later whether the entries up to it are still as they were. It shows "
                         "accidents and casual edits, not the work of somebody determined, who can seal a changed workbook anew.");
}

QStringList maker_lines(const Desk& desk) {
    const work::Operation operation = work::operation(desk.workbook());
    QStringList lines{operation.name};
    lines += operation.maker.split(QLatin1Char('\n'), Qt::SkipEmptyParts);
    lines.removeAll(QString());
    return lines;
}

} // namespace soakbook::ui
