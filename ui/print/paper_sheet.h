// SPDX-License-Identifier: GPL-3.0-or-later
// A sheet of paper for where no computer goes: title, facts, cautions, tables with room to write. Plain data; sheet_pages
// sets it on pages. Black on white, Noto Sans, nothing ever cut off: what is long is wrapped, what is longer goes on overleaf.
#pragma once

#include <QMarginsF>
#include <QSizeF>
#include <QString>
#include <QStringList>

#include <variant>
#include <vector>

namespace soakbook::ui {

enum class PaperSize { a4, letter };

struct SheetPage {
    PaperSize size = PaperSize::a4;
    bool landscape = false;
    QMarginsF margins{15, 14, 15, 14}; ///< mm

    QSizeF size_mm() const;
};

/// "Strength: 42 %".
struct SheetFact {
    QString name;
    QString value; ///< empty: a line to write on
};

enum class ColumnKind {
    text,
    number,   ///< to the right
    code,     ///< in the face for codes
    date,     ///< not broken where it can be helped
    write_in, ///< a box to write in; a cell's text stands small and grey in its corner
    tick,     ///< a small square to tick
};

struct SheetColumn {
    QString header;
    double share = 1;    ///< of the width, against the other columns' shares
    ColumnKind kind = ColumnKind::text;
    double least = 0;    ///< mm
};

struct SheetRow {
    QStringList cells;
    bool heading = false; ///< the first cell runs across the whole table, strong
    bool strong = false;  ///< a total
    bool struck = false;  ///< made void: still read, with a line through all but its last cell
};

struct SheetTable {
    QString title; ///< may be empty
    std::vector<SheetColumn> columns;
    std::vector<SheetRow> rows;
    double row_height = 6;      ///< mm at the least; 9 where one writes
    QString words_when_empty;   ///< instead of a table without rows
};

/// A paragraph or a heading.
struct SheetText {
    QString text;
    bool heading = false; ///< over what follows
};

/// Cautions: a rule at the left, always whole.
struct SheetCautions {
    QStringList sentences;
};

/// Things to tick, one under the other, each with an optional line to write on.
struct SheetTicks {
    QString title;
    QStringList things;
    bool with_line = false;
    int columns = 1;
};

/// Room to write, with lines.
struct SheetNotes {
    QString title;
    int lines = 4;
};

struct SheetFacts {
    std::vector<SheetFact> facts;
    int columns = 2;
};

using SheetBlock = std::variant<SheetFacts, SheetText, SheetCautions, SheetTable, SheetTicks, SheetNotes>;

struct PaperSheet {
    QString title;
    QString subtitle; ///< small, beside the title: yard, batch, range of dates
    std::vector<SheetBlock> blocks;
    SheetPage page;
    // The foot of each page.
    QString workbook;
    QString entry;   ///< "Entry 1 204"
    QString printed; ///< the day of printing
};

} // namespace soakbook::ui
