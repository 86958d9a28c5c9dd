// SPDX-License-Identifier: GPL-3.0-or-later
// Fields under their labels, in two columns where there is room and in one where there is not.
#pragma once

#include <QString>
#include <QWidget>

#include <vector>

class QGridLayout;

namespace soakbook::ui {

class Field;

class FieldGrid : public QWidget {
    Q_OBJECT

public:
    explicit FieldGrid(QWidget* parent = nullptr);
    void add(const QString& label, Field* field, bool wide);
    /// A heading or a table, over the whole width.
    void add_wide(QWidget* widget);
    void set_shown(const QWidget* widget, bool shown);
    void set_columns(int most);

    QSize minimumSizeHint() const override;

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    struct Cell {
        QWidget* widget;        ///< what stands in the grid
        const QWidget* content; ///< the field or widget it was made for
        bool wide;
        bool shown;
    };
    int columns_at(int width) const;
    void lay_out(int columns);

    QGridLayout* m_grid;
    std::vector<Cell> m_cells;
    int m_most = 2;
    int m_columns = 1;
};

} // namespace soakbook::ui
