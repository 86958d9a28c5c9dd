// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/paper_text.h"

#include <QFontMetricsF>
#include <QTextOption>

#include <algorithm>

namespace soakbook::ui {

namespace {

// Fonts are set in hundredths of a millimetre: whole pixels as Qt wants them, fine enough that no device's dots or
// hinting change where a line breaks.
constexpr double grain = 100.0;
constexpr double widest = 1e5; // mm, a line that is never broken
// A rounding_hair more, so that rounding never breaks a line that was given exactly its own width.
constexpr double rounding_hair = 0.02;

QFont paper_font(const TextRun& run, const PaperFaces& faces) {
    QFont font(run.code ? faces.codes : faces.words);
    font.setPixelSize(std::max(1, qRound(run.points * millimetres_per_point * grain)));
    font.setWeight(run.strong ? QFont::Bold : QFont::Normal);
    font.setHintingPreference(QFont::PreferNoHinting);
    font.setStyleStrategy(QFont::PreferOutline);
    return font;
}

} // namespace

PaperText::PaperText(const std::vector<TextRun>& runs, Qt::Alignment alignment, const PaperFaces& faces) {
    QString text;
    QList<QTextLayout::FormatRange> formats;
    for (const TextRun& run : runs) {
        QTextLayout::FormatRange range;
        range.start = static_cast<int>(text.size());
        range.length = static_cast<int>(run.text.size());
        range.format.setFont(paper_font(run, faces));
        formats.append(range);
        text += run.text;
    }
    text.replace(QLatin1Char('\n'), QChar::LineSeparator);
    // A number is not parted from its unit: the thin space becomes one that does not break.
    text.replace(QChar(0x2009), QChar(0x202F));
    m_layout = std::make_shared<QTextLayout>(text, paper_font(runs.empty() ? TextRun{} : runs.front(), faces));
    m_layout->setFormats(formats);
    QTextOption option(alignment);
    option.setUseDesignMetrics(true);
    option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
    m_layout->setTextOption(option);
    break_lines(widest);
}

double PaperText::longest_word() const {
    if (m_longest_word < 0) {
        m_longest_word = 0;
        for (const QTextLayout::FormatRange& run : m_layout->formats()) {
            const QFontMetricsF metrics(run.format.font());
            for (const QString& word : m_layout->text().mid(run.start, run.length).split(QLatin1Char(' '), Qt::SkipEmptyParts)) {
                m_longest_word = std::max(m_longest_word, metrics.horizontalAdvance(word) / grain);
            }
        }
        m_longest_word += rounding_hair;
    }
    return m_longest_word;
}

double PaperText::natural_width() const {
    if (m_natural_width < 0) {
        m_natural_width = 0;
        QTextLayout unbroken(m_layout->text(), m_layout->font());
        unbroken.setFormats(m_layout->formats());
        unbroken.setTextOption(m_layout->textOption());
        unbroken.beginLayout();
        for (QTextLine line = unbroken.createLine(); line.isValid(); line = unbroken.createLine()) {
            line.setLineWidth(widest * grain);
            m_natural_width = std::max(m_natural_width, line.naturalTextWidth() / grain);
        }
        unbroken.endLayout();
        m_natural_width += rounding_hair;
    }
    return m_natural_width;
}

void PaperText::break_lines(double width, Notch notch) {
    m_layout->beginLayout();
    double y = 0;
    for (QTextLine line = m_layout->createLine(); line.isValid(); line = m_layout->createLine()) {
        const double indent = y < notch.height * grain ? notch.width * grain : 0.0;
        line.setLineWidth(std::max(grain, width * grain - indent));
        line.setPosition({indent, y});
        y += line.height();
    }
    m_layout->endLayout();
    m_height = m_layout->text().isEmpty() ? 0.0 : y / grain;
}

double PaperText::line_top(int line) const { return m_layout->lineAt(line).y() / grain; }

double PaperText::line_bottom(int line) const {
    const QTextLine it = m_layout->lineAt(line);
    return (it.y() + it.height()) / grain;
}

double PaperText::base() const { return m_layout->lineCount() == 0 ? 0.0 : m_layout->lineAt(0).ascent() / grain; }

QRectF PaperText::line_ink(int line) const {
    const QTextLine it = m_layout->lineAt(line);
    const QRectF text = it.naturalTextRect();
    // Letters with an accent or a tail reach about this far from the base line; the rest of the line is air.
    const double base = it.y() + it.ascent();
    const double size = (it.ascent() + it.descent()) / 1.362;
    return QRectF(text.left() / grain, (base - 0.78 * size) / grain, text.width() / grain, 0.99 * size / grain);
}

void PaperText::draw(QPainter& painter, QPointF top_left) const {
    draw_lines(painter, top_left, 0, m_layout->lineCount());
}

void PaperText::draw_lines(QPainter& painter, QPointF top_left, int first, int end) const {
    if (first >= end) {
        return;
    }
    painter.save();
    painter.translate(top_left);
    painter.scale(1 / grain, 1 / grain);
    const QPointF shift(0, -m_layout->lineAt(first).y());
    for (int i = first; i < end; ++i) {
        m_layout->lineAt(i).draw(&painter, shift);
    }
    painter.restore();
}

} // namespace soakbook::ui
