// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/example/player.h"

#include "core/work/count.h"
#include "core/work/pull.h"
#include "core/work/round.h"
#include "core/work/setup.h"
#include "core/work/visit.h"

#include <QJsonArray>

namespace soakbook::work {

bool ExamplePlayer::play_yards(const QString& what, const Step& step) {
    if (what == QStringLiteral("plan_round")) {
        RoundEntry entry;
        entry.name = step[QStringLiteral("name")].toString();
        entry.strip_kind = strip_kinds(m_workbook).at(0).id;
        entry.planned_on = day_at(step, QStringLiteral("planned"));
        for (const QJsonValue& y : step[QStringLiteral("yards")].toArray())
            entry.yards.push_back(yard(y.toString()));
        m_names.rounds[entry.name] = must(step, [&](const Confirmed& yes) { return plan_round(m_workbook, entry, doing(step), yes); });
    } else if (what == QStringLiteral("close_round")) {
        must(step, [&](const Confirmed&) { return close_round(m_workbook, m_names.rounds.value(step[QStringLiteral("name")].toString()), doing(step)); });
    } else if (what == QStringLiteral("visit")) {
        const RoundId round = m_names.rounds.value(step[QStringLiteral("round")].toString());
        const YardId where = yard(step[QStringLiteral("yard")].toString());
        const maths::Day on = moment(step).local_day();
        const VisitPlan plan = must(step, [&](const Confirmed&) { return plan_visit(m_workbook, round, where, on); });
        VisitEntry entry;
        entry.round = round;
        entry.yard = where;
        entry.on = on;
        entry.supers_on = step[QStringLiteral("supers")].toBool();
        entry.past_limit_reason = step[QStringLiteral("past_limit_reason")].toString();
        const QJsonObject exceptions = step[QStringLiteral("except")].toObject();
        for (const VisitLine& line : plan.lines) {
            VisitEntry::Row row;
            row.hive = line.hive;
            row.strips = line.planned.value_or(0);
            const QJsonObject other = exceptions[line.name].toObject();
            if (other.contains(QStringLiteral("strips")))
                row.strips = other[QStringLiteral("strips")].toInt();
            if (other[QStringLiteral("dead")].toBool())
                row.state = StateOfHive::dead;
            row.note = other[QStringLiteral("note")].toString();
            entry.rows.push_back(row);
        }
        must(step, [&](const Confirmed& yes) { return enter_visit(m_workbook, entry, doing(step), yes); });
    } else if (what == QStringLiteral("pull")) {
        PullEntry entry;
        entry.on = moment(step).local_day();
        const QJsonObject missing = step[QStringLiteral("missing")].toObject();
        for (const PullLine& line : hanging(m_workbook, yard(step[QStringLiteral("yard")].toString()), *entry.on)) {
            PullEntry::Row row;
            row.placement = line.placement;
            if (missing.contains(line.hive_name)) {
                row.missing = std::min(missing[line.hive_name].toInt(), line.strips);
                row.pulled = line.strips - *row.missing;
            }
            entry.rows.push_back(row);
        }
        must(step, [&](const Confirmed& yes) { return enter_pull(m_workbook, entry, doing(step), yes); });
    } else if (what == QStringLiteral("count")) {
        CountEntry entry;
        const QString round = step[QStringLiteral("round")].toString();
        if (!round.isEmpty())
            entry.round = m_names.rounds.value(round);
        entry.on = moment(step).local_day();
        const YardId where = yard(step[QStringLiteral("yard")].toString());
        const QJsonObject mites = step[QStringLiteral("mites")].toObject();
        for (auto it = mites.begin(); it != mites.end(); ++it) {
            CountEntry::Row row;
            row.hive = hive(where, it.key());
            row.mites = it.value().toInt();
            row.bees = step[QStringLiteral("bees")].toInt();
            entry.rows.push_back(row);
        }
        must(step, [&](const Confirmed& yes) { return enter_counts(m_workbook, entry, doing(step), yes); });
    } else {
        return false;
    }
    return true;
}

} // namespace soakbook::work
