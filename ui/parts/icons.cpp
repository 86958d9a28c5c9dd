// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/icons.h"

#include "resources/resources.h"
#include "ui/parts/theme.h"

#include <QFile>
#include <QHash>
#include <QIconEngine>
#include <QPainter>
#include <QPixmap>
#include <QSvgRenderer>

#include <algorithm>

namespace soakbook::ui {

namespace {

const QByteArray& drawing(const QString& name) {
    static QHash<QString, QByteArray> drawings;
    auto found = drawings.find(name);
    if (found == drawings.end()) {
        open_resources();
        QFile file(QStringLiteral(":/soakbook/icons/%1.svg").arg(name));
        found = drawings.insert(name, file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray());
    }
    return found.value();
}

class LineIcon : public QIconEngine {
public:
    LineIcon(const QString& name, Tone tone) : m_name(name), m_tone(tone) {}

    void paint(QPainter* painter, const QRect& rect, QIcon::Mode mode, QIcon::State state) override {
        paint_icon(*painter, QRectF(rect), m_name, colour(mode, state));
    }

    QPixmap pixmap(const QSize& size, QIcon::Mode mode, QIcon::State state) override {
        if (size.isEmpty()) {
            return {};
        }
        QPixmap made(size);
        made.fill(Qt::transparent);
        QPainter painter(&made);
        paint(&painter, QRect(QPoint(0, 0), size), mode, state);
        return made;
    }

    QIconEngine* clone() const override { return new LineIcon(m_name, m_tone); }

private:
    QColor colour(QIcon::Mode mode, QIcon::State state) const {
        const Colours& c = colours();
        if (mode == QIcon::Disabled) {
            return c.gone;
        }
        switch (m_tone) {
        case Tone::quiet:
            return state == QIcon::On || mode == QIcon::Selected ? c.accent : c.soft_ink;
        case Tone::ink:
            return c.ink;
        case Tone::accent:
            return c.accent;
        case Tone::on_accent:
            break;
        }
        return c.accent_ink;
    }

    QString m_name;
    Tone m_tone;
};

} // namespace

QIcon icon(const QString& name, Tone tone) {
    return drawing(name).isEmpty() ? QIcon() : QIcon(new LineIcon(name, tone));
}

void paint_icon(QPainter& painter, const QRectF& rect, const QString& name, const QColor& colour) {
    QByteArray picture = drawing(name);
    if (picture.isEmpty()) {
        return;
    }
    picture.replace("currentColor", colour.name().toLatin1());
    QSvgRenderer renderer(picture);
    const double side = std::min(rect.width(), rect.height());
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    renderer.render(&painter,
                    QRectF(rect.center().x() - side / 2, rect.center().y() - side / 2, side, side));
    painter.restore();
}

int icon_size() {
    return scaled(20);
}

} // namespace soakbook::ui
