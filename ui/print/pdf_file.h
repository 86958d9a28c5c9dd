// SPDX-License-Identifier: GPL-3.0-or-later
// A PDF that is whole or not there at all.
#pragma once

#include "ui/print/paper_failure.h"

#include <QByteArray>
#include <QPainter>
#include <QSizeF>
#include <QString>

#include <functional>
#include <optional>

namespace soakbook::ui {

/// Paints page `page` (from 0); the painter counts in millimetres from the corner of the paper.
using PagePainter = std::function<void(QPainter& painter, int page)>;

/// Something to print: pages of one size.
struct PagedPaper {
    QSizeF page; ///< mm, as it lies before the reader
    int pages = 0;
    PagePainter paint;
    QString title; ///< for the file's own description
};

/// The PDF as bytes, all vectors.
QByteArray pdf_of(const PagedPaper& paper);
/// Writes bytes under a passing name beside `path` and renames: no part of a file ever stands under the final name, and a
/// file that stood there before stays when the writing fails.
std::optional<PaperFailure> write_whole_file(const QString& path, const QByteArray& bytes);
std::optional<PaperFailure> write_pdf(const PagedPaper& paper, const QString& path);

} // namespace soakbook::ui
