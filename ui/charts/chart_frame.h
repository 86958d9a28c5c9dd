// SPDX-License-Identifier: GPL-3.0-or-later
// What stands around every chart: the reading in words, the table behind it one key away (F2 or T), and the picture to
// copy, save or print.
#pragma once

#include "ui/charts/plot.h"

#include <QWidget>

class QLabel;
class QPushButton;
class QStackedWidget;
class QTableWidget;

namespace soakbook::ui {

class ChartFrame : public QWidget {
    Q_OBJECT

public:
    /// Takes the plot over.
    explicit ChartFrame(Plot* plot, QWidget* parent = nullptr);

    Plot* plot() const { return m_plot; }
    /// The plot has new data: shows the chart, or the sentence that says what will stand here.
    void refresh();
    bool shows_table() const;
    void show_table(bool table);
    /// The line under the chart, as it is read now.
    QString reading() const;
    /// At the foot of a printed chart: workbook and day.
    void set_foot(const QString& foot) { m_foot = foot; }
    /// What stands under the chart while nothing is pointed at.
    void set_hint(const QString& words);
    /// How low the chart may become at 100 % text; 180 at first.
    void set_least_height(int height);

    // What the menu does, for keys and tests.
    void copy_picture();
    void save_picture();
    void print_picture();

protected:
    void keyPressEvent(QKeyEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void fill_table();
    void say(const QString& words);
    void complain(const QString& words);
    QSizeF picture_size() const;

    Plot* m_plot;
    QStackedWidget* m_stack;
    QTableWidget* m_table;
    QLabel* m_empty;
    QLabel* m_reading;
    QPushButton* m_table_button;
    QPushButton* m_picture_button;
    QString m_hint;
    QString m_foot;
};

} // namespace soakbook::ui
