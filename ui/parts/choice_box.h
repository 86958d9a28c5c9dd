// SPDX-License-Identifier: GPL-3.0-or-later
// A combo box with our own arrow, which follows the theme.
#pragma once

#include <QComboBox>

namespace soakbook::ui {

class ChoiceBox : public QComboBox {
    Q_OBJECT

public:
    explicit ChoiceBox(QWidget* parent = nullptr);

protected:
    void paintEvent(QPaintEvent* event) override;
};

} // namespace soakbook::ui
