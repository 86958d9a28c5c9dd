// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/row_image.h"

namespace soakbook::book {

namespace {

// A text literal may hold line ends; its quotes are doubled. `at` is moved behind the closing one.
QString read_quoted(const QString& image, qsizetype& at) {
    // An empty text is not nothing: a null string would be bound as NULL.
    QString text = QStringLiteral("");
    for (++at; at < image.size(); ++at) {
        if (image.at(at) == QLatin1Char('\'')) {
            if (at + 1 >= image.size() || image.at(at + 1) != QLatin1Char('\''))
                break;
            ++at;
        }
        text += image.at(at);
    }
    ++at;
    return text;
}

QVariant read_literal(const QString& image, qsizetype& at) {
    if (at < image.size() && image.at(at) == QLatin1Char('\''))
        return read_quoted(image, at);
    if (at + 1 < image.size() && image.at(at) == QLatin1Char('X') && image.at(at + 1) == QLatin1Char('\''))
        return QByteArray::fromHex(read_quoted(image, ++at).toLatin1());
    const qsizetype end = image.indexOf(QLatin1Char('\n'), at);
    const QString literal = image.mid(at, end < 0 ? -1 : end - at);
    at = end < 0 ? image.size() : end;
    bool is_number = false;
    const qint64 number = literal.toLongLong(&is_number);
    return is_number ? QVariant(number) : QVariant();
}

} // namespace

Cells read_cells(const QString& image) {
    Cells cells;
    qsizetype at = 0;
    while (at < image.size()) {
        const qsizetype equals = image.indexOf(QLatin1Char('='), at);
        if (equals < 0)
            break;
        const QString name = image.mid(at, equals - at);
        at = equals + 1;
        cells[name] = read_literal(image, at);
        ++at;
    }
    return cells;
}

QVariant cell(const Cells& cells, const QString& column) {
    const auto found = cells.find(column);
    return found == cells.end() ? QVariant() : found->second;
}

} // namespace soakbook::book
