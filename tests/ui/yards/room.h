// SPDX-License-Identifier: GPL-3.0-or-later
// The place Yards over a bench workbook, driven by keys: what a person would see and press.
#pragma once

#include "bench.h"

#include "core/work/figures.h"
#include "core/work/hives.h"
#include "core/work/round.h"
#include "ui/parts/desk.h"
#include "ui/parts/place.h"

#include <QApplication>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTableView>
#include <QTest>

#include <memory>

#include <gtest/gtest.h>

namespace soakbook::tests {

class YardsRoom : public testing::Test {
protected:
    YardsRoom();
    ~YardsRoom() override;

    /// The day the wall shows, after the bench's first day; the place is asked again.
    void on(int n);
    /// Opens the place anew.
    void open_place();

    // What a person does.
    template <class W> W* find(const char* name) const {
        for (QWidget* top : QApplication::topLevelWidgets()) {
            if (top->isHidden()) {
                continue;
            }
            for (W* found : top->findChildren<W*>(QLatin1String(name))) {
                if (found->isVisible()) {
                    return found;
                }
            }
        }
        ADD_FAILURE() << "nothing called " << name << " is to be seen";
        throw std::runtime_error(name);
    }
    bool is_seen(const char* name) const;
    void press(const char* button);
    /// Puts the keyboard into the field of that name and types over what stands there.
    void type_into(const char* field, const QString& text);
    void keys(const QString& text);
    void key(Qt::Key which, Qt::KeyboardModifiers with = Qt::NoModifier);
    void ctrl_enter();
    /// Lets what is queued be done.
    void settle() const;
    /// Walks to that cell with the keyboard's own means and types over it.
    void type_cell(const char* grid, const QString& hive, int column, const QString& text);
    QString cell(const char* grid, const QString& hive, int column) const;
    int line_of(const char* grid, const QString& hive) const;
    /// All words that are seen of a widget and what is in it.
    QString words(const char* name) const;
    QDialog* dialog() const;

    // What stands in the workbook, made without the place.
    work::YardId made_yard(int hives = 20, int frames = 8);
    work::RoundId made_round(work::YardId yard, int n = 3);
    void say(work::Figure figure, qint64 value);

    Bench bench;
    int m_day = 3;
    std::unique_ptr<ui::Desk> desk;
    std::unique_ptr<ui::Place> place;
};

} // namespace soakbook::tests
