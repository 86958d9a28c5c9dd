// SPDX-License-Identifier: GPL-3.0-or-later
// A chart as a picture that leaves the program: image, SVG, paper.
#pragma once

#include "ui/print/pdf_file.h"

#include <QImage>
#include <QSizeF>

#include <memory>
#include <optional>

namespace soakbook::ui {

class Plot;

/// The chart in its own look, `scale` dots to a pixel.
QImage image_of(const Plot& plot, QSizeF size, double scale = 2);
QByteArray png_of(const Plot& plot, QSizeF size, double scale = 2);
/// The same as vectors.
QByteArray svg_of(const Plot& plot, QSizeF size);
/// Written whole or not at all, as PNG or SVG by the name's ending.
std::optional<PaperFailure> write_picture(const Plot& plot, QSizeF size, const QString& path);
/// One sheet across with the chart in greys, its name over it and `foot` at its foot.
PagedPaper paper_of(const Plot& plot, QSizeF page_mm, const QString& foot);

} // namespace soakbook::ui
