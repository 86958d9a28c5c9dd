// SPDX-License-Identifier: GPL-3.0-or-later
// A small button that is an icon, with its name for the tool tip and to be read aloud; it grows with the text.
#pragma once

#include <QToolButton>

namespace soakbook::ui {

class IconButton : public QToolButton {
    Q_OBJECT

public:
    IconButton(const QString& icon_name, const QString& spoken, QWidget* parent = nullptr);

protected:
    void changeEvent(QEvent* event) override;

private:
    void settle();
};

} // namespace soakbook::ui
