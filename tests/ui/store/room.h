// SPDX-License-Identifier: GPL-3.0-or-later
// The Store on a window, as the frame would hold it, worked by keys: what a person would see and press.
#pragma once

#include "tests/work/yards_bench.h"
#include "ui/parts/desk.h"
#include "ui/parts/place.h"

#include <QTableView>

#include <memory>
#include <vector>

class QDialog;
class QLineEdit;

namespace soakbook::tests {

class StoreRoom {
public:
    /// The clock stands at noon of day `n` of the bench's story.
    StoreRoom(Bench& bench, int n);
    ~StoreRoom();

    ui::Place& place() { return *m_place; }
    QWidget& window() { return *m_window; }
    ui::Desk& desk() { return *m_desk; }
    const std::vector<ui::Intent>& wished() const { return m_wished; }
    void wish(const char* task, std::vector<qint64> ids = {}, const QVariantMap& prefill = {});

    // Keys go to whatever has the keyboard.
    /// What has no key of its own, or is long, comes from the clipboard.
    void type(const QString& text);
    void key(Qt::Key which, Qt::KeyboardModifiers with = Qt::NoModifier);
    /// Ctrl+Enter, and whatever the page does after it.
    void enter() { key(Qt::Key_Return, Qt::ControlModifier); }
    /// Puts the keyboard on that button and presses Space.
    void press(const char* button);
    /// Puts the keyboard into that field and types over what stands there.
    void type_into(const char* field, const QString& text);

    /// A widget by its name; a failed test where there is none to be seen.
    template <class W> W* find(const char* name) const {
        auto* found = qobject_cast<W*>(seen(name));
        if (found == nullptr)
            missing(name);
        return found;
    }
    bool is_seen(const char* name) const { return seen(name) != nullptr; }
    QLineEdit* line(const char* field) const;
    /// What stands beneath that field.
    QString beneath(const char* field) const;
    /// All texts to be seen in a widget, one a line.
    QString words(const char* name) const;
    QDialog* dialog() const;
    /// The codes in the first column of a table, from top to bottom.
    QStringList codes(const char* table) const;
    /// The cell of the row whose first column says `code`.
    QString cell(const char* table, const QString& code, const QString& header) const;
    void choose(const char* table, const QString& code);
    void settle() const;

private:
    QWidget* seen(const char* name) const;
    [[noreturn]] static void missing(const char* name);

    maths::Instant m_now;
    std::unique_ptr<ui::Desk> m_desk;
    std::unique_ptr<QWidget> m_window;
    ui::Place* m_place = nullptr;
    std::vector<ui::Intent> m_wished;
};

/// Labels and buttons under `top` whose text does not fit, by their text.
QStringList clipped_texts(const QWidget* top);

} // namespace soakbook::tests
