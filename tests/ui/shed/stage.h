// SPDX-License-Identifier: GPL-3.0-or-later
// The Shed on a window, as the frame would hold it, worked by keys alone; every key is counted.
#pragma once

#include "tests/work/bench.h"
#include "ui/parts/desk.h"
#include "ui/parts/place.h"

#include <QPointer>

#include <memory>
#include <ostream>

class QDialog;

/// A failed comparison of texts shows the texts.
inline void PrintTo(const QString& text, std::ostream* out) { *out << '"' << text.toStdString() << '"'; }

namespace soakbook::tests {

class Stage {
public:
    /// The clock stands at that hour of day `n` of the bench's story.
    explicit Stage(Bench& bench, int n = 0, int hour = 17);
    ~Stage();

    ui::Desk& desk() { return *m_desk; }
    ui::Place& place() { return *m_place; }
    QWidget& window() { return *m_window; }
    void set_clock(int n, int hour, int minute = 0);

    // Keys go to whatever has the keyboard.
    void type(const QString& text);
    void press(Qt::Key key, Qt::KeyboardModifiers modifiers = Qt::NoModifier);
    /// Ctrl+Enter, and whatever the page does after it.
    void enter();
    int keys() const { return m_keys; }

    /// The name of the field that has the keyboard: its own, or that of the nearest part around it that has one.
    QString here() const;
    /// Puts the keyboard into the field of that name, as Tab would.
    void go_to(const QString& field);
    /// A widget by its name; a failed test where there is none to be seen.
    QWidget* widget(const QString& name) const;
    template <class T> T* find(const QString& name) const { return qobject_cast<T*>(widget(name)); }
    /// The text in the editor of that field.
    QString text_of(const QString& field) const;
    /// All texts to be seen under a widget, one a line.
    QString words(const QWidget* under = nullptr) const;
    QDialog* dialog(const QString& name) const;
    void settle() const;

private:
    Bench& m_bench;
    maths::Instant m_now;
    std::unique_ptr<ui::Desk> m_desk;
    std::unique_ptr<QWidget> m_window;
    ui::Place* m_place = nullptr;
    int m_keys = 0;
};

/// Labels, buttons and table heads under `top` whose text does not fit, by their text.
QStringList clipped_texts(const QWidget* top);

} // namespace soakbook::tests
