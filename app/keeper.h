// SPDX-License-Identifier: GPL-3.0-or-later
// Keeps the open workbook safe behind the work: safe copies in time and in two places, each checked in full on a thread of
// its own. A copy that was found sound is the whole check of the workbook, too.
#pragma once

#include "app/clock.h"
#include "core/book/verify.h"

#include <QObject>
#include <QString>

#include <memory>

namespace soakbook::book {
class Workbook;
}

namespace soakbook::app {

class Keeper : public QObject {
    Q_OBJECT

public:
    /// `folder` is where copies go; a second place is read from the settings of this user (work::second_place).
    /// It copies by itself: when entries were made since the last copy, after 20 pieces of work or 30 minutes, and weekly.
    Keeper(book::Workbook& workbook, QString folder, Clock clock, QObject* parent = nullptr);
    ~Keeper() override;

    /// Begins a copy with its check now, unless one is under way. `until`: what was verified before, so that entries up to
    /// there need not be looked at again; without it everything is looked at.
    void copy_now();
    bool is_at_it() const;
    /// Ends what is under way and copies once more if entries were made since the last copy. Before the workbook is closed.
    void finish();

Q_SIGNALS:
    void progress(int percent);
    /// A copy was made and found sound.
    void copied(const soakbook::book::Verdict& verdict);
    /// The workbook, or rather the copy of its pages, was found damaged.
    void found_damaged(const soakbook::book::Verdict& verdict);
    /// No copy could be made; in words.
    void failed(const QString& why);

private:
    struct Inside;
    std::unique_ptr<Inside> m_inside;
};

} // namespace soakbook::app
