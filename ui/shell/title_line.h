// SPDX-License-Identifier: GPL-3.0-or-later
// The page's title on one line, shortened at its end where the window is narrow.
#pragma once

#include <QWidget>

namespace soakbook::ui {

class TitleLine : public QWidget {
    Q_OBJECT

public:
    explicit TitleLine(QWidget* parent = nullptr);
    void set_text(const QString& text);
    const QString& text() const { return m_text; }
    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    QString m_text;
};

} // namespace soakbook::ui
