// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/opening.h"

#include "app/file_place.h"
#include "core/book/file_header.h"
#include "core/book/safe_copy.h"

#include <QDir>
#include <QFileInfo>

namespace soakbook::app {

namespace {

tl::unexpected<NotOpen> not_open(book::NotOpened why) { return tl::unexpected(NotOpen{why, {}}); }

bool lies_in(const QString& file, const QString& folder) {
    const QString inside = QFileInfo(folder).canonicalFilePath();
    return !folder.isEmpty() && !inside.isEmpty() && file.startsWith(inside + QLatin1Char('/'));
}

std::optional<LookingWhy> why_kept(const QString& file) {
    switch (writable(file)) {
    case Writable::medium_kept:
        return LookingWhy::medium_kept;
    case Writable::folder_kept:
        return LookingWhy::folder_kept;
    case Writable::file_kept:
        return LookingWhy::file_kept;
    case Writable::yes:
        break;
    }
    return std::nullopt;
}

/// An older workbook is brought up on a copy that nobody keeps, and the copy is looked at.
tl::expected<std::unique_ptr<book::Workbook>, book::NotOpened> look_at_copy(const QString& file, std::unique_ptr<QTemporaryDir>& aside) {
    aside = std::make_unique<QTemporaryDir>();
    const QString copy = aside->filePath(QFileInfo(file).fileName());
    const auto copied = book::copy_for_checking(file, copy);
    if (!copied)
        return tl::unexpected(copied.error() == book::NotCopied::busy ? book::NotOpened::busy : book::NotOpened::not_copied);
    if (auto brought_up = book::Workbook::open(copy, aside->filePath(QStringLiteral("before"))); !brought_up)
        return tl::unexpected(brought_up.error());
    return book::Workbook::open_for_looking(copy);
}

tl::expected<OpenBook, NotOpen> look_at(const QString& file, LookingWhy why, const std::optional<Holder>& holder = {}) {
    OpenBook open;
    const auto pages = why == LookingWhy::damaged ? book::Workbook::Pages::as_they_are : book::Workbook::Pages::sound;
    auto workbook = book::Workbook::open_for_looking(file, pages);
    if (!workbook && workbook.error() == book::NotOpened::not_brought_up)
        workbook = look_at_copy(file, open.aside);
    if (!workbook)
        return not_open(workbook.error());
    open.workbook = std::move(*workbook);
    open.file = file;
    open.looking = open.workbook->is_newer() ? LookingWhy::newer : why;
    open.holder = holder;
    return open;
}

} // namespace

tl::expected<OpenBook, NotOpen> open_book(const QString& path, const QString& copies, const QDateTime& now, const Wish& wish) {
    const QFileInfo info(path);
    const QString real = info.canonicalFilePath();
    const QString file = real.isEmpty() ? info.absoluteFilePath() : real;
    const auto head = book::judge_header(file);
    if (head && *head != book::NotOpened::newer)
        return not_open(*head);
    if (wish.look)
        return look_at(file, wish.why, wish.holder);
    if (head)
        return look_at(file, LookingWhy::newer);
    if (lies_in(file, copies))
        return look_at(file, LookingWhy::safe_copy);
    if (const auto kept = why_kept(file))
        return look_at(file, *kept);
    auto lock = wish.take_over ? Lock::take_over(file, wish.holder, now) : Lock::take(file, now);
    if (!lock && lock.error().why == NotLocked::Why::no_place)
        return look_at(file, LookingWhy::folder_kept);
    if (!lock)
        return tl::unexpected(NotOpen{{}, lock.error()});
    auto workbook = book::Workbook::open(file, copies);
    if (!workbook)
        return not_open(workbook.error());
    OpenBook open;
    open.lock = std::move(*lock);
    open.workbook = std::move(*workbook);
    open.file = file;
    return open;
}

} // namespace soakbook::app
