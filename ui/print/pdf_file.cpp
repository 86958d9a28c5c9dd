// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/pdf_file.h"

#include "ui/print/label_paint.h"

#include <QBuffer>
#include <QDir>
#include <QFileInfo>
#include <QPageLayout>
#include <QPageSize>
#include <QPdfWriter>
#include <QSaveFile>

#include <cerrno>

namespace soakbook::ui {

namespace {

PaperFault fault_from(int code) {
    return code == ENOSPC || code == EFBIG || code == EDQUOT ? PaperFault::no_space : PaperFault::read_only;
}

} // namespace

QByteArray pdf_of(const PagedPaper& paper) {
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    {
        QPdfWriter writer(&buffer);
        // Multiples of 300 to the inch, so that codes set on that grid lie on whole units.
        writer.setResolution(1200);
        writer.setTitle(paper.title);
        writer.setCreator(QStringLiteral("Soakbook"));
        writer.setPageMargins(QMarginsF());
        writer.setPageSize(QPageSize(paper.page, QPageSize::Millimeter, QString(), QPageSize::ExactMatch));
        QPainter painter(&writer);
        for (int page = 0; page < paper.pages; ++page) {
            if (page > 0) {
                writer.newPage();
            }
            painter.save();
            count_in_millimetres(painter, writer.logicalDpiX(), writer.logicalDpiY());
            paper.paint(painter, page);
            painter.restore();
        }
    }
    return bytes;
}

std::optional<PaperFailure> write_whole_file(const QString& path, const QByteArray& bytes) {
    if (!QFileInfo(path).dir().exists()) {
        return PaperFailure{PaperFault::no_such_folder, path};
    }
    QSaveFile file(path);
    errno = 0;
    if (!file.open(QIODevice::WriteOnly)) {
        return PaperFailure{fault_from(errno), path};
    }
    const bool written = file.write(bytes) == bytes.size();
    const bool flushed = written && file.flush();
    const int code = errno;
    if (!flushed || !file.commit()) {
        return PaperFailure{fault_from(flushed ? errno : code), path};
    }
    return std::nullopt;
}

std::optional<PaperFailure> write_pdf(const PagedPaper& paper, const QString& path) {
    if (paper.pages < 1) {
        return PaperFailure{PaperFault::nothing, path};
    }
    return write_whole_file(path, pdf_of(paper));
}

} // namespace soakbook::ui
