// SPDX-License-Identifier: GPL-3.0-or-later
// Reads printed files back with programs that know nothing of how they were made: pdftotext, pdftoppm, zbarimg.
#pragma once

#include <QImage>
#include <QSizeF>
#include <QString>
#include <QStringList>

namespace soakbook::ui::test {

/// Runs a program; its output, or a null text when it failed or is not there.
QString output_of(const QString& program, const QStringList& arguments);
/// All text, NFKC, each run of white space one space.
QString text_of_pdf(const QString& path);
/// The text of one page, from 1.
QString text_of_page(const QString& path, int page);
int pages_of_pdf(const QString& path);
QSizeF page_size_mm(const QString& path);
/// Every page as a picture at 300 dots to the inch, read for squares.
QStringList codes_in_pdf(const QString& path, int dots_per_inch = 300);
QImage picture_of_page(const QString& path, int page, int dots_per_inch);
/// Text as text_of_pdf gives it.
QString plain(const QString& text);

} // namespace soakbook::ui::test
