// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/watch.h"

#include "core/book/queries/figures.h"
#include "core/book/seal.h"
#include "core/book/workbook.h"

#include <QFileInfo>

namespace soakbook::work {

std::function<void()> watch(book::Workbook& workbook, std::function<void()> tell) {
    return workbook.subscribe([tell = std::move(tell)](const book::Changed&) { tell(); });
}

QString workbook_name(const book::Workbook& workbook) { return QFileInfo(workbook.path()).fileName(); }
QString workbook_uid(const book::Workbook& workbook) { return QString::fromLatin1(workbook.uid().toHex()); }
QString workbook_path(const book::Workbook& workbook) { return workbook.path(); }
qint64 entry_number(const book::Workbook& workbook) { return workbook.last_seq(); }
bool is_for_looking(const book::Workbook& workbook) { return workbook.is_for_looking(); }
Anchor anchor(const book::Workbook& workbook) {
    constexpr qsizetype digits_shown = 16;
    const book::Seal seal = book::newest_seal(workbook.db());
    return {seal.last_seq, QString::fromLatin1(seal.hash.toHex().left(digits_shown))};
}
QString operation_name(const book::Workbook& workbook) { return book::operation_name(workbook); }

} // namespace soakbook::work
