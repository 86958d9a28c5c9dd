// SPDX-License-Identifier: GPL-3.0-or-later
// One sentence with the shape of a state before it; long ones wrap beside it.
#pragma once

#include "ui/parts/state.h"

#include <QWidget>

#include <optional>

class QLabel;

namespace soakbook::ui {

class StateLine : public QWidget {
    Q_OBJECT

public:
    explicit StateLine(QWidget* parent = nullptr);
    void set(std::optional<State> state, const QString& text);
    QString text() const;

protected:
    void paintEvent(QPaintEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void settle();
    QLabel* m_text;
    std::optional<State> m_state;
};

} // namespace soakbook::ui
