// SPDX-License-Identifier: GPL-3.0-or-later
// The figures of Set-up as they stand in the store.
#pragma once

#include "core/book/records/figure.h"
#include "core/book/record_io.h"

namespace soakbook::book {

std::optional<Figure> figure_by_key(const Workbook& workbook, const QString& key);
void remove_figure(Writing& writing, Id<Figure> id);
/// The name of the operation; empty before there is one.
QString operation_name(const Workbook& workbook);

} // namespace soakbook::book
