// SPDX-License-Identifier: GPL-3.0-or-later
// The program's own application: what a page could not read is said, and the window stays.
#pragma once

#include <QApplication>

#include <functional>

namespace soakbook::book {
struct StoreError;
}

namespace soakbook::app {

class Application : public QApplication {
    Q_OBJECT

public:
    using QApplication::QApplication;
    /// Who is told of what could not be read; anything else that is thrown ends the program.
    void set_unread(std::function<void(const book::StoreError&)> unread) { m_unread = std::move(unread); }
    bool notify(QObject* receiver, QEvent* event) override;

private:
    std::function<void(const book::StoreError&)> m_unread;
};

} // namespace soakbook::app
