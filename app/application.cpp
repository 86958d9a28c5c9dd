// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/application.h"

#include "core/book/statement.h"

namespace soakbook::app {

bool Application::notify(QObject* receiver, QEvent* event) {
    try {
        return QApplication::notify(receiver, event);
    } catch (const book::LawBroken&) {
        throw;
    } catch (const book::StoreError& error) {
        if (!m_unread)
            throw;
        m_unread(error);
        return true;
    }
}

} // namespace soakbook::app
