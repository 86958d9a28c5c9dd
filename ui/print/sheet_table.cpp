// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/sheet_setter.h"

#include <algorithm>
#include <numeric>

namespace soakbook::ui {

namespace {

constexpr double pad_x = 1.4; // mm inside a cell
constexpr double pad_y = 0.9;
constexpr double tick_box = 4;

} // namespace

TableSetter::TableSetter(SheetSetter& setter, const SheetTable& table) : m_setter(setter), m_table(table) {
    if (table.columns.empty()) {
        return;
    }
    m_widths = widths();
    SheetRow names;
    for (const SheetColumn& column : table.columns) {
        names.cells.append(column.header);
    }
    names.strong = true;
    m_header = cells_of(names);
    m_header_height = height_of(m_header);
}

// Each column gets what its longest word needs, then the rest is shared out.
std::vector<double> TableSetter::widths() const {
    std::vector<double> least;
    for (std::size_t c = 0; c < m_table.columns.size(); ++c) {
        const SheetColumn& column = m_table.columns[c];
        double needed = std::max(column.least, PaperText({{column.header, sheet_small_points, true}}).longest_word());
        const bool code = column.kind == ColumnKind::code;
        const bool whole = code || column.kind == ColumnKind::number || column.kind == ColumnKind::date;
        for (const SheetRow& row : m_table.rows) {
            if (!row.heading && static_cast<qsizetype>(c) < row.cells.size()) {
                const PaperText text({{row.cells[static_cast<qsizetype>(c)], sheet_points, row.strong, code}});
                needed = std::max(needed, whole ? std::min(text.natural_width(), 40.0) : std::min(text.longest_word(), 34.0));
            }
        }
        least.push_back(needed + 2 * pad_x);
    }
    const double sum = std::accumulate(least.begin(), least.end(), 0.0);
    const double room = m_setter.width();
    if (sum >= room) {
        for (double& width : least) {
            width *= room / sum;
        }
        return least;
    }
    double shares = 0;
    for (const SheetColumn& column : m_table.columns) {
        shares += column.share;
    }
    // Columns whose share is less than what they need keep their need; the others share what is left.
    std::vector<double> result(least.size(), -1);
    double left = room;
    for (bool settled = false; !settled;) {
        settled = true;
        for (std::size_t c = 0; c < least.size(); ++c) {
            if (result[c] < 0 && left * m_table.columns[c].share / std::max(shares, 1e-9) < least[c]) {
                result[c] = least[c];
                left -= least[c];
                shares -= m_table.columns[c].share;
                settled = false;
            }
        }
    }
    for (std::size_t c = 0; c < least.size(); ++c) {
        if (result[c] < 0) {
            result[c] = left * m_table.columns[c].share / std::max(shares, 1e-9);
        }
    }
    // All columns needed more than their share: what is left goes to the last, so that the table is as wide as the page.
    result.back() += room - std::accumulate(result.begin(), result.end(), 0.0);
    return result;
}

std::vector<TableSetter::Cell> TableSetter::cells_of(const SheetRow& row) const {
    std::vector<Cell> cells;
    const bool header = m_header.empty(); // the header is the first row that is set
    double x = m_setter.left();
    if (row.heading) {
        PaperText text({{row.cells.isEmpty() ? QString() : row.cells.front(), sheet_points, true}});
        text.break_lines(m_setter.width() - 2 * pad_x);
        return {{text, x, m_setter.width(), ColumnKind::text}};
    }
    for (std::size_t c = 0; c < m_table.columns.size(); ++c) {
        const ColumnKind kind = m_table.columns[c].kind;
        const QString words = static_cast<qsizetype>(c) < row.cells.size() ? row.cells[static_cast<qsizetype>(c)] : QString();
        const bool small = header || kind == ColumnKind::write_in;
        PaperText text({{words, small ? sheet_small_points : sheet_points, row.strong, kind == ColumnKind::code && !header}},
                       kind == ColumnKind::number ? Qt::AlignRight : Qt::AlignLeft);
        text.break_lines(m_widths[c] - 2 * pad_x);
        cells.push_back({text, x, m_widths[c], header ? ColumnKind::text : kind});
        x += m_widths[c];
    }
    return cells;
}

double TableSetter::text_height(const std::vector<Cell>& cells) {
    double height = 0;
    for (const Cell& cell : cells) {
        if (cell.kind != ColumnKind::write_in && !cell.text.empty()) {
            height = std::max(height, cell.text.height());
        }
    }
    return height;
}

// The last cell says why, and stays free.
void TableSetter::strike(const std::vector<Cell>& cells, double y, double drop) {
    for (std::size_t i = 0; i + 1 < cells.size(); ++i) {
        for (int line = 0; line < cells[i].text.line_count() && !cells[i].text.empty(); ++line) {
            const QRectF ink = cells[i].text.line_ink(line).translated(cells[i].x + pad_x, y + pad_y + drop);
            m_setter.page().rules.push_back({QLineF(ink.left(), ink.center().y(), ink.right(), ink.center().y()), 0.25});
        }
    }
}

double TableSetter::height_of(const std::vector<Cell>& cells) {
    double height = 0;
    for (const Cell& cell : cells) {
        height = std::max(height, cell.text.height());
    }
    return height + 2 * pad_y;
}

void TableSetter::frame(double y, double height, bool across) {
    SheetPageInk& page = m_setter.page();
    const double left = m_setter.left();
    const double right = left + m_setter.width();
    page.rules.push_back({QLineF(left, y + height, right, y + height), 0.15});
    page.rules.push_back({QLineF(left, y, left, y + height), 0.15});
    page.rules.push_back({QLineF(right, y, right, y + height), 0.15});
    if (across) {
        return;
    }
    double x = left;
    for (std::size_t c = 0; c + 1 < m_widths.size(); ++c) {
        x += m_widths[c];
        page.rules.push_back({QLineF(x, y, x, y + height), 0.15});
    }
}

void TableSetter::put_cell(const Cell& cell, int first, int end, double y, double height, double drop) {
    if (cell.kind == ColumnKind::tick) {
        m_setter.page().boxes.emplace_back(cell.x + (cell.width - tick_box) / 2, y + (height - tick_box) / 2, tick_box, tick_box);
        return;
    }
    if (first < end && !cell.text.empty()) {
        m_setter.page().texts.push_back({cell.text, {cell.x + pad_x, y + pad_y + drop}, first, end, cell.kind == ColumnKind::write_in});
    }
}

void TableSetter::set_header() {
    const double y = m_setter.m_y;
    m_setter.page().rules.push_back({QLineF(m_setter.left(), y, m_setter.left() + m_setter.width(), y), 0.3});
    for (const Cell& cell : m_header) {
        put_cell(cell, 0, cell.text.line_count(), y, m_header_height);
    }
    frame(y, m_header_height, false);
    const double base = y + m_header_height;
    m_setter.page().rules.push_back({QLineF(m_setter.left(), base, m_setter.left() + m_setter.width(), base), 0.3});
    m_setter.m_y = base;
}

// A row taller than what a fresh page holds is set line by line over as many pages as it takes.
void TableSetter::set_long_row(const std::vector<Cell>& cells, const SheetRow& row) {
    std::vector<int> next(cells.size(), 0);
    const auto unfinished = [&] {
        for (std::size_t i = 0; i < cells.size(); ++i) {
            if (next[i] < cells[i].text.line_count()) {
                return true;
            }
        }
        return false;
    };
    while (unfinished()) {
        const double room = m_setter.room() - 2 * pad_y;
        double height = 0;
        std::vector<int> end = next;
        for (std::size_t i = 0; i < cells.size(); ++i) {
            const PaperText& text = cells[i].text;
            while (end[i] < text.line_count() && text.line_bottom(end[i]) - text.line_top(next[i]) <= room) {
                ++end[i];
            }
            if (end[i] > next[i]) {
                height = std::max(height, text.line_bottom(end[i] - 1) - text.line_top(next[i]));
            }
        }
        if (end == next) {
            m_setter.turn_page();
            set_header();
            continue;
        }
        height += 2 * pad_y;
        for (std::size_t i = 0; i < cells.size(); ++i) {
            put_cell(cells[i], next[i], end[i], m_setter.m_y, height);
        }
        frame(m_setter.m_y, height, row.heading);
        m_setter.m_y += height;
        next = end;
    }
}

void TableSetter::set_row(const SheetRow& row) {
    const std::vector<Cell> cells = cells_of(row);
    const double height = std::max(height_of(cells), row.heading ? 0.0 : m_table.row_height);
    const double fresh_room = m_setter.bottom() - m_setter.m_sheet.page.margins.top() - m_header_height - 8;
    if (height > fresh_room) {
        set_long_row(cells, row);
        return;
    }
    // A heading is not left alone at the foot of a page.
    if (height + (row.heading ? m_table.row_height : 0) > m_setter.room()) {
        m_setter.turn_page();
        set_header();
    }
    const double y = m_setter.m_y;
    double base = 0;
    int lines = 0;
    for (const Cell& cell : cells) {
        base = std::max(base, cell.text.base());
        lines = cell.text.empty() || cell.kind == ColumnKind::write_in ? lines : std::max(lines, cell.text.line_count());
    }
    // A row of single lines stands in the middle of its height, a taller one hangs from its top; all on one base line.
    const double middle = lines < 2 ? std::max(0.0, (height - 2 * pad_y - text_height(cells)) / 2) : 0.0;
    for (const Cell& cell : cells) {
        const bool corner = cell.kind == ColumnKind::write_in;
        put_cell(cell, 0, cell.text.line_count(), y, height, corner ? 0 : middle + base - cell.text.base());
    }
    if (row.struck) {
        strike(cells, y, middle);
    }
    frame(y, height, row.heading);
    m_setter.m_y += height;
}

void TableSetter::set() {
    if (m_table.columns.empty()) {
        return;
    }
    if (!m_table.title.isEmpty()) {
        m_setter.need(6 + m_header_height + m_table.row_height);
        m_setter.flow(PaperText({{m_table.title, sheet_heading_points, true}}));
        m_setter.m_y += 0.8;
    }
    if (m_table.rows.empty()) {
        m_setter.flow(PaperText({{m_table.words_when_empty, sheet_points}}));
        return;
    }
    m_setter.need(m_header_height + m_table.row_height);
    set_header();
    for (const SheetRow& row : m_table.rows) {
        set_row(row);
    }
}

} // namespace soakbook::ui
