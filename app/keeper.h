// SPDX-License-Identifier: GPL-3.0-or-later
// Keeps the open workbook safe behind the work: safe copies in time and in two places, each checked in full on a thread of
// its own. A copy that was found sound is the whole check of the workbook, too.
#pragma once

#include "app/clock.h"
#include "core/book/verify.h"
#include "ui/setup/copy_keeper.h"

#include <memory>
#include <optional>

namespace soakbook::book {
class Workbook;
}

namespace soakbook::app {

class Keeper : public ui::CopyKeeper {
    Q_OBJECT

public:
    /// `folder` is where copies go; a second place is read from the settings of this user (ui::second_place).
    /// It copies by itself: when entries were made since the last copy, after 20 pieces of work or 30 minutes, and weekly;
    /// the first time shortly after it is made. A workbook for looking alone is copied only on demand.
    /// It is to be gone before the workbook is.
    Keeper(book::Workbook& workbook, QString folder, Clock clock, QObject* parent = nullptr);
    ~Keeper() override;

    void copy_now() override;
    /// The same, where entries up to `until` were verified before and need not be looked at again.
    void copy_now(const std::optional<book::VerifiedUntil>& until);
    /// Up to there it was found sound: in a large workbook a copy is looked at from there on, but for once a week.
    void take_for_verified(const book::VerifiedUntil& until);
    bool is_at_it() const { return stage() != Stage::idle; }
    /// Asks the clock whether a copy is due, and begins it. Called by itself every minute.
    void look();
    /// Ends what is under way and copies once more if entries were made since the last copy, also to the second place if it
    /// answers. Before the workbook is closed. Gives one sentence when entries are without a safe copy then.
    QString finish();

    Stage stage() const override;
    int percent() const override;
    QString failure() const override;
    QString second_failure() const override;
    void send_copy(const QString& to) override;
    void look_at_second_place() override;
    std::vector<work::CopyLine> second_copies() const override;

Q_SIGNALS:
    void progress(int percent);
    /// A copy was made and found sound.
    void copied(const soakbook::book::Verdict& verdict);
    /// The workbook, or rather the copy of its pages, was found damaged, twice.
    void found_damaged(const soakbook::book::Verdict& verdict);
    /// No copy could be made; in words.
    void failed(const QString& why);

private:
    struct Inside;
    std::unique_ptr<Inside> m_inside;
};

} // namespace soakbook::app
