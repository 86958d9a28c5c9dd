// SPDX-License-Identifier: GPL-3.0-or-later
#include "resources/resources.h"

#include <QtGlobal>

// The macro declares a function, which must not lie in a namespace.
static void open_soakbook_resources() {
    Q_INIT_RESOURCE(soakbook);
}

namespace soakbook {

void open_resources() {
    open_soakbook_resources();
}

} // namespace soakbook
