// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/page_file.h"

#include <QtEndian>

#include <algorithm>
#include <bit>

namespace soakbook::book {

namespace {

constexpr qint64 longest_row = 1 << 20; ///< far above the longest that Soakbook writes
constexpr std::size_t pages_kept = 512;

int two_bytes(const QByteArray& page, int at) { return qFromBigEndian<quint16>(page.constData() + at); }
std::uint32_t four_bytes(const QByteArray& page, int at) { return qFromBigEndian<quint32>(page.constData() + at); }

// A number of one to nine bytes, seven bits in each but the ninth. Moves `at` behind it; nothing beyond the end.
std::optional<qint64> varint(const QByteArray& bytes, qsizetype& at, qsizetype end) {
    std::uint64_t value = 0;
    for (int i = 0; i < 9; ++i) {
        if (at >= end)
            return std::nullopt;
        const auto byte = static_cast<std::uint8_t>(bytes.at(at++));
        if (i == 8)
            return static_cast<qint64>((value << 8) | byte);
        value = (value << 7) | (byte & 0x7f);
        if (byte < 0x80)
            return static_cast<qint64>(value);
    }
    return std::nullopt;
}

std::optional<qint64> content_size(qint64 type) {
    static constexpr qint64 sizes[] = {0, 1, 2, 3, 4, 6, 8, 8, 0, 0};
    if (type < 0 || type == 10 || type == 11)
        return std::nullopt;
    return type < 10 ? sizes[type] : (type - 12) / 2;
}

StoredCell read_content(const QByteArray& payload, qsizetype at, qint64 type, qint64 size) {
    StoredCell cell;
    if (type == 8 || type == 9) {
        cell.kind = 'i';
        cell.number = type - 8;
    } else if (type >= 1 && type <= 6) {
        cell.kind = 'i';
        std::uint64_t value = (payload.at(at) & 0x80) != 0 ? ~std::uint64_t{0} : 0;
        for (qint64 i = 0; i < size; ++i)
            value = (value << 8) | static_cast<std::uint8_t>(payload.at(at + i));
        cell.number = static_cast<qint64>(value);
    } else if (type == 7) {
        cell.kind = 'f';
        cell.bytes = payload.mid(at, size);
    } else if (type >= 12) {
        cell.kind = type % 2 == 0 ? 'b' : 's';
        cell.bytes = payload.mid(at, size);
    }
    return cell;
}

// The whole payload must be what its head says, to the byte: so hardly anything else is taken for a row.
bool read_payload(const QByteArray& payload, StoredRow& row) {
    qsizetype at = 0;
    const auto head = varint(payload, at, payload.size());
    if (!head || *head < at || *head > payload.size())
        return false;
    std::vector<qint64> types;
    qint64 total = *head;
    while (at < *head) {
        const auto type = varint(payload, at, *head);
        const auto size = type ? content_size(*type) : std::nullopt;
        if (!size || *size > payload.size())
            return false;
        types.push_back(*type);
        total += *size;
    }
    if (total != payload.size() || types.empty())
        return false;
    for (const qint64 type : types) {
        const qint64 size = *content_size(type);
        row.cells.push_back(read_content(payload, at, type, size));
        at += size;
    }
    return true;
}

} // namespace

bool PageFile::open(const QString& path) {
    m_file.setFileName(path);
    if (!m_file.open(QIODevice::ReadOnly))
        return false;
    const QByteArray head = m_file.read(100);
    if (head.size() == 100 && head.startsWith(QByteArray("SQLite format 3\0", 16))) {
        const int size = two_bytes(head, 16) == 1 ? 65536 : two_bytes(head, 16);
        const int reserved = static_cast<std::uint8_t>(head.at(20));
        if (size >= 512 && std::has_single_bit(static_cast<unsigned>(size)) && size - reserved >= 480) {
            m_size = size;
            m_usable = size - reserved;
            m_has_head = true;
        }
    }
    m_pages = static_cast<std::uint32_t>(std::min<qint64>((m_file.size() + m_size - 1) / m_size, 0x7fffffff));
    m_overflow_left = 4 * static_cast<qint64>(m_pages) + 64;
    return m_pages > 0;
}

const QByteArray& PageFile::page(std::uint32_t number) {
    const auto kept = m_cache.find(number);
    if (kept != m_cache.end())
        return kept->second;
    if (m_cache.size() >= pages_kept)
        m_cache.clear();
    QByteArray bytes;
    if (m_file.seek((static_cast<qint64>(number) - 1) * m_size))
        bytes = m_file.read(m_size);
    // The end of a file that was cut, and what the disk does not give, reads as nothing.
    bytes.append(QByteArray(m_size - bytes.size(), '\0'));
    return m_cache[number] = bytes;
}

PageFile::Kind PageFile::kind(std::uint32_t number) {
    if (!is_page(number))
        return Kind::other;
    const QByteArray& bytes = page(number);
    const int head = head_of(number);
    const int cells = two_bytes(bytes, head + 3);
    if (bytes.at(head) == 0x0d && head + 8 + 2 * cells <= m_usable)
        return Kind::leaf;
    if (bytes.at(head) == 0x05 && head + 12 + 2 * cells <= m_usable)
        return Kind::interior;
    return Kind::other;
}

bool PageFile::is_index(std::uint32_t number) {
    return is_page(number) && (page(number).at(head_of(number)) == 0x02 || page(number).at(head_of(number)) == 0x0a);
}

bool PageFile::read_overflow(QByteArray& payload, qint64 size, std::uint32_t first, std::vector<std::uint32_t>& pages) {
    std::uint32_t next = first;
    while (payload.size() < size) {
        if (!is_page(next) || m_overflow_left-- <= 0)
            return false;
        const QByteArray& bytes = page(next);
        pages.push_back(next);
        payload += bytes.mid(4, std::min<qint64>(size - payload.size(), m_usable - 4));
        next = four_bytes(bytes, 0);
    }
    return true;
}

std::optional<StoredRow> PageFile::read_row(std::uint32_t number, int place) {
    const QByteArray bytes = page(number);
    qsizetype at = two_bytes(bytes, head_of(number) + 8 + 2 * place);
    const auto size = varint(bytes, at, m_usable);
    const auto id = size ? varint(bytes, at, m_usable) : std::nullopt;
    if (!id || *size < 2 || *size > longest_row)
        return std::nullopt;
    const qint64 most = m_usable - 35;
    qint64 local = *size;
    if (*size > most) {
        const qint64 least = (m_usable - 12) * 32 / 255 - 23;
        const qint64 fitting = least + (*size - least) % (m_usable - 4);
        local = fitting <= most ? fitting : least;
    }
    if (at + local + (local < *size ? 4 : 0) > m_usable)
        return std::nullopt;
    StoredRow row;
    row.id = *id;
    QByteArray payload = bytes.mid(at, local);
    if (local < *size && !read_overflow(payload, *size, four_bytes(bytes, static_cast<int>(at + local)), row.overflow))
        return std::nullopt;
    return read_payload(payload, row) ? std::optional(std::move(row)) : std::nullopt;
}

std::vector<std::optional<StoredRow>> PageFile::rows(std::uint32_t leaf) {
    std::vector<std::optional<StoredRow>> rows;
    if (kind(leaf) != Kind::leaf)
        return rows;
    const int cells = two_bytes(page(leaf), head_of(leaf) + 3);
    for (int place = 0; place < cells; ++place)
        rows.push_back(read_row(leaf, place));
    return rows;
}

std::optional<StoredRow> PageFile::row(const StoredAt& at) {
    // What was read once is read again whatever was followed since.
    m_overflow_left = std::max<qint64>(m_overflow_left, longest_row / 480 + 2);
    if (kind(at.page) != Kind::leaf || at.cell >= two_bytes(page(at.page), head_of(at.page) + 3))
        return std::nullopt;
    return read_row(at.page, at.cell);
}

std::vector<std::uint32_t> PageFile::below(std::uint32_t interior) {
    std::vector<std::uint32_t> pages;
    if (kind(interior) != Kind::interior)
        return pages;
    const QByteArray bytes = page(interior);
    const int head = head_of(interior);
    for (int place = 0; place < two_bytes(bytes, head + 3); ++place) {
        const int at = two_bytes(bytes, head + 12 + 2 * place);
        if (at + 4 <= m_usable && is_page(four_bytes(bytes, at)))
            pages.push_back(four_bytes(bytes, at));
    }
    if (is_page(four_bytes(bytes, head + 8)))
        pages.push_back(four_bytes(bytes, head + 8));
    return pages;
}

std::set<std::uint32_t> PageFile::free_pages() {
    std::set<std::uint32_t> free;
    if (!m_has_head)
        return free;
    std::uint32_t trunk = four_bytes(page(1), 32);
    while (is_page(trunk) && free.insert(trunk).second) {
        const QByteArray bytes = page(trunk);
        const std::uint32_t leaves = std::min<std::uint32_t>(four_bytes(bytes, 4), static_cast<std::uint32_t>(m_usable / 4 - 2));
        for (std::uint32_t i = 0; i < leaves; ++i)
            if (const std::uint32_t leaf = four_bytes(bytes, static_cast<int>(8 + 4 * i)); is_page(leaf))
                free.insert(leaf);
        trunk = four_bytes(bytes, 0);
    }
    return free;
}

} // namespace soakbook::book
