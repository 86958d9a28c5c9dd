// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/example/player.h"

#include "core/work/hives.h"

#include <QJsonArray>

namespace soakbook::work {

bool ExamplePlayer::play_hives(const QString& what, const Step& step) {
    if (what == QStringLiteral("yard")) {
        const YardEntry entry{{}, step[QStringLiteral("name")].toString(), step[QStringLiteral("where")].toString(), step[QStringLiteral("note")].toString(), true};
        must(step, [&](const Confirmed&) { return save_yard(m_workbook, entry, doing(step)); });
    } else if (what == QStringLiteral("yard_time")) {
        YardTimeEntry entry;
        entry.yard = yard(step[QStringLiteral("yard")].toString());
        entry.kind = step[QStringLiteral("kind")].toString() == QStringLiteral("flow") ? TimeKind::flow : TimeKind::closed;
        entry.what = step[QStringLiteral("what")].toString();
        entry.from = day_at(step, QStringLiteral("from"));
        entry.to = day_at(step, QStringLiteral("to"));
        must(step, [&](const Confirmed&) { return save_yard_time(m_workbook, entry, doing(step)); });
    } else if (what == QStringLiteral("hives")) {
        const YardId where = yard(step[QStringLiteral("yard")].toString());
        HiveRow row;
        row.yard = where;
        row.prefix = step[QStringLiteral("prefix")].toString();
        row.first = 1;
        const QJsonArray frames = step[QStringLiteral("frames")].toArray();
        row.count = static_cast<int>(frames.size());
        row.digits = 2;
        const auto ids = must(step, [&](const Confirmed&) { return add_hives(m_workbook, row, doing(step)); });
        std::vector<HiveEntry> entries = hives(m_workbook, where);
        std::vector<HiveEntry> filled;
        for (std::size_t i = 0; i < ids.size(); ++i)
            for (HiveEntry& entry : entries)
                if (entry.id == ids[i]) {
                    entry.frames_of_bees = frames.at(static_cast<qsizetype>(i)).toInt();
                    entry.brood_boxes = *entry.frames_of_bees > 10 ? 2 : 1;
                    entry.supers_on = false;
                    filled.push_back(entry);
                }
        must(step, [&](const Confirmed&) { return save_hives(m_workbook, filled, doing(step)); });
    } else if (what == QStringLiteral("group")) {
        HiveEntry entry;
        entry.yard = yard(step[QStringLiteral("yard")].toString());
        entry.name = step[QStringLiteral("name")].toString();
        entry.hives = step[QStringLiteral("count")].toInt();
        entry.frames_of_bees = step[QStringLiteral("frames")].toInt();
        must(step, [&](const Confirmed&) { return save_hive(m_workbook, entry, doing(step)); });
    } else if (what == QStringLiteral("untreated")) {
        const YardId where = yard(step[QStringLiteral("yard")].toString());
        auto entry = work::hive(m_workbook, hive(where, step[QStringLiteral("hive")].toString()));
        entry->untreated = true;
        must(step, [&](const Confirmed&) { return save_hive(m_workbook, *entry, doing(step)); });
    } else if (what == QStringLiteral("move_hives")) {
        std::vector<HiveId> ids;
        for (const QJsonValue& name : step[QStringLiteral("hives")].toArray())
            ids.push_back(hive(yard(step[QStringLiteral("yard")].toString()), name.toString()));
        must(step, [&](const Confirmed&) {
            return move_hives(m_workbook, ids, yard(step[QStringLiteral("to")].toString()), moment(step).local_day(), doing(step));
        });
    } else {
        return false;
    }
    return true;
}

} // namespace soakbook::work
