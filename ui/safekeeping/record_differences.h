// SPDX-License-Identifier: GPL-3.0-or-later
// What one entry wrote, record by record, as it stands here and in the other copy.
#pragma once

#include "core/work/apart.h"
#include "core/work/register_view.h"

#include <QTreeWidget>

namespace soakbook::ui {

class Desk;

class RecordDifferences : public QTreeWidget {
    Q_OBJECT

public:
    explicit RecordDifferences(QWidget* parent = nullptr);

    /// Records of an entry of the other copy; one that was changed in both has a box for theirs.
    void show_there(const Desk& desk, const std::vector<work::RecordApart>& records);
    /// What an entry that stands only here changed.
    void show_here(const Desk& desk, const std::vector<work::CorrectionLine>& lines);
    /// The records that are to say what they say there, of all entries that were looked at.
    const std::set<work::RecordKey>& theirs() const { return m_theirs; }
    void forget_choices() { m_theirs.clear(); }

private:
    void take_tick(QTreeWidgetItem* item);
    void begin(const QStringList& headers);
    void end();

    std::vector<work::RecordApart> m_records;
    std::set<work::RecordKey> m_theirs;
    bool m_filling = false;
};

} // namespace soakbook::ui
