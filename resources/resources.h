// SPDX-License-Identifier: GPL-3.0-or-later
// The linker drops what a static library holds and nobody calls: so whoever reads from :/soakbook calls this first.
#pragma once

namespace soakbook {

/// Makes the files under :/soakbook readable; calling it again does nothing.
void open_resources();

} // namespace soakbook
