// SPDX-License-Identifier: GPL-3.0-or-later
// A safe copy in steps, beside the work: first the pages, some at a time on the live connection; then the part file is
// checked whole and gets its name, which may be done in another thread.
#pragma once

#include "core/book/safe_copy_pages.h"
#include "core/book/verify.h"

#include <memory>

namespace soakbook::book {

/// A copy whose pages are all there and that has no name yet. Plain values, to be handed to another thread.
struct PartCopy {
    QString part;      ///< the file
    QString name;      ///< what it is called once it is found good
    QString folder;    ///< of safe copies, to be rotated then; empty for a copy that is sent elsewhere
    QString mark;
    QString live;      ///< the workbook, which is not to be touched
    qint64 last_seq = 0;
    Seal head;         ///< the newest seal of what was copied
    int version = 0;
};

class CopyUnderWay {
public:
    /// Begins a copy of the workbook in `folder`, which it makes. The workbook must outlive it.
    static tl::expected<std::unique_ptr<CopyUnderWay>, NotCopied> begin(const Workbook& workbook, const QString& folder);
    /// The same to the file `to`, which must not exist, for whoever it is sent to.
    static tl::expected<std::unique_ptr<CopyUnderWay>, NotCopied> begin_at(const Workbook& workbook, const QString& to);
    ~CopyUnderWay();
    CopyUnderWay(const CopyUnderWay&) = delete;
    CopyUnderWay& operator=(const CopyUnderWay&) = delete;

    tl::expected<PageCopy::Step, NotCopied> step(int pages) { return m_pages.step(pages); }
    int percent() const { return m_pages.percent(); }
    /// After the last step, before anything else is written: the part as it is, which is whoever takes it to look after.
    tl::expected<PartCopy, NotCopied> take();

private:
    CopyUnderWay(const Workbook& workbook, PartCopy copy);

    const Workbook& m_workbook;
    PartCopy m_copy;
    PageCopy m_pages;
    bool m_taken = false;
};

/// All of it at once, whatever lies in the folder already. With `from`, what was verified before is not looked at again.
tl::expected<SafeCopy, NotCopied> copy_afresh(const Workbook& workbook, const QString& folder, const std::optional<VerifiedUntil>& from = {});

/// Waits until the part is on the disk, reads it back from there for the whole check, and sees that it holds exactly what
/// was copied. With `from`, what was verified before is not looked at again.
Verdict check_part(const PartCopy& copy, const std::optional<VerifiedUntil>& from = {});
/// Gives it its name in one step, and lets copies go that need not stay. Only for what
/// check_part found sound; whatever happens, the part file is gone afterwards.
tl::expected<SafeCopy, NotCopied> name_part(const PartCopy& copy, const Verdict& verdict);

} // namespace soakbook::book
