// SPDX-License-Identifier: GPL-3.0-or-later
// What every chart has: one look, labels that stand directly at what they name, and readings that pointer and arrow keys
// stop at and that are said in words.
#pragma once

#include "ui/charts/axis_steps.h"
#include "ui/charts/chart_look.h"

#include <QChartView>
#include <QGraphicsItem>
#include <QPointF>
#include <QString>
#include <QStringList>

#include <memory>
#include <vector>

class QAbstractAxis;
class QAbstractSeries;
class QValueAxis;
class QXYSeries;

namespace soakbook::ui {

/// The table behind a chart.
struct ChartTable {
    QStringList header;
    std::vector<QStringList> rows;
};

/// Where a label stands, seen from the point that it names.
enum class LabelSide {
    end,   ///< right of the picture, at that height; labels there give way to each other
    above,
    below,
    right,
    left,
    inside, ///< centred on it
    foot,   ///< under the picture, centred on it
    second_foot ///< a line further down
};

/// A label in the picture; lines of one label are centred under each other.
class PlotLabel : public QGraphicsItem {
public:
    PlotLabel(const QString& text, const QFont& font, const QColor& ink, const QColor& ground, QGraphicsItem* parent);
    QString text() const { return m_text; }
    QRectF boundingRect() const override;
    void paint(QPainter* painter, const QStyleOptionGraphicsItem* option, QWidget* widget) override;

private:
    QString m_text;
    QFont m_font;
    QColor m_ink;
    QColor m_ground;
    QSizeF m_size;
};

class Plot : public QChartView {
    Q_OBJECT

public:
    explicit Plot(QWidget* parent = nullptr);

    /// What the picture shows, for a screen reader and as the name of a file.
    virtual QString name() const = 0;
    virtual bool is_empty() const = 0;
    /// What will stand here and how it comes to be, in a sentence.
    virtual QString empty_sentence() const = 0;
    virtual ChartTable table() const = 0;
    /// The same chart once more, to be drawn in another look or size.
    virtual std::unique_ptr<Plot> twin() const = 0;

    /// Draws all anew in that look; until it is called the program's own is worn.
    void wear(const ChartLook& look);
    const ChartLook& worn() const { return m_look; }
    /// Sets the picture for `size` pixels without showing it.
    void set_for(QSizeF size);

    int stop_count() const { return static_cast<int>(m_stops.size()); }
    /// The reading that stop `index` stands for, in words; empty beyond the last.
    QString words_at(int index) const;
    int stop() const { return m_stop; }
    /// Marks a stop and says it; -1 marks none.
    void go_to(int index);

Q_SIGNALS:
    void read_out(const QString& words);

protected:
    /// Fills the empty chart with series, axes, labels and stops.
    virtual void fill() = 0;
    /// Draws anew, after the data have changed.
    void redraw();

    // For fill():
    /// An axis with figures at the steps; with `rim`, a little wider than these so that marks at its ends are whole.
    QValueAxis* add_axis(Qt::Alignment side, const AxisSteps& steps, const QString& unit, double rim = 0);
    /// A line through points.
    QXYSeries* add_line(const std::vector<QPointF>& points, const QColor& colour, double width, Qt::PenStyle style = Qt::SolidLine);
    enum class Mark { ring, square, dot };
    QXYSeries* add_marks(const std::vector<QPointF>& points, Mark mark, const QColor& colour);
    /// A pale band from low to high.
    void add_band(double from_x, double to_x, double low, double high);
    /// A pale band between two courses over the same places.
    void add_band(const std::vector<QPointF>& low, const std::vector<QPointF>& high, const QColor& colour);
    void add_series(QAbstractSeries* series, QAbstractAxis* x, QAbstractAxis* y);
    /// A grounded label hides the lines behind it.
    void add_label(QPointF at, const QString& text, const QColor& colour, LabelSide side, bool strong = false, bool grounded = false);
    /// A line across the picture at nought, where bars stand on both sides of it.
    void add_base_line(const QColor& colour);
    void add_stop(QPointF at, const QString& words);
    /// The axes that lines, marks and bands hang on from now on.
    void use_axes(QAbstractAxis* x, QAbstractAxis* y);

    void mouseMoveEvent(QMouseEvent* event) override;
    void leaveEvent(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    void changeEvent(QEvent* event) override;
    void drawForeground(QPainter* painter, const QRectF& rect) override;

private:
    struct Label {
        QPointF at;
        QString text;
        QColor colour;
        LabelSide side;
        bool strong;
        bool grounded;
    };
    struct Stop {
        QPointF at;
        QString words;
    };
    void clear();
    QPointF place_of(QPointF value) const;
    void set_margins();
    void place_labels();
    void place_base_line();
    QRectF placed(const Label& label, const QRectF& box) const;
    void draw_mark(QPainter& painter) const;

    ChartLook m_look;
    bool m_own_look = false;
    std::vector<Label> m_labels;
    std::vector<QGraphicsItem*> m_label_items;
    std::vector<Stop> m_stops;
    int m_stop = -1;
    QColor m_base_line; ///< not valid: none
    QAbstractSeries* m_anchor = nullptr; ///< tells where a value stands in the picture
    QAbstractAxis* m_x = nullptr;
    QAbstractAxis* m_y = nullptr;
};

} // namespace soakbook::ui
