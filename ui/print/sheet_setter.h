// SPDX-License-Identifier: GPL-3.0-or-later
// The hand that sets a sheet: inner part of sheet_pages.
#pragma once

#include "ui/print/sheet_pages.h"

namespace soakbook::ui {

constexpr double sheet_points = 9;
constexpr double sheet_small_points = 7.5;
constexpr double sheet_heading_points = 10.5;

/// Keeps the page that is being filled and how far down it is filled.
class SheetSetter {
public:
    explicit SheetSetter(const PaperSheet& sheet);
    SheetPages set();

private:
    double left() const { return m_sheet.page.margins.left(); }
    double width() const { return m_size.width() - m_sheet.page.margins.left() - m_sheet.page.margins.right(); }
    double bottom() const;
    double room() const { return bottom() - m_y; }
    bool page_is_fresh() const { return m_y <= m_top + 0.01; }
    SheetPageInk& page() { return m_pages.pages.back(); }
    void turn_page();
    /// Turns the page unless `height` still fits.
    void need(double height);
    void put(const PaperText& text, QPointF at) { page().texts.push_back({text, at, 0, text.line_count(), false}); }
    /// Sets a paragraph, over pages if it must.
    void flow(PaperText text, double indent = 0);

    void set_title();
    void set_foot();
    void set_facts(const std::vector<SheetFact>& facts, int across);
    void set_block(const SheetFacts& block);
    void set_block(const SheetText& block);
    void set_block(const SheetCautions& block);
    void set_block(const SheetTable& block);
    void set_block(const SheetTicks& block);
    void set_block(const SheetNotes& block);

    const PaperSheet& m_sheet;
    QSizeF m_size;
    SheetPages m_pages;
    double m_y = 0;
    double m_top = 0;

    friend class TableSetter;
};

/// Sets one table; the header is said again on each page that the table goes on to.
class TableSetter {
public:
    TableSetter(SheetSetter& setter, const SheetTable& table);
    void set();

private:
    struct Cell {
        PaperText text;
        double x = 0;
        double width = 0;
        ColumnKind kind = ColumnKind::text;
    };
    std::vector<double> widths() const;
    std::vector<Cell> cells_of(const SheetRow& row) const;
    static double text_height(const std::vector<Cell>& cells);
    static double height_of(const std::vector<Cell>& cells);
    void set_header();
    void set_row(const SheetRow& row);
    void set_long_row(const std::vector<Cell>& cells, const SheetRow& row);
    void put_cell(const Cell& cell, int first, int end, double y, double height, double drop = 0);
    void strike(const std::vector<Cell>& cells, double y, double drop);
    void frame(double y, double height, bool across);

    SheetSetter& m_setter;
    const SheetTable& m_table;
    std::vector<double> m_widths;
    std::vector<Cell> m_header;
    double m_header_height = 0;
};

} // namespace soakbook::ui
