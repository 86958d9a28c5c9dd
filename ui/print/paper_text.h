// SPDX-License-Identifier: GPL-3.0-or-later
// Text on paper: broken into lines by its own measure, the same on screen, printer and PDF.
#pragma once

#include <QFont>
#include <QPainter>
#include <QPointF>
#include <QRectF>
#include <QString>
#include <QTextLayout>

#include <memory>
#include <vector>

namespace soakbook::ui {

constexpr double millimetres_per_point = 25.4 / 72.0;

/// The faces that paper is set in; Noto Sans for words, DejaVu Sans Mono for codes.
struct PaperFaces {
    QString words = QStringLiteral("Noto Sans");
    QString codes = QStringLiteral("DejaVu Sans Mono");
};

/// A stretch of text in one manner.
struct TextRun {
    QString text;
    double points = 9;
    bool strong = false;
    bool code = false;
};

/// Room at the top left that something else stands in: lines that begin above `height` start `width` further in.
struct Notch {
    double width = 0;  ///< mm
    double height = 0; ///< mm
};

/// A paragraph of runs. All measures are millimetres; the painter that draws it must count in millimetres too.
class PaperText {
public:
    /// Unbroken until break_lines() is called.
    explicit PaperText(const std::vector<TextRun>& runs, Qt::Alignment alignment = Qt::AlignLeft,
                       const PaperFaces& faces = {});

    /// Breaks the lines to `width` mm. A word longer than a line is broken inside, never cut off.
    void break_lines(double width, Notch notch = {});
    /// The width that the text takes when it is never broken.
    double natural_width() const;
    /// The width that its longest word needs.
    double longest_word() const;
    double height() const { return m_height; }
    int line_count() const { return m_layout->lineCount(); }
    double line_top(int line) const;
    double line_bottom(int line) const;
    /// From the top to the first line's base.
    double base() const;
    /// Where the letters of a line are, from the paragraph's top left: as wide as its text, as high as its letters.
    QRectF line_ink(int line) const;
    QString words() const { return m_layout->text(); }
    bool empty() const { return m_layout->text().isEmpty(); }

    void draw(QPainter& painter, QPointF top_left) const;
    /// Draws lines `first` up to but without `end`, the first of them at `top_left`.
    void draw_lines(QPainter& painter, QPointF top_left, int first, int end) const;

private:
    std::shared_ptr<QTextLayout> m_layout;
    double m_height = 0;
    // Measured when asked for; below nought: not yet.
    mutable double m_natural_width = -1;
    mutable double m_longest_word = -1;
};

} // namespace soakbook::ui
