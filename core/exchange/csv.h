// SPDX-License-Identifier: GPL-3.0-or-later
// Tables as comma-separated text (RFC 4180), to and from spreadsheets.
#pragma once

#include <QByteArray>
#include <QString>
#include <QStringList>

#include <optional>
#include <tl/expected.hpp>
#include <vector>

namespace soakbook::exchange {

/// One cell to be written. A number is written as it is; a text is guarded against being taken for a formula.
struct CsvCell {
    QString text;
    bool is_number = false;
};
using CsvRow = std::vector<CsvCell>;

struct CsvStyle {
    QChar separator = u',';       ///< `;` where the decimal mark is a comma
    bool byte_order_mark = false; ///< tells some spreadsheets that the file is UTF-8
};

/// The rows as UTF-8 with CRLF line ends. A text that begins with = + - @, a tab or a line end, after any apostrophes,
/// gets one apostrophe before it, so that no spreadsheet runs it; read_csv takes that one away again. What no text file
/// can carry (NUL, halves of surrogate pairs) is written as U+FFFD. Throws std::invalid_argument when the rows are not
/// all of one length: a table is rectangular.
QByteArray write_csv(const std::vector<CsvRow>& rows, const CsvStyle& style = {});

/// Why a file is no table.
enum class CsvFault {
    empty,       ///< not one row
    undecodable, ///< neither UTF-8 nor UTF-16 with a byte order mark, or holding NUL
    ragged,      ///< a row with more or fewer cells than the first
    stray_quote, ///< a quotation mark inside a cell that does not begin with one, or text after a closing one
    open_quote,  ///< a quotation mark that is never closed
};

struct CsvRefusal {
    CsvFault fault{};
    qint64 line = 0;        ///< line of the file where it was met, from 1; 0 for the whole file
    qsizetype cells = 0;    ///< ragged: cells of that row
    qsizetype expected = 0; ///< ragged: cells of the first row
};

/// All rows of a file, or the first reason against it; never a part. Line ends may be CRLF, LF or CR; empty lines at
/// the end are no rows. Without a separator named, the one of comma, semicolon and tab that the first row holds most
/// often outside quotation marks is taken, a comma where it holds none.
tl::expected<std::vector<QStringList>, CsvRefusal> read_csv(const QByteArray& file,
                                                            std::optional<QChar> separator = {});

} // namespace soakbook::exchange
