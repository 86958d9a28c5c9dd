// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/queries/figures.h"

namespace soakbook::book {

std::optional<Figure> figure_by_key(const Workbook& workbook, const QString& key) {
    auto found = fetch_where<Figure>(workbook, "WHERE key = ?", key);
    return found.empty() ? std::nullopt : std::optional<Figure>(std::move(found.front()));
}

void remove_figure(Writing& writing, Id<Figure> id) {
    Statement(writing.db(), QStringLiteral("DELETE FROM figure WHERE id = ?")).bind(id).run();
}

QString operation_name(const Workbook& workbook) {
    Statement s(workbook.db(), QStringLiteral("SELECT name FROM operation"));
    s.run();
    return s.next() ? s.get<QString>(0) : QString();
}

} // namespace soakbook::book
