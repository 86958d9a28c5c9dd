// SPDX-License-Identifier: GPL-3.0-or-later
// The command-line programs that results are read with: no code of this house looks at what it wrote itself.
#pragma once

#include <QString>
#include <QStringList>

namespace soakbook::tests {

/// What sqlite3 answers, a row a line, cells parted by '|'. The file is opened read-only.
QString ask_file(const QString& workbook, const QString& sql);
/// The text of a PDF by pdftotext, laid out as on the page.
QString text_of_pdf(const QString& pdf);
/// The contents of all QR codes in a PDF by pdftoppm and zbarimg, sorted.
QStringList codes_in_pdf(const QString& pdf);
QString text_of_file(const QString& path);
/// Runs a program and gives back what it said; a failed test where it did not end well.
QString run(const QString& program, const QStringList& arguments, int wait_ms = 60000);

} // namespace soakbook::tests
