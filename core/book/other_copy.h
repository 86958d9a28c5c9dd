// SPDX-License-Identifier: GPL-3.0-or-later
// Another copy of the open workbook, opened for reading alone.
#pragma once

#include "core/book/workbook.h"

#include <QTemporaryDir>

namespace soakbook::book {

/// Whether both paths name one file, by whatever way. Asked of the folder: neither is opened.
bool is_same_file(const QString& one, const QString& other);

class OtherCopy {
public:
    /// Opens the workbook at `path`, which nobody may have open and of which not a byte is written. One of an older
    /// version, or with a log or a journal beside it, is read from a temporary copy that was put in order. Refuses
    /// `busy` for the file that is open `here`; of a strange structure nothing is run.
    static tl::expected<std::unique_ptr<OtherCopy>, NotOpened> open(const Workbook& here, const QString& path);
    ~OtherCopy();
    OtherCopy(const OtherCopy&) = delete;
    OtherCopy& operator=(const OtherCopy&) = delete;

    const QString& path() const { return m_path; }
    /// The file that is read: that at `path`, or the temporary copy.
    const QString& read_from() const { return m_read_from; }
    const QSqlDatabase& db() const { return m_db; }
    QByteArray uid() const;

private:
    explicit OtherCopy(QString path) : m_path(std::move(path)) {}
    std::optional<NotOpened> connect(bool put_in_order);
    bool copy_aside();

    QString m_path;
    QString m_read_from;
    std::unique_ptr<QTemporaryDir> m_aside;
    QSqlDatabase m_db;
};

} // namespace soakbook::book
