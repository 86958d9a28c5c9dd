// SPDX-License-Identifier: GPL-3.0-or-later
// One copy of the full house with a desk and a window, to open a form in, type at it, and see what became of the workbook.
#pragma once

#include "tests/ui/bad_input/full_house.h"
#include "ui/parts/desk.h"

#include <QStringList>
#include <QTemporaryDir>
#include <QWidget>

#include <functional>
#include <memory>

class QDialog;

namespace soakbook::tests {

/// The full house, played once for the whole program.
FullHouse& full_house();

class Room {
public:
    /// `language` as Set-up keeps it: "en" or "de".
    explicit Room(const QString& language);
    ~Room();

    ui::Desk& desk() { return *m_desk; }
    book::Workbook& book() { return *m_workbook; }
    QWidget& window() { return *m_window; }
    /// Where the copy lies.
    const QString& path() const { return m_path; }
    /// Where the welcome makes a workbook.
    QString new_path() const { return m_folder.filePath(QStringLiteral("new.soakbook")); }
    work::BatchView view(work::BatchId batch);

    /// Puts a form or a page into the window, in the place of what was there.
    template <class W> W* show(W* widget) {
        put(widget);
        return widget;
    }
    /// The dialog that is open over the window, or nothing.
    QDialog* dialog() const;
    /// Closes everything, whatever was typed in it.
    void clear();
    void settle() const;
    /// All that the workbook holds, as one short text: equal before and after where nothing was written.
    QByteArray digest() const;
    /// How often that text stands in a cell of the workbook, alone or with a number behind it, as in the name of a hive.
    int cells_that_say(const QString& text) const;

private:
    void put(QWidget* widget);
    QStringList files() const;

    QTemporaryDir m_folder;
    QString m_path;
    std::unique_ptr<book::Workbook> m_workbook;
    std::unique_ptr<ui::Desk> m_desk;
    std::unique_ptr<QWidget> m_window;
};

} // namespace soakbook::tests
