// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/charts/chart_output.h"

#include "ui/charts/plot.h"
#include "ui/print/paper_text.h"

#include <QBuffer>
#include <QGraphicsScene>
#include <QSvgGenerator>

namespace soakbook::ui {

namespace {

std::unique_ptr<Plot> twin_for(const Plot& plot, const ChartLook& look, QSizeF size) {
    std::unique_ptr<Plot> twin = plot.twin();
    twin->wear(look);
    twin->set_for(size);
    return twin;
}

void render(Plot& plot, QPainter& painter, const QRectF& target) {
    plot.scene()->render(&painter, target, plot.scene()->sceneRect(), Qt::KeepAspectRatio);
}

} // namespace

QImage image_of(const Plot& plot, QSizeF size, double scale) {
    const std::unique_ptr<Plot> twin = twin_for(plot, plot.worn(), size);
    QImage image((size * scale).toSize(), QImage::Format_RGB32);
    image.fill(plot.worn().ground);
    QPainter painter(&image);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.scale(scale, scale);
    render(*twin, painter, QRectF(QPointF(), size));
    return image;
}

QByteArray png_of(const Plot& plot, QSizeF size, double scale) {
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    image_of(plot, size, scale).save(&buffer, "PNG");
    return bytes;
}

QByteArray svg_of(const Plot& plot, QSizeF size) {
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    QSvgGenerator generator;
    generator.setOutputDevice(&buffer);
    generator.setTitle(plot.name());
    generator.setSize(size.toSize());
    generator.setViewBox(QRectF(QPointF(), size));
    generator.setResolution(96);
    const std::unique_ptr<Plot> twin = twin_for(plot, plot.worn(), size);
    QPainter painter(&generator);
    painter.fillRect(QRectF(QPointF(), size), plot.worn().ground);
    render(*twin, painter, QRectF(QPointF(), size));
    painter.end();
    return bytes;
}

std::optional<PaperFailure> write_picture(const Plot& plot, QSizeF size, const QString& path) {
    const bool vectors = path.endsWith(QLatin1String(".svg"), Qt::CaseInsensitive);
    return write_whole_file(path, vectors ? svg_of(plot, size) : png_of(plot, size));
}

PagedPaper paper_of(const Plot& plot, QSizeF page_mm, const QString& foot) {
    constexpr double margin = 15;
    constexpr double title_height = 12;
    const QSizeF room(page_mm.width() - 2 * margin, page_mm.height() - 2 * margin - title_height - 8);
    // Figures on paper are 9.5 points when a pixel is a 96th of an inch.
    constexpr double pixels_a_mm = 96 / 25.4;
    std::shared_ptr<Plot> twin = twin_for(plot, printed_chart_look(), room * pixels_a_mm);
    const QString title = plot.name();
    auto paint = [twin, title, foot, page_mm, room](QPainter& painter, int) {
        PaperText head({{title, 16, true}});
        head.draw(painter, {margin, margin});
        render(*twin, painter, QRectF(QPointF(margin, margin + title_height), room));
        PaperText line({{foot, 7.5}});
        line.draw(painter, {margin, page_mm.height() - margin - 4});
    };
    return {page_mm, 1, std::move(paint), title};
}

} // namespace soakbook::ui
