// SPDX-License-Identifier: GPL-3.0-or-later
// Asks once a day who makes entries, under the head, without standing in anybody's way.
#pragma once

#include <QFrame>
#include <QStringList>

namespace soakbook::ui {

class FlowLayout;

class WhoBar : public QFrame {
    Q_OBJECT

public:
    explicit WhoBar(QWidget* parent = nullptr);
    /// Asks with one button a person.
    void ask(const QStringList& people);

Q_SIGNALS:
    void answered(const QString& who);

private:
    FlowLayout* m_row;
};

} // namespace soakbook::ui
