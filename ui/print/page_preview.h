// SPDX-License-Identifier: GPL-3.0-or-later
// A page as it will come out, to look at: whole page at first, larger with plus, turned with page up and page down.
#pragma once

#include "ui/print/pdf_file.h"

#include <QAbstractScrollArea>
#include <QImage>

namespace soakbook::ui {

class PagePreview : public QAbstractScrollArea {
    Q_OBJECT

public:
    explicit PagePreview(QWidget* parent = nullptr);

    /// Shows other pages; stays on the same page number where there is one.
    void show_paper(const PagedPaper& paper);
    /// Nothing to show; `words` say why.
    void show_words(const QString& words);
    int page() const { return m_page; }
    int pages() const { return m_paper.pages; }
    void go_to(int page);
    /// 1 shows the whole page; at the most 6.
    void set_zoom(double zoom);
    double zoom() const { return m_zoom; }

Q_SIGNALS:
    /// "Page 1 of 3", after each turn.
    void turned(const QString& words);

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;

private:
    double pixels_a_mm() const;
    QSizeF page_in_pixels() const { return m_paper.page * pixels_a_mm(); }
    void fit_bars();
    void say();

    PagedPaper m_paper;
    QString m_words;
    int m_page = 0;
    double m_zoom = 1;
    QImage m_picture; ///< of the page at this zoom; null: to be drawn
};

} // namespace soakbook::ui
