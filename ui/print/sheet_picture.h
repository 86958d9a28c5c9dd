// SPDX-License-Identifier: GPL-3.0-or-later
// A small picture of a sheet of labels, to show and choose where printing begins.
#pragma once

#include "ui/print/label_sheet.h"

#include <QWidget>

namespace soakbook::ui {

class SheetPicture : public QWidget {
    Q_OBJECT

public:
    explicit SheetPicture(QWidget* parent = nullptr);
    /// `count` labels are to be printed from label `start` (from 0) on.
    void show_sheet(const LabelSheet& sheet, int start, int count);
    int start() const { return m_start; }
    QRectF place_of(int label) const; ///< where label n is painted

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override { return sizeHint(); }

Q_SIGNALS:
    void start_chosen(int start);

protected:
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    void choose(int start);
    LabelSheet m_sheet;
    int m_start = 0;
    int m_count = 0;
};

} // namespace soakbook::ui
