// SPDX-License-Identifier: GPL-3.0-or-later
// One SQL statement, run and finished: no SELECT stays open behind a page.
#pragma once

#include "core/book/value.h"

#include <QSqlDatabase>
#include <QSqlQuery>

#include <stdexcept>

namespace soakbook::book {

/// The store refused or failed; `code` is SQLite's result code.
struct StoreError : std::runtime_error {
    int code;
    StoreError(int result_code, const std::string& what) : std::runtime_error(what), code(result_code) {}
};
/// Another program holds the workbook just now.
struct Busy : StoreError {
    using StoreError::StoreError;
};
/// The disk is full, or the file may grow no more.
struct DiskFull : StoreError {
    using StoreError::StoreError;
};
/// The disk, or the memory of the computer, failed at a read, a write or a sync, or what was read is damaged.
struct DiskFailed : StoreError {
    using StoreError::StoreError;
};
/// The file or its folder cannot be written.
struct ReadOnly : StoreError {
    using StoreError::StoreError;
};
/// Another file lies in the place of the open workbook.
struct Replaced : ReadOnly {
    using ReadOnly::ReadOnly;
};
/// Another program changed the workbook since it was last looked at. Said once, before anything is written: whoever shows
/// the workbook was told to ask again, and the next piece of work goes ahead.
struct ChangedOutside : StoreError {
    using StoreError::StoreError;
};
/// The workbook was opened for looking alone.
struct LookingOnly : StoreError {
    using StoreError::StoreError;
};
/// Entries wait until the workbook is checked.
struct BeingChecked : StoreError {
    using StoreError::StoreError;
};
/// A law of the house was about to be broken; `what()` says which. Work checks before, so this is a fault of ours.
struct LawBroken : StoreError {
    using StoreError::StoreError;
};

/// Throws the error above that fits SQLite's result code.
[[noreturn]] void throw_store_error(int code, const QString& text);

class Statement {
public:
    /// Prepares `sql` with ? for values. Throws StoreError.
    Statement(const QSqlDatabase& db, const QString& sql);

    template <class T> Statement& bind(const T& value) {
        m_query.addBindValue(Cell<T>::write(value));
        return *this;
    }
    Statement& bind(const QVariant& value) {
        m_query.addBindValue(value);
        return *this;
    }
    Statement& bind(const char* text) {
        m_query.addBindValue(QString::fromUtf8(text));
        return *this;
    }

    /// Runs it. Throws StoreError.
    Statement& run();
    /// The next row, false at the end. Throws StoreError when it cannot be read.
    bool next();
    template <class T> T get(int column) const { return Cell<T>::read(m_query.value(column)); }
    qint64 new_id() const { return m_query.lastInsertId().toLongLong(); }
    int rows_changed() const { return m_query.numRowsAffected(); }

private:
    QSqlQuery m_query;
};

/// Runs a statement without values and without rows.
void run(const QSqlDatabase& db, const QString& sql);

} // namespace soakbook::book
