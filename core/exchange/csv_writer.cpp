// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/csv.h"
#include "core/exchange/formula_guard.h"

#include <stdexcept>

namespace soakbook::exchange {
namespace {

QString carriable(const QString& text) {
    QString kept = text;
    kept.replace(QChar(u'\0'), QChar(QChar::ReplacementCharacter));
    if (kept.isValidUtf16()) {
        return kept;
    }
    for (qsizetype i = 0; i < kept.size(); ++i) {
        const bool is_pair = kept.at(i).isHighSurrogate() && i + 1 < kept.size() && kept.at(i + 1).isLowSurrogate();
        if (is_pair) {
            ++i;
        } else if (kept.at(i).isSurrogate()) {
            kept[i] = QChar(QChar::ReplacementCharacter);
        }
    }
    return kept;
}

bool needs_quotes(const QString& text, QChar separator) {
    const auto is_mark = [separator](QChar c) { return c == separator || c == u'"' || c == u'\r' || c == u'\n'; };
    return std::any_of(text.begin(), text.end(), is_mark) || text.startsWith(u' ') || text.endsWith(u' ') ||
           text.startsWith(QChar(QChar::ByteOrderMark));
}

QString quoted(const QString& text) {
    QString doubled = text;
    doubled.replace(u'"', QLatin1String("\"\""));
    return u'"' + doubled + u'"';
}

QString written(const CsvCell& cell, QChar separator) {
    const QString kept = carriable(cell.text);
    const QString safe = cell.is_number ? kept : with_formula_guard(kept);
    return needs_quotes(safe, separator) ? quoted(safe) : safe;
}

} // namespace

QByteArray write_csv(const std::vector<CsvRow>& rows, const CsvStyle& style) {
    QByteArray file;
    if (style.byte_order_mark) {
        file.append("\xEF\xBB\xBF");
    }
    for (const CsvRow& row : rows) {
        if (row.empty() || row.size() != rows.front().size()) {
            throw std::invalid_argument("a table's rows must have cells, and as many as its first row");
        }
        QStringList cells;
        for (const CsvCell& cell : row) {
            cells.append(written(cell, style.separator));
        }
        // A row of one empty cell would be an empty line, and those are no rows.
        const QString line =
            cells.size() == 1 && cells.front().isEmpty() ? QStringLiteral("\"\"") : cells.join(style.separator);
        file.append(line.toUtf8());
        file.append("\r\n");
    }
    return file;
}

} // namespace soakbook::exchange
