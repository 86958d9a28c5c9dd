// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/csv.h"
#include "core/exchange/formula_guard.h"

#include <QStringDecoder>

#include <array>

namespace soakbook::exchange {
namespace {

std::optional<QString> decoded(const QByteArray& file) {
    const auto marked = QStringConverter::encodingForData(file);
    const bool is_utf16 = marked == QStringConverter::Utf16LE || marked == QStringConverter::Utf16BE;
    QStringDecoder decoder(is_utf16 ? *marked : QStringConverter::Utf8, QStringConverter::Flag::Stateless);
    QString text = decoder(file);
    if (is_utf16 && file.size() % 2 != 0) {
        return std::nullopt;
    }
    if (decoder.hasError() || !text.isValidUtf16() || text.contains(QChar(u'\0'))) {
        return std::nullopt;
    }
    if (text.startsWith(QChar(QChar::ByteOrderMark))) {
        text.remove(0, 1);
    }
    return text;
}

QChar likely_separator(const QString& text) {
    static constexpr std::array<char16_t, 3> candidates{u',', u';', u'\t'};
    std::array<int, 3> seen{};
    bool inside = false;
    for (const QChar c : text) {
        if (c == u'"') {
            inside = !inside;
        } else if (!inside && (c == u'\n' || c == u'\r')) {
            break;
        } else if (!inside) {
            for (std::size_t i = 0; i < candidates.size(); ++i) {
                seen[i] += c == candidates[i] ? 1 : 0;
            }
        }
    }
    std::size_t best = 0;
    for (std::size_t i = 1; i < candidates.size(); ++i) {
        best = seen[i] > seen[best] ? i : best;
    }
    return candidates[best];
}

/// Walks over the text once, cell by cell.
class Reader {
public:
    Reader(const QString& text, QChar separator) : m_text(text), m_separator(separator) {}

    tl::expected<std::vector<QStringList>, CsvRefusal> rows() {
        while (m_at < m_text.size()) {
            const qint64 line = m_line;
            const auto row = next_row();
            if (!row) {
                return tl::unexpected(row.error());
            }
            if (const auto refusal = take(*row, line)) {
                return tl::unexpected(*refusal);
            }
        }
        if (m_rows.empty()) {
            return tl::unexpected(CsvRefusal{CsvFault::empty, 0, 0, 0});
        }
        return std::move(m_rows);
    }

private:
    struct Row {
        QStringList cells;
        bool is_blank = false; ///< an empty line, which is a row only when others follow
    };

    std::optional<CsvRefusal> take(const Row& row, qint64 line) {
        if (row.is_blank) {
            m_first_blank = m_first_blank == 0 ? line : m_first_blank;
            return std::nullopt;
        }
        const auto expected = m_rows.empty() ? row.cells.size() : m_rows.front().size();
        if (m_first_blank != 0) {
            return CsvRefusal{CsvFault::ragged, m_first_blank, 0, expected};
        }
        if (row.cells.size() != expected) {
            return CsvRefusal{CsvFault::ragged, line, row.cells.size(), expected};
        }
        m_rows.push_back(row.cells);
        return std::nullopt;
    }

    tl::expected<Row, CsvRefusal> next_row() {
        if (at_line_end()) {
            pass_line_end();
            return Row{{}, true};
        }
        Row row;
        while (true) {
            const auto cell = at(u'"') ? quoted_cell() : bare_cell();
            if (!cell) {
                return tl::unexpected(cell.error());
            }
            row.cells.append(without_formula_guard(*cell));
            if (!at(m_separator)) {
                break;
            }
            ++m_at;
        }
        pass_line_end();
        return row;
    }

    tl::expected<QString, CsvRefusal> bare_cell() {
        const qsizetype begin = m_at;
        while (m_at < m_text.size() && !at(m_separator) && !at_line_end()) {
            if (at(u'"')) {
                return refused(CsvFault::stray_quote, m_line);
            }
            ++m_at;
        }
        return m_text.mid(begin, m_at - begin);
    }

    tl::expected<QString, CsvRefusal> quoted_cell() {
        const qint64 opened = m_line;
        QString cell;
        ++m_at;
        while (true) {
            if (m_at >= m_text.size()) {
                return refused(CsvFault::open_quote, opened);
            }
            if (at(u'"')) {
                ++m_at;
                if (!at(u'"')) {
                    break;
                }
            } else if (at(u'\n') || (at(u'\r') && !next_is(u'\n'))) {
                ++m_line;
            }
            cell.append(m_text.at(m_at));
            ++m_at;
        }
        if (m_at < m_text.size() && !at(m_separator) && !at_line_end()) {
            return refused(CsvFault::stray_quote, m_line);
        }
        return cell;
    }

    static tl::unexpected<CsvRefusal> refused(CsvFault fault, qint64 line) {
        return tl::unexpected(CsvRefusal{fault, line, 0, 0});
    }
    bool at(QChar c) const { return m_at < m_text.size() && m_text.at(m_at) == c; }
    bool next_is(QChar c) const { return m_at + 1 < m_text.size() && m_text.at(m_at + 1) == c; }
    bool at_line_end() const { return at(u'\r') || at(u'\n'); }
    void pass_line_end() {
        if (at_line_end()) {
            m_at += at(u'\r') && next_is(u'\n') ? 2 : 1;
            ++m_line;
        }
    }

    const QString& m_text;
    QChar m_separator;
    qsizetype m_at = 0;
    qint64 m_line = 1;
    qint64 m_first_blank = 0;
    std::vector<QStringList> m_rows;
};

} // namespace

tl::expected<std::vector<QStringList>, CsvRefusal> read_csv(const QByteArray& file, std::optional<QChar> separator) {
    const auto text = decoded(file);
    if (!text) {
        return tl::unexpected(CsvRefusal{CsvFault::undecodable, 0, 0, 0});
    }
    return Reader(*text, separator.value_or(likely_separator(*text))).rows();
}

} // namespace soakbook::exchange
