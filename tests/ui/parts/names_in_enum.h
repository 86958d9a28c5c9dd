// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFile>
#include <QRegularExpression>
#include <QStringList>

#include <gtest/gtest.h>

namespace soakbook::ui {

/// The names in `enum class WHICH`, read from its header (a path under the house), so that one added there is missed here.
inline QStringList names_in_enum(const QString& path, const QString& which) {
    QFile header(QStringLiteral(SOAKBOOK_SOURCE_DIR "/") + path);
    EXPECT_TRUE(header.open(QIODevice::ReadOnly));
    const QString text = QString::fromUtf8(header.readAll());
    const auto from = text.indexOf(QStringLiteral("enum class %1 {").arg(which));
    EXPECT_GE(from, 0) << qPrintable(which);
    const QString body = text.mid(from, text.indexOf(QStringLiteral("};"), from) - from);
    QStringList names;
    for (const QString& line : body.split(QLatin1Char('\n')).mid(1)) {
        const auto match = QRegularExpression(QStringLiteral("^\\s*([a-z_]+),")).match(line);
        if (match.hasMatch()) {
            names << match.captured(1);
        }
    }
    return names;
}

} // namespace soakbook::ui
