// SPDX-License-Identifier: GPL-3.0-or-later
// A field for the file of a new workbook: typed, or chosen in a window of folders.
#pragma once

#include "ui/parts/text_field.h"

namespace soakbook::ui {

class PathField : public TextField {
    Q_OBJECT

public:
    explicit PathField(QWidget* parent = nullptr);

private:
    void choose();
};

} // namespace soakbook::ui
