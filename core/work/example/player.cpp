// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/example/player.h"

#include "core/work/hives.h"
#include "core/work/materials.h"
#include "core/work/setup.h"
#include "core/work/undo.h"

#include <QJsonArray>
#include <QJsonDocument>

namespace soakbook::work {

ExamplePlayer::ExamplePlayer(book::Workbook& workbook, maths::Instant now, WallClock wall)
    : m_workbook(workbook), m_now(now), m_wall(std::move(wall)) {}

void ExamplePlayer::play(const QByteArray& recipe) {
    QJsonParseError error;
    const QJsonDocument document = QJsonDocument::fromJson(recipe, &error);
    if (!document.isArray())
        throw std::runtime_error("the example's recipe cannot be read: " + error.errorString().toStdString());
    int line = 0;
    for (const QJsonValue& value : document.array()) {
        ++line;
        try {
            play_step(value.toObject());
        } catch (const std::exception& failure) {
            throw std::runtime_error("step " + std::to_string(line) + " of the example (" +
                                     value.toObject()[QStringLiteral("do")].toString().toStdString() + "): " + failure.what());
        }
    }
}

void ExamplePlayer::play_step(const Step& step) {
    const QString what = step[QStringLiteral("do")].toString();
    if (step.contains(QStringLiteral("who")))
        m_who = step[QStringLiteral("who")].toString();
    if (what == QStringLiteral("undo")) {
        must(step, [&](const Confirmed&) { return undo(m_workbook, doing(step)); });
        return;
    }
    if (!play_set_up(what, step) && !play_shed(what, step) && !play_bags(what, step) && !play_yards(what, step) && !play_hives(what, step))
        throw std::runtime_error("no such piece of work");
}

maths::Instant ExamplePlayer::moment(const Step& step) const {
    if (step.contains(QStringLiteral("ago"))) {
        maths::Instant at = m_now;
        at.utc_ms -= static_cast<std::int64_t>(step[QStringLiteral("ago")].toInt()) * 60'000;
        return at;
    }
    const auto day = maths::days_after(m_now.local_day(), step[QStringLiteral("day")].toInt());
    const QStringList time = step[QStringLiteral("time")].toString(QStringLiteral("12:00")).split(QLatin1Char(':'));
    return m_wall(day, time.value(0).toInt() * 60 + time.value(1).toInt());
}

book::Doing ExamplePlayer::doing(const Step& step) const {
    book::Doing d;
    d.at = moment(step);
    if (step.contains(QStringLiteral("entered_day"))) {
        Step entered = step;
        entered[QStringLiteral("day")] = step[QStringLiteral("entered_day")];
        d.at = moment(entered);
    }
    d.who = m_who;
    d.why = step[QStringLiteral("why")].toString();
    return d;
}

std::optional<maths::Day> ExamplePlayer::day_at(const Step& step, const QString& key) const {
    if (!step.contains(key))
        return std::nullopt;
    return maths::days_after(m_now.local_day(), step[key].toInt());
}

LotId ExamplePlayer::lot(const QString& name) const {
    for (const LotLine& line : lots(m_workbook, m_now.local_day()))
        if (line.entry.name == name)
            return line.entry.id;
    throw std::runtime_error("no lot " + name.toStdString());
}

VesselId ExamplePlayer::vessel(const QString& name) const {
    for (const VesselEntry& v : vessels(m_workbook, true))
        if (v.name == name)
            return v.id;
    throw std::runtime_error("no vessel " + name.toStdString());
}

YardId ExamplePlayer::yard(const QString& name) const {
    for (const YardEntry& y : yards(m_workbook, true))
        if (y.name == name)
            return y.id;
    throw std::runtime_error("no yard " + name.toStdString());
}

HiveId ExamplePlayer::hive(YardId yard, const QString& name) const {
    for (const HiveEntry& h : hives(m_workbook, yard, true))
        if (h.name == name)
            return h.id;
    throw std::runtime_error("no hive " + name.toStdString());
}

BatchId ExamplePlayer::batch(const Step& step) const {
    const QString name = step[QStringLiteral("batch")].toString();
    const auto found = m_names.batches.constFind(name);
    if (found == m_names.batches.constEnd())
        throw std::runtime_error("no batch " + name.toStdString());
    return *found;
}

// "bags": [first, last], counted from 1 within the batch.
std::vector<BagId> ExamplePlayer::bags_named(const Step& step) const {
    const auto& all = m_names.bags.value(step[QStringLiteral("batch")].toString());
    const QJsonArray range = step[QStringLiteral("bags")].toArray();
    std::vector<BagId> some;
    for (int n = range.at(0).toInt(); n <= range.at(1).toInt(); ++n)
        some.push_back(all.at(static_cast<std::size_t>(n - 1)));
    return some;
}

} // namespace soakbook::work
