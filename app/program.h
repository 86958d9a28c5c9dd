// SPDX-License-Identifier: GPL-3.0-or-later
// What the program is called, speaks and wears.
#pragma once

#include <QString>

class QApplication;
class QCoreApplication;

namespace soakbook::app {

/// The names under which settings are kept; before anything reads them.
void name_program();
/// Loads the words of the language that was chosen.
void load_words(QCoreApplication& application);
/// Language, fonts and look as this user has them.
void dress(QApplication& application);
/// True where a window could not be shown.
bool no_display();
QString no_display_words();

} // namespace soakbook::app
