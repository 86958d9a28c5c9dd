// SPDX-License-Identifier: GPL-3.0-or-later
// Entries of one copy: when, by whom, what; with a box before each where they can be taken over.
#pragma once

#include "core/work/apart.h"

#include <QTreeWidget>

namespace soakbook::ui {

class Desk;

class EntryList : public QTreeWidget {
    Q_OBJECT

public:
    /// Read aloud as `spoken_name`. `with_boxes` for entries that can be taken over.
    EntryList(const QString& spoken_name, bool with_boxes, QWidget* parent = nullptr);

    void set_entries(const Desk& desk, const std::vector<work::LoneEntry>& entries);
    /// Keys of the entries with a tick.
    std::set<qint64> ticked() const;
    void tick_all(bool ticked);
    /// The key of the entry with the keyboard, 0 without one.
    qint64 current() const;
    void choose(qint64 key);

Q_SIGNALS:
    void ticks_changed();
    /// Another entry has the keyboard, or the keyboard came to this list.
    void current_changed();

protected:
    void focusInEvent(QFocusEvent* event) override;

private:
    bool m_with_boxes;
    bool m_filling = false;
};

} // namespace soakbook::ui
