// SPDX-License-Identifier: GPL-3.0-or-later
// A workbook in a folder of its own with one of every record in it, written through the records alone; and a second,
// raw connection of SQLite's own interface, as another program would have it.
#pragma once

#include "core/book/codes.h"
#include "core/book/record_io.h"
#include "core/book/records/bag.h"
#include "core/book/records/batch.h"
#include "core/book/records/batch_input.h"
#include "core/book/records/hive.h"
#include "core/book/records/material_lot.h"
#include "core/book/records/pail.h"
#include "core/book/records/placement.h"
#include "core/book/records/pour.h"
#include "core/book/records/soak.h"
#include "core/book/records/strip_kind.h"
#include "core/book/records/vessel.h"
#include "core/book/records/yard.h"
#include "core/book/workbook.h"

#include <QTemporaryDir>

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <map>
#include <memory>
#include <string>

struct sqlite3;

namespace soakbook::tests {

constexpr maths::Day first_day = maths::day(2026, 8, 3);
maths::Instant moment(int n, int hour = 12);
book::Doing on_day(int n, int hour = 12, const QString& why = {});

class Shelf {
public:
    Shelf();
    book::Workbook& book() { return *m_workbook; }
    const QString& path() const { return m_path; }
    QString folder() const { return m_folder.path(); }
    void close() { m_workbook.reset(); }

    /// Writes one piece of work.
    template <class F> void write(const char* key, F&& f, const book::Doing& doing = on_day(10)) {
        struct Done {
            explicit operator bool() const { return true; }
        };
        m_workbook->write({QLatin1String(key), 1, {}}, doing, [&](book::Writing& writing) {
            f(writing);
            return Done{};
        });
    }
    /// One of every record: a batch mixed, soaked, weighed, bagged and poured, strips of it in a hive.
    void fill();

    book::Id<book::StripKind> kind;
    book::Id<book::Vessel> tank;
    book::Id<book::Vessel> bin;
    book::Id<book::MaterialLot> acid;
    book::Id<book::MaterialLot> glycerine;
    book::Id<book::Batch> batch;       ///< mixed on day 0, 62.5 kg
    book::Id<book::Batch> other_batch; ///< mixed on day 5, 10 kg
    book::Id<book::BatchInput> input;
    book::Id<book::Soak> soak;       ///< of 480 strips, day 1
    book::Id<book::Bag> bag;         ///< of 80 strips, sealed on day 2, use by a year later, 8 in the hive
    book::Id<book::Bag> empty_label; ///< reserved, not filled
    book::Id<book::Pour> pour;
    book::Id<book::Pail> pail; ///< 20 kg of 40 %
    book::Id<book::Yard> yard;
    book::Id<book::Hive> hive;
    book::Id<book::Placement> placement;

    QString give(book::Writing& writing, char kind);

private:
    QTemporaryDir m_folder;
    QString m_path;
    std::unique_ptr<book::Workbook> m_workbook;
    std::map<char, qint64> m_numbers;
};

/// Another program's connection to the same file.
class Raw {
public:
    explicit Raw(const QString& path);
    ~Raw();
    Raw(const Raw&) = delete;
    Raw& operator=(const Raw&) = delete;
    /// Empty when it was done, else what SQLite said.
    std::string run(const std::string& sql);
    std::string cell(const std::string& sql);

private:
    sqlite3* m_handle = nullptr;
};

/// Every record of the file as text, for comparing.
std::string records_of(const QString& path);
std::string records_of(Raw& raw);

} // namespace soakbook::tests
