// SPDX-License-Identifier: GPL-3.0-or-later
// The key that asks how a figure was worked out, wherever the keyboard is.
#pragma once

#include <QObject>

namespace soakbook::ui {

/// F3. One for the whole program; it is there as soon as the first "How?" is.
class HowKey : public QObject {
    Q_OBJECT

public:
    static void listen();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    explicit HowKey(QObject* parent);
    bool m_just_opened = false;
};

} // namespace soakbook::ui
