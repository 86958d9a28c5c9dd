// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/charts/chart_frame.h"

#include "ui/charts/chart_output.h"
#include "ui/parts/theme.h"
#include "ui/print/ask_file.h"
#include "ui/print/label_printer.h"

#include <QBoxLayout>
#include <QClipboard>
#include <QGuiApplication>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QLocale>
#include <QMenu>
#include <QPrintDialog>
#include <QPushButton>
#include <QStackedWidget>
#include <QTableWidget>

namespace soakbook::ui {

ChartFrame::ChartFrame(Plot* plot, QWidget* parent)
    : QWidget(parent), m_plot(plot), m_stack(new QStackedWidget(this)), m_table(new QTableWidget(this)),
      m_empty(make_soft_label(QString(), Type::body, this)), m_reading(make_soft_label(QString(), Type::small, this)),
      m_table_button(new QPushButton(this)), m_picture_button(new QPushButton(this)) {
    m_empty->setAlignment(Qt::AlignCenter);
    m_empty->setMargin(scaled(card_padding));
    m_table->setEditTriggers(QAbstractItemView::NoEditTriggers);
    m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_table->verticalHeader()->hide();
    m_table->horizontalHeader()->setStretchLastSection(true);
    m_table->setTabKeyNavigation(false);
    m_table->installEventFilter(this);
    m_stack->addWidget(m_plot);
    m_stack->addWidget(m_table);
    m_stack->addWidget(m_empty);
    setFocusProxy(m_plot);

    //: button under a chart: what can be done with its picture
    m_picture_button->setText(tr("Picture"));
    set_kind(m_table_button, "link");
    set_kind(m_picture_button, "link");
    auto* menu = new QMenu(m_picture_button);
    //: of a chart
    menu->addAction(tr("Copy"), this, &ChartFrame::copy_picture);
    //: of a chart, to a file
    menu->addAction(tr("Save…"), this, &ChartFrame::save_picture);
    //: of a chart, on paper
    menu->addAction(tr("Print…"), this, &ChartFrame::print_picture);
    m_picture_button->setMenu(menu);
    connect(m_table_button, &QPushButton::clicked, this, [this] { show_table(!shows_table()); });
    connect(m_plot, &Plot::read_out, this, &ChartFrame::say);

    auto* foot = new QHBoxLayout;
    foot->setSpacing(scaled(12));
    foot->addWidget(m_reading, 1);
    foot->addWidget(m_table_button);
    foot->addWidget(m_picture_button);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(scaled(4));
    column->addWidget(m_stack, 1);
    column->addLayout(foot);
    set_least_height(180);
    refresh();
}

void ChartFrame::refresh() {
    const bool empty = m_plot->is_empty();
    const bool table = shows_table();
    m_empty->setText(m_plot->empty_sentence());
    m_table->setAccessibleName(m_plot->name());
    m_table_button->setVisible(!empty);
    m_picture_button->setVisible(!empty);
    m_reading->setVisible(!empty);
    if (empty) {
        m_stack->setCurrentWidget(m_empty);
        return;
    }
    fill_table();
    show_table(table);
    say(QString());
}

bool ChartFrame::shows_table() const {
    return m_stack->currentWidget() == m_table;
}

void ChartFrame::show_table(bool table) {
    if (m_plot->is_empty()) {
        return;
    }
    const bool had_keys = m_plot->hasFocus() || m_table->hasFocus();
    m_stack->setCurrentWidget(table ? static_cast<QWidget*>(m_table) : m_plot);
    //: button under a chart that turns to the table behind it; F2 is a key
    m_table_button->setText(table ? tr("Chart (F2)")
                                  //: button under a chart that turns to the table behind it; F2 is a key
                                  : tr("Table (F2)"));
    if (had_keys) {
        m_stack->currentWidget()->setFocus();
    }
}

void ChartFrame::fill_table() {
    const ChartTable table = m_plot->table();
    m_table->clear();
    m_table->setColumnCount(static_cast<int>(table.header.size()));
    m_table->setRowCount(static_cast<int>(table.rows.size()));
    m_table->setHorizontalHeaderLabels(table.header);
    for (std::size_t row = 0; row < table.rows.size(); ++row) {
        for (qsizetype column = 0; column < table.rows[row].size(); ++column) {
            auto* item = new QTableWidgetItem(table.rows[row][column]);
            bool number = false;
            QLocale().toDouble(item->text(), &number);
            item->setTextAlignment(number ? Qt::AlignRight | Qt::AlignVCenter : Qt::AlignLeft | Qt::AlignVCenter);
            m_table->setItem(static_cast<int>(row), static_cast<int>(column), item);
        }
    }
    m_table->resizeColumnsToContents();
}

void ChartFrame::say(const QString& words) {
    m_reading->setText(words.isEmpty() ? m_hint : words);
}

void ChartFrame::set_hint(const QString& words) {
    m_hint = words;
    say(m_plot->words_at(m_plot->stop()));
}

void ChartFrame::set_least_height(int height) {
    m_stack->setMinimumHeight(scaled(height));
}

QString ChartFrame::reading() const {
    return m_reading->text();
}

void ChartFrame::complain(const QString& words) {
    m_reading->setText(words);
}

QSizeF ChartFrame::picture_size() const {
    // As it is seen, but never so small that labels would crowd.
    return QSizeF(m_plot->size()).expandedTo(QSizeF(640, 320));
}

void ChartFrame::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_F2 || (event->key() == Qt::Key_T && event->modifiers() == Qt::NoModifier)) {
        show_table(!shows_table());
    } else if (event->matches(QKeySequence::Copy) && !shows_table()) {
        copy_picture();
    } else {
        QWidget::keyPressEvent(event);
    }
}

// The table would search for a row that begins with the letter.
bool ChartFrame::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::KeyPress) {
        auto* key = static_cast<QKeyEvent*>(event);
        if (key->key() == Qt::Key_F2 || (key->key() == Qt::Key_T && key->modifiers() == Qt::NoModifier)) {
            keyPressEvent(key);
            return true;
        }
    }
    return QWidget::eventFilter(watched, event);
}

void ChartFrame::copy_picture() {
    QGuiApplication::clipboard()->setImage(image_of(*m_plot, picture_size()));
    //: after copying a chart
    complain(tr("The picture is on the clipboard."));
}

void ChartFrame::save_picture() {
    //: title of a window that asks for a file's name
    const QString path = ask_file_to_write(this, {tr("Save the picture"),
                                                  plain_file_name(m_plot->name(), QStringLiteral("png")),
                                                  //: kind of file
                                                  {tr("Picture (*.png)"),
                                                   //: kind of file
                                                   tr("Drawing (*.svg)")}});
    if (path.isEmpty()) {
        return;
    }
    const auto failure = write_picture(*m_plot, picture_size(), path);
    //: after saving a chart; %1 is a file's name
    complain(failure ? paper_failure_words(*failure) : tr("Saved as %1.").arg(path));
}

void ChartFrame::print_picture() {
    QPrinter printer(QPrinter::HighResolution);
    const bool letter = QLocale().measurementSystem() == QLocale::ImperialUSSystem;
    const PagedPaper paper = paper_of(*m_plot, letter ? QSizeF(279.4, 215.9) : QSizeF(297, 210), m_foot);
    set_page(printer, paper.page);
    QPrintDialog dialog(&printer, this);
    //: title of the window that asks which printer
    dialog.setWindowTitle(tr("Print the picture"));
    if (dialog.exec() != QDialog::Accepted) {
        return;
    }
    if (const auto failure = print_on(printer, paper)) {
        complain(paper_failure_words(*failure));
    }
}

} // namespace soakbook::ui
