// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/scripts.h"

#include "app/open_words.h"
#include "core/book/file_header.h"
#include "core/book/safe_copy.h"
#include "core/book/verify.h"

#include <QCoreApplication>
#include <QDir>
#include <QTemporaryDir>
#include <QTextStream>
#include <QThread>

namespace soakbook::app {

namespace {

class ScriptWords {
    Q_DECLARE_TR_FUNCTIONS(Scripts)
};

enum Status { done = 0, damaged = 1, not_read = 2 };
constexpr int tries = 100;
constexpr unsigned long pause_ms = 50;

int say(Status status, const QString& sentence) {
    QTextStream(status == done ? stdout : stderr) << sentence << '\n';
    return status;
}

/// A writer is at it for some milliseconds at a time: what it holds is tried again for five seconds.
template <class F> auto patiently(F&& f) {
    auto result = f();
    for (int i = 0; i < tries && !result && result.error() == book::NotCopied::busy; ++i) {
        QThread::msleep(pause_ms);
        result = f();
    }
    return result;
}

int say_unopened(book::NotOpened why, const QString& path) {
    const bool is_damage = why == book::NotOpened::damaged || why == book::NotOpened::changed_structure || why == book::NotOpened::empty_file;
    return say(is_damage ? damaged : not_read, words_for(why, path));
}

int say_uncopied(book::NotCopied why, const QString& path, const QString& place) {
    const QString to = QDir::toNativeSeparators(place);
    switch (why) {
    case book::NotCopied::check_failed:
        return say_unopened(book::NotOpened::damaged, path);
    case book::NotCopied::busy:
        return say_unopened(book::NotOpened::busy, path);
    case book::NotCopied::unreadable:
        //: A command line sentence; %1 is a workbook's path.
        return say(not_read, ScriptWords::tr("%1 cannot be read, or work on it was broken off: open it once in Soakbook, which puts that right, and try again.")
                                 .arg(QDir::toNativeSeparators(path)));
    case book::NotCopied::exists_already:
        return say(not_read, words_for(book::NotOpened::exists_already, place));
    case book::NotCopied::disk_full:
        //: A command line sentence; %1 is the path of a file that was to be written.
        return say(not_read, ScriptWords::tr("There is no room for %1, or its disk failed. Nothing was left there; the workbook is as it was.").arg(to));
    case book::NotCopied::folder:
        break;
    }
    //: A command line sentence; %1 is the path of a file that was to be written.
    return say(not_read, ScriptWords::tr("%1 cannot be written. Name a new file in a folder that is there and that you may write to.").arg(to));
}

QString name_of(book::Check check) {
    switch (check) {
    case book::Check::structure:
        //: What is checked: the tables, indexes and triggers of a workbook.
        return ScriptWords::tr("structure");
    case book::Check::store:
        //: What is checked: the pages of the file.
        return ScriptWords::tr("pages");
    case book::Check::links:
        //: What is checked: whether each record that another one names is there.
        return ScriptWords::tr("links");
    case book::Check::anchor:
        //: What is checked: whether the workbook's own mark, and what was found sound before, are there.
        return ScriptWords::tr("mark");
    case book::Check::numbers:
        //: What is checked: the numbers of the entries in the history.
        return ScriptWords::tr("numbers");
    case book::Check::seals:
        //: What is checked: the seals of the history.
        return ScriptWords::tr("seals");
    case book::Check::records:
        break;
    }
    //: What is checked: each record against the history.
    return ScriptWords::tr("records");
}

QString place_of(const book::Entry& entry) {
    const QString record = entry.table.isEmpty() ? QString() : entry.table + QLatin1Char(' ') + QString::number(entry.row);
    if (entry.seq == 0)
        return record;
    if (!entry.piece)
        //: The place of a fault; %1 is the number of an entry, %2 a record or nothing.
        return ScriptWords::tr("entry %1 %2").arg(entry.seq).arg(record).trimmed();
    //: The place of a fault; %1 is the number of an entry, %2 that of a piece of work, %3 a record or nothing.
    return ScriptWords::tr("entry %1 of piece of work %2 %3").arg(entry.seq).arg(*entry.piece).arg(record).trimmed();
}

QString line_of(const book::CheckResult& result) {
    if (result.bad == 0)
        //: A line of a check; %1 is what was checked, %2 how many.
        return ScriptWords::tr("sound    %1: %2").arg(name_of(result.check)).arg(result.looked_at);
    const QString place = result.first ? place_of(*result.first) : QString();
    if (place.isEmpty())
        //: A line of a check; %1 is what was checked, %2 how many, %3 how many of them are bad.
        return ScriptWords::tr("damaged  %1: %2, of them bad: %3").arg(name_of(result.check)).arg(result.looked_at).arg(result.bad);
    //: A line of a check; %1 is what was checked, %2 how many, %3 how many of them are bad, %4 where the first one is.
    return ScriptWords::tr("damaged  %1: %2, of them bad: %3, the first: %4").arg(name_of(result.check)).arg(result.looked_at).arg(result.bad).arg(place);
}

} // namespace

int verify_file(const QString& path) {
    if (const auto refused = book::judge_header(path))
        return say_unopened(*refused, path);
    const QTemporaryDir folder;
    const QString copy = folder.filePath(QStringLiteral("copy.soakbook"));
    if (const auto copied = patiently([&] { return book::copy_for_checking(path, copy); }); !copied)
        return say_uncopied(copied.error(), path, copy);
    const book::Verdict verdict = book::verify(copy);
    if (!verdict.readable)
        return say_unopened(book::NotOpened::unreadable, path);
    for (const book::CheckResult& result : verdict.checks)
        say(done, line_of(result));
    if (!verdict.sound())
        return say_unopened(book::NotOpened::damaged, path);
    //: Last line of a check; %1 is the number of the newest entry, %2 how many came from other programs, %3 the beginning of
    //: its seal.
    return say(done, ScriptWords::tr("entries: %1, of them made outside Soakbook: %2, newest seal: %3")
                         .arg(verdict.last_seq)
                         .arg(verdict.outside)
                         .arg(QString::fromLatin1(verdict.until.seal.hash.toHex().left(16))));
}

int copy_file(const QString& path, const QString& to) {
    if (const auto refused = book::judge_header(path))
        return say_unopened(*refused, path);
    const auto copied = patiently([&] { return book::make_safe_copy_at(path, to); });
    if (!copied)
        return say_uncopied(copied.error(), path, to);
    //: A command line sentence; %1 is the path of the copy, %2 the number of the newest entry in it.
    return say(done, ScriptWords::tr("%1 holds the workbook up to entry %2.").arg(QDir::toNativeSeparators(to)).arg(copied->last_seq));
}

} // namespace soakbook::app
