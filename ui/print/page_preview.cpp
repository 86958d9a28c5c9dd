// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/page_preview.h"

#include "ui/parts/theme.h"

#include <QKeyEvent>
#include <QScrollBar>
#include <QWheelEvent>

#include <algorithm>
#include <cmath>

namespace soakbook::ui {

namespace {

constexpr double rim = 16; // pixels around the page

} // namespace

PagePreview::PagePreview(QWidget* parent) : QAbstractScrollArea(parent) {
    setFocusPolicy(Qt::StrongFocus);
    setFrameShape(QFrame::NoFrame);
    //: what a screen reader calls the picture of the page to be printed
    setAccessibleName(tr("Preview of the page"));
}

void PagePreview::show_paper(const PagedPaper& paper) {
    m_paper = paper;
    m_words.clear();
    m_picture = {};
    m_page = std::clamp(m_page, 0, std::max(0, paper.pages - 1));
    fit_bars();
    say();
    viewport()->update();
}

void PagePreview::show_words(const QString& words) {
    m_paper = {};
    m_words = words;
    m_picture = {};
    fit_bars();
    Q_EMIT turned(QString());
    viewport()->update();
}

void PagePreview::go_to(int page) {
    const int wanted = std::clamp(page, 0, std::max(0, m_paper.pages - 1));
    if (wanted == m_page) {
        return;
    }
    m_page = wanted;
    m_picture = {};
    verticalScrollBar()->setValue(0);
    say();
    viewport()->update();
}

void PagePreview::set_zoom(double zoom) {
    m_zoom = std::clamp(zoom, 1.0, 6.0);
    m_picture = {};
    fit_bars();
    viewport()->update();
}

double PagePreview::pixels_a_mm() const {
    if (m_paper.page.isEmpty()) {
        return 1;
    }
    const double across = (viewport()->width() - 2 * rim) / m_paper.page.width();
    const double down = (viewport()->height() - 2 * rim) / m_paper.page.height();
    return std::max(0.2, std::min(across, down)) * m_zoom;
}

void PagePreview::fit_bars() {
    const QSizeF whole = page_in_pixels() + QSizeF(2 * rim, 2 * rim);
    const auto fit = [](QScrollBar* bar, double length, int room) {
        bar->setRange(0, std::max(0, static_cast<int>(std::ceil(length)) - room));
        bar->setPageStep(room);
        bar->setSingleStep(40);
    };
    // At zoom 1 the page fits by its making; a bar would only take room away and come and go.
    fit(horizontalScrollBar(), m_zoom > 1 ? whole.width() : 0, viewport()->width());
    fit(verticalScrollBar(), m_zoom > 1 ? whole.height() : 0, viewport()->height());
}

void PagePreview::say() {
    if (m_paper.pages > 0) {
        //: under the preview
        Q_EMIT turned(tr("Page %1 of %2").arg(m_page + 1).arg(m_paper.pages));
    }
}

void PagePreview::resizeEvent(QResizeEvent* event) {
    QAbstractScrollArea::resizeEvent(event);
    m_picture = {};
    fit_bars();
}

void PagePreview::paintEvent(QPaintEvent*) {
    QPainter painter(viewport());
    const Colours& c = colours();
    painter.fillRect(viewport()->rect(), c.paper);
    if (m_paper.pages < 1) {
        painter.setPen(c.soft_ink);
        painter.drawText(viewport()->rect().adjusted(24, 24, -24, -24), Qt::AlignCenter | Qt::TextWordWrap, m_words);
        return;
    }
    const QSizeF size = page_in_pixels();
    const double dots = devicePixelRatioF();
    if (m_picture.isNull()) {
        m_picture = QImage((size * dots).toSize(), QImage::Format_RGB32);
        m_picture.fill(Qt::white);
        QPainter page(&m_picture);
        page.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing);
        page.scale(pixels_a_mm() * dots, pixels_a_mm() * dots);
        m_paper.paint(page, m_page);
    }
    const double x = std::max(rim, (viewport()->width() - size.width()) / 2) - horizontalScrollBar()->value();
    const double y = std::max(rim, (viewport()->height() - size.height()) / 2) - verticalScrollBar()->value();
    const QRectF target(x, y, size.width(), size.height());
    painter.drawImage(target, m_picture);
    painter.setPen(QPen(c.line, 1));
    painter.drawRect(target);
    if (hasFocus()) {
        painter.setPen(QPen(c.accent, 2));
        painter.drawRect(viewport()->rect().adjusted(1, 1, -2, -2));
    }
}

void PagePreview::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
    case Qt::Key_PageDown:
        go_to(m_page + 1);
        return;
    case Qt::Key_PageUp:
        go_to(m_page - 1);
        return;
    case Qt::Key_Home:
        go_to(0);
        return;
    case Qt::Key_End:
        go_to(m_paper.pages - 1);
        return;
    case Qt::Key_Plus:
    case Qt::Key_Equal:
        set_zoom(m_zoom * 1.5);
        return;
    case Qt::Key_Minus:
        set_zoom(m_zoom / 1.5);
        return;
    case Qt::Key_0:
        set_zoom(1);
        return;
    default:
        QAbstractScrollArea::keyPressEvent(event);
    }
}

void PagePreview::wheelEvent(QWheelEvent* event) {
    if (event->modifiers().testFlag(Qt::ControlModifier)) {
        set_zoom(event->angleDelta().y() > 0 ? m_zoom * 1.25 : m_zoom / 1.25);
        event->accept();
    } else if (m_zoom <= 1) {
        go_to(m_page + (event->angleDelta().y() < 0 ? 1 : -1));
        event->accept();
    } else {
        QAbstractScrollArea::wheelEvent(event);
    }
}

} // namespace soakbook::ui
