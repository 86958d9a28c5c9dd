// SPDX-License-Identifier: GPL-3.0-or-later
// The keys, on one sheet: F1.
#pragma once

#include <QDialog>
#include <QStringList>

namespace soakbook::ui {

class KeySheet : public QDialog {
    Q_OBJECT

public:
    /// `places` are the names of the places in the order of the navigation.
    KeySheet(const QStringList& places, QWidget* parent);
};

} // namespace soakbook::ui
