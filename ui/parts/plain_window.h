// SPDX-License-Identifier: GPL-3.0-or-later
// A window over another one that only shows something: it holds that one up, and is gone when it closes.
#pragma once

class QDialog;
class QString;
class QVBoxLayout;

namespace soakbook::ui {

/// Gives the dialog its name, title and paper; what it shows goes into the column.
QVBoxLayout* lay_out_window(QDialog* dialog, const QString& name, const QString& title);

} // namespace soakbook::ui
