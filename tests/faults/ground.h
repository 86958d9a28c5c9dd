// SPDX-License-Identifier: GPL-3.0-or-later
// The ground on which things go wrong: a folder in memory where there is one, workbooks to spoil, and what must be true
// of a workbook afterwards.
#pragma once

#include "core/book/verify.h"
#include "tests/book/shelf.h"

#include <QByteArray>
#include <QDir>
#include <QString>
#include <QTemporaryDir>

#include <gtest/gtest.h>

#include <set>
#include <string>

namespace soakbook::faults {

using tests::on_day;

/// `quick` cases, or `many` when SOAKBOOK_LONG is set.
int cases(int quick, int many);

/// A folder for one test, gone with it. In memory where the system has such a place: what dies here is a process, not the
/// machine, so the disk need not be waited for.
class Ground {
public:
    Ground();
    QString file(const char* name) const { return m_folder.filePath(QLatin1String(name)); }
    QString path() const { return m_folder.path(); }

private:
    QTemporaryDir m_folder;
};

QByteArray bytes_of(const QString& path);
void put(const QString& path, const QByteArray& bytes);

/// A filled workbook of this version, as bytes; made once.
const QByteArray& filled_workbook();
/// The workbook that version 1 left, as bytes.
QByteArray workbook_of_version_1();

/// One entry of two records that belong together: a yard "entry <n>" and a hive in it.
void make_entry(book::Workbook& workbook, int n, const book::Doing& doing = on_day(10));
/// The numbers of the entries that are there whole; adds a failure for half ones.
std::set<int> entries_in(const QString& path);

/// Every cell of every table but uids and seals, read by SQLite alone. Nothing where it cannot be read.
std::string everything_in(const QString& path);

/// Opens the workbook as the program does, lets go of it, and checks it whole: it must be sound. Gives its verdict.
book::Verdict expect_sound(const QString& path, const std::string& when);

} // namespace soakbook::faults
