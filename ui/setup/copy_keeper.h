// SPDX-License-Identifier: GPL-3.0-or-later
// Whoever keeps the open workbook safe, as the rooms know it: they ask for a copy, and are told how it goes.
#pragma once

#include "core/work/safe_copies.h"

#include <QObject>
#include <QString>

#include <vector>

namespace soakbook::ui {

class CopyKeeper : public QObject {
    Q_OBJECT

public:
    using QObject::QObject;

    enum class Stage {
        idle,
        copying,  ///< pages are copied beside the work
        checking, ///< the copy is read back whole
        carrying, ///< it is brought to the second place
    };
    virtual Stage stage() const = 0;
    virtual int percent() const = 0;
    /// What went wrong with the copies at home, and in the second place, in words; empty when nothing did.
    virtual QString failure() const = 0;
    virtual QString second_failure() const = 0;

    /// Begins a copy with its check now, unless one is under way.
    virtual void copy_now() = 0;
    /// Copies to the new file `to` for whoever it is sent to; `sent` or `not_sent` follows.
    virtual void send_copy(const QString& to) = 0;
    /// The second place was chosen anew: copies go there from now on, the newest one at once.
    virtual void look_at_second_place() = 0;
    /// What lies in the second place, as it was when it answered last.
    virtual std::vector<work::CopyLine> second_copies() const = 0;

Q_SIGNALS:
    /// Stage, percent, failures or the copies changed.
    void news();
    /// The copy at `path` was found sound; `seal` is the beginning of its newest seal.
    void sent(const QString& path, qint64 newest_entry, const QString& seal);
    void not_sent(const QString& why);
};

} // namespace soakbook::ui
