// SPDX-License-Identifier: GPL-3.0-or-later
// What is left in a damaged workbook: its tables, how sure each record is, and the way to save them for a spreadsheet.
#pragma once

#include "core/work/salvage.h"

#include <QDialog>

class QLabel;
class QListWidget;
class QPushButton;
class QTableView;

namespace soakbook::ui {

class Habits;

class SalvageWindow : public QDialog {
    Q_OBJECT

public:
    SalvageWindow(const QString& path, const Habits& habits, QWidget* parent = nullptr);
    ~SalvageWindow() override;
    /// Saves every table into the folder; what came of it stands in the window.
    void save_into(const QString& folder);

private:
    void build();
    void show_table(int line);
    void ask_where();

    const Habits& m_habits;
    std::unique_ptr<work::WhatIsLeft> m_left;
    std::vector<std::size_t> m_shown; ///< the tables in the list
    QLabel* m_sentence;
    QLabel* m_counts = nullptr;
    QLabel* m_answer = nullptr;
    QListWidget* m_tables = nullptr;
    QTableView* m_rows = nullptr;
    QPushButton* m_close;
};

/// Reads the file, which nobody may have open, and opens the window over `parent`. It deletes itself when it closes.
void open_salvage(const QString& path, const Habits& habits, QWidget* parent);

} // namespace soakbook::ui
