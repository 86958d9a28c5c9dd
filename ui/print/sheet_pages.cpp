// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/sheet_pages.h"

#include "ui/print/sheet_setter.h"

#include <QCoreApplication>

#include <algorithm>

namespace soakbook::ui {

namespace {

struct SheetPagesWords {
    Q_DECLARE_TR_FUNCTIONS(PaperSheet)
};

constexpr double foot_height = 6;  // mm
constexpr double block_gap = 4;    // mm between blocks
constexpr double write_height = 8; // mm that a hand needs

} // namespace

QSizeF SheetPage::size_mm() const {
    const QSizeF upright = size == PaperSize::a4 ? QSizeF(210, 297) : QSizeF(215.9, 279.4);
    return landscape ? upright.transposed() : upright;
}

SheetSetter::SheetSetter(const PaperSheet& sheet) : m_sheet(sheet), m_size(sheet.page.size_mm()) {
    m_pages.page = m_size;
    m_pages.title = sheet.title;
    turn_page();
}

double SheetSetter::bottom() const {
    return m_size.height() - m_sheet.page.margins.bottom() - foot_height;
}

void SheetSetter::turn_page() {
    m_pages.pages.emplace_back();
    m_y = m_sheet.page.margins.top();
    if (m_pages.pages.size() > 1) {
        // Overleaf one still knows which sheet it is.
        const QString title =
            m_sheet.subtitle.isEmpty() ? m_sheet.title : m_sheet.title + QStringLiteral(" · ") + m_sheet.subtitle;
        PaperText running({{title, sheet_small_points, true}});
        running.break_lines(width());
        put(running, {left(), m_y});
        m_y += running.height() + 2;
    }
    m_top = m_y;
}

void SheetSetter::need(double height) {
    if (height > room() && !page_is_fresh()) {
        turn_page();
    }
}

void SheetSetter::flow(PaperText text, double indent) {
    text.break_lines(width() - indent);
    int line = 0;
    while (line < text.line_count()) {
        int end = line;
        while (end < text.line_count() && text.line_bottom(end) - text.line_top(line) <= room()) {
            ++end;
        }
        if (end == line) {
            if (page_is_fresh()) {
                ++end; // a line taller than a page: it is set all the same
            } else {
                turn_page();
                continue;
            }
        }
        page().texts.push_back({text, {left() + indent, m_y}, line, end, false});
        m_y += text.line_bottom(end - 1) - text.line_top(line);
        line = end;
        if (line < text.line_count()) {
            turn_page();
        }
    }
}

void SheetSetter::set_title() {
    flow(PaperText({{m_sheet.title, 16, true}}));
    if (!m_sheet.subtitle.isEmpty()) {
        flow(PaperText({{m_sheet.subtitle, 10.5}}));
    }
    m_y += 1;
    page().rules.push_back({QLineF(left(), m_y, left() + width(), m_y), 0.4});
    m_y += block_gap;
}

void SheetSetter::set_foot() {
    const int pages = static_cast<int>(m_pages.pages.size());
    const double y = m_size.height() - m_sheet.page.margins.bottom() - foot_height + 2.5;
    QStringList parts = {m_sheet.workbook, m_sheet.entry};
    if (!m_sheet.printed.isEmpty()) {
        //: at the foot of a printed sheet; %1 is a date
        parts.append(SheetPagesWords::tr("printed %1").arg(m_sheet.printed));
    }
    parts.removeAll(QString());
    for (int i = 0; i < pages; ++i) {
        SheetPageInk& at = m_pages.pages[static_cast<std::size_t>(i)];
        at.rules.push_back({QLineF(left(), y - 1, left() + width(), y - 1), 0.15});
        //: at the foot of a printed sheet
        PaperText number({{SheetPagesWords::tr("page %1 of %2").arg(i + 1).arg(pages), sheet_small_points}});
        const double number_width = number.natural_width();
        number.break_lines(number_width);
        at.texts.push_back({number, {left() + width() - number_width, y}, 0, number.line_count(), false});
        PaperText line({{parts.join(QStringLiteral(" · ")), sheet_small_points}});
        line.break_lines(width() - number_width - 5);
        at.texts.push_back({line, {left(), y}, 0, line.line_count(), false});
    }
}

void SheetSetter::set_block(const SheetText& block) {
    if (block.text.isEmpty()) {
        return;
    }
    if (block.heading) {
        need(write_height * 2);
    }
    flow(PaperText({{block.text, block.heading ? sheet_heading_points : sheet_points, block.heading}}));
}

// What is said comes first, what is to be written in stands together under it.
void SheetSetter::set_block(const SheetFacts& block) {
    std::vector<SheetFact> said = block.facts;
    const auto to_write =
        std::stable_partition(said.begin(), said.end(), [](const SheetFact& fact) { return !fact.value.isEmpty(); });
    set_facts({said.begin(), to_write}, block.columns);
    set_facts({to_write, said.end()}, block.columns);
}

void SheetSetter::set_facts(const std::vector<SheetFact>& facts, int across) {
    const int columns = std::max(1, across);
    const double gap = 6;
    const double cell = (width() - gap * (columns - 1)) / columns;
    for (std::size_t i = 0; i < facts.size(); i += static_cast<std::size_t>(columns)) {
        const std::size_t end = std::min(facts.size(), i + static_cast<std::size_t>(columns));
        std::vector<PaperText> texts;
        double height = 0;
        for (std::size_t k = i; k < end; ++k) {
            const SheetFact& fact = facts[k];
            texts.emplace_back(std::vector<TextRun>{{fact.name + QStringLiteral("  "), sheet_points},
                                                    {fact.value, sheet_points, true}});
            texts.back().break_lines(cell);
            height = std::max(height, fact.value.isEmpty() ? write_height : texts.back().height() + 0.6);
        }
        need(height);
        for (std::size_t k = i; k < end; ++k) {
            const PaperText& text = texts[k - i];
            const double x = left() + static_cast<double>(k - i) * (cell + gap);
            const bool empty = facts[k].value.isEmpty();
            put(text, {x, empty ? m_y + height - text.height() - 0.4 : m_y});
            if (empty) {
                const double from = x + std::min(text.natural_width() + 1, cell * 0.7);
                page().rules.push_back({QLineF(from, m_y + height - 1.2, x + cell, m_y + height - 1.2), 0.15});
            }
        }
        m_y += height;
    }
}

void SheetSetter::set_block(const SheetCautions& block) {
    if (block.sentences.isEmpty()) {
        return;
    }
    PaperText text({{block.sentences.join(QLatin1Char('\n')), sheet_points}});
    text.break_lines(width() - 4);
    need(text.height());
    const double from = m_y;
    const std::size_t first_page = m_pages.pages.size();
    flow(text, 4);
    const double start = m_pages.pages.size() == first_page ? from : m_top;
    page().rules.push_back({QLineF(left() + 0.8, start, left() + 0.8, m_y), 0.9});
}

void SheetSetter::set_block(const SheetTicks& block) {
    if (!block.title.isEmpty()) {
        need(6 + 6.2 * static_cast<double>(std::min<qsizetype>(6, block.things.size())) / std::max(1, block.columns));
        flow(PaperText({{block.title, sheet_heading_points, true}}));
        m_y += 0.8;
    }
    constexpr double box = 4;
    const auto columns = static_cast<std::size_t>(std::max(1, block.columns));
    const double cell = width() / static_cast<double>(columns);
    const auto things = static_cast<std::size_t>(block.things.size());
    for (std::size_t i = 0; i < things; i += columns) {
        std::vector<PaperText> texts;
        double height = block.with_line ? write_height : 6.2;
        for (std::size_t k = i; k < std::min(things, i + columns); ++k) {
            texts.emplace_back(std::vector<TextRun>{{block.things[static_cast<qsizetype>(k)], sheet_points}});
            texts.back().break_lines(block.with_line ? cell * 0.6 - box - 3 : cell - box - 5);
            height = std::max(height, texts.back().height() + 1.2);
        }
        need(height);
        for (std::size_t k = 0; k < texts.size(); ++k) {
            const double x = left() + static_cast<double>(k) * cell;
            page().boxes.emplace_back(x + 0.2, m_y + 0.4, box, box);
            put(texts[k], {x + box + 3, m_y + 0.2});
            if (block.with_line) {
                page().rules.push_back({QLineF(x + cell * 0.62, m_y + 4.6, x + cell - 2, m_y + 4.6), 0.15});
            }
        }
        m_y += height;
    }
}

void SheetSetter::set_block(const SheetNotes& block) {
    need(6 + write_height * 2);
    if (!block.title.isEmpty()) {
        flow(PaperText({{block.title, sheet_heading_points, true}}));
    }
    for (int i = 0; i < block.lines; ++i) {
        need(write_height);
        m_y += write_height;
        page().rules.push_back({QLineF(left(), m_y, left() + width(), m_y), 0.15});
    }
    m_y += 1;
}

void SheetSetter::set_block(const SheetTable& block) {
    TableSetter(*this, block).set();
}

SheetPages SheetSetter::set() {
    set_title();
    for (const SheetBlock& block : m_sheet.blocks) {
        std::visit([this](const auto& it) { set_block(it); }, block);
        const auto* text = std::get_if<SheetText>(&block);
        m_y += text != nullptr && text->heading ? 0.8 : block_gap;
    }
    set_foot();
    return std::move(m_pages);
}

SheetPages set_pages(const PaperSheet& sheet) {
    return SheetSetter(sheet).set();
}

void paint_sheet_page(QPainter& painter, const SheetPageInk& page) {
    painter.save();
    for (const SetLines& set : page.texts) {
        painter.setPen(set.grey ? QColor(0x60, 0x60, 0x60) : QColor(Qt::black));
        set.text.draw_lines(painter, set.at, set.first, set.end);
    }
    for (const SetRule& rule : page.rules) {
        painter.setPen(QPen(Qt::black, rule.width, Qt::SolidLine, Qt::FlatCap));
        painter.drawLine(rule.line);
    }
    painter.setPen(QPen(Qt::black, 0.2));
    painter.setBrush(Qt::NoBrush);
    for (const QRectF& box : page.boxes) {
        painter.drawRect(box);
    }
    painter.restore();
}

PagedPaper paper_of(std::shared_ptr<const SheetPages> pages) {
    const QSizeF page = pages->page;
    const int count = static_cast<int>(pages->pages.size());
    const QString title = pages->title;
    auto paint = [pages = std::move(pages)](QPainter& painter, int at) {
        paint_sheet_page(painter, pages->pages[static_cast<std::size_t>(at)]);
    };
    return {page, count, std::move(paint), title};
}

PagedPaper paper_of(const PaperSheet& sheet) {
    return paper_of(std::make_shared<const SheetPages>(set_pages(sheet)));
}

} // namespace soakbook::ui
