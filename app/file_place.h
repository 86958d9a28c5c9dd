// SPDX-License-Identifier: GPL-3.0-or-later
// What kind of place a file lies in. Asked of the folder alone: nothing here opens the file.
#pragma once

#include <QString>

namespace soakbook::app {

/// Whether a file can be changed where it lies, and if not, what stands against it.
enum class Writable {
    yes,
    medium_kept, ///< nothing on that medium can be written
    folder_kept, ///< nothing may be written beside it, and its journal would lie there
    file_kept,   ///< the file itself may only be read
};
Writable writable(const QString& file);

/// Whether the file lies on another computer: a network folder.
bool is_on_network(const QString& file);

/// Whatever path or link leads there: the device and the number of the file on it, as text. Empty where there is none.
QString identity_of(const QString& file);
bool is_same_file(const QString& one, const QString& other);

} // namespace soakbook::app
