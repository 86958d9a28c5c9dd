// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/example/player.h"

#include "core/work/heat.h"
#include "core/work/mix.h"
#include "core/work/setup.h"
#include "core/work/shed_view.h"
#include "core/work/soak.h"
#include "core/work/weigh.h"

#include <QJsonArray>

namespace soakbook::work {

namespace {
std::optional<maths::Temperature> temperature_at(const QJsonObject& o, const QString& key) {
    return o.contains(key) ? std::optional(maths::celsius(o[key].toDouble())) : std::nullopt;
}
std::optional<int> number_at(const QJsonObject& o, const QString& key) {
    return o.contains(key) ? std::optional(o[key].toInt()) : std::nullopt;
}
} // namespace

bool ExamplePlayer::play_shed(const QString& what, const Step& step) {
    if (what == QStringLiteral("plan_mix")) {
        MixPlan plan;
        plan.amount = maths::kilograms(step[QStringLiteral("total_kg")].toDouble());
        plan.tank = vessel(step[QStringLiteral("tank")].toString());
        plan.strip_kind = strip_kinds(m_workbook).at(0).id;
        plan.acid_lot = lot(step[QStringLiteral("acid")].toString());
        plan.glycerine_lot = lot(step[QStringLiteral("glycerine")].toString());
        if (step.contains(QStringLiteral("pails_of"))) {
            const auto& pails = m_names.pails.value(step[QStringLiteral("pails_of")].toString());
            for (int i = 0; i < step[QStringLiteral("pails")].toInt(); ++i)
                plan.pails.push_back(pails.at(static_cast<std::size_t>(i)));
        }
        const auto planned = must(step, [&](const Confirmed& yes) { return plan_mix(m_workbook, plan, doing(step), yes); });
        m_names.batches[step[QStringLiteral("batch")].toString()] = planned.batch;
    } else if (what == QStringLiteral("weigh_mix")) {
        WeighedMix mix;
        mix.batch = batch(step);
        const auto view = batch_view(m_workbook, mix.batch, moment(step).local_day());
        const double acid_off = step[QStringLiteral("acid_off_g")].toDouble();
        for (const InputLine& input : view->inputs)
            mix.masses.emplace_back(input.id, input.is_acid && !input.pail ? input.planned + maths::grams(acid_off) : input.planned);
        must(step, [&](const Confirmed& yes) { return weigh_mix(m_workbook, mix, doing(step), yes); });
    } else if (what == QStringLiteral("reading")) {
        ReadingEntry entry;
        entry.batch = batch(step);
        entry.probe = temperature_at(step, QStringLiteral("probe"));
        entry.dial = temperature_at(step, QStringLiteral("dial"));
        entry.room = temperature_at(step, QStringLiteral("room"));
        if (step.contains(QStringLiteral("jacket")))
            entry.jacket_seen = step[QStringLiteral("jacket")].toBool();
        entry.at = moment(step);
        entry.note = step[QStringLiteral("note")].toString();
        must(step, [&](const Confirmed& yes) { return log_reading(m_workbook, entry, doing(step), yes); });
    } else if (what == QStringLiteral("stir")) {
        StirEntry entry;
        entry.batch = batch(step);
        entry.minutes = number_at(step, QStringLiteral("minutes"));
        entry.clear = step[QStringLiteral("clear")].toBool();
        if (*entry.clear)
            entry.outlet_poured_back = true;
        entry.at = moment(step);
        must(step, [&](const Confirmed& yes) { return log_stir(m_workbook, entry, doing(step), yes); });
    } else if (what == QStringLiteral("soak")) {
        SoakEntry entry;
        entry.batch = batch(step);
        for (const QJsonValue& b : step[QStringLiteral("bins")].toArray()) {
            SoakEntry::Bin bin;
            bin.bin = vessel(b.toObject()[QStringLiteral("bin")].toString());
            bin.strips = number_at(b.toObject(), QStringLiteral("strips"));
            entry.bins.push_back(bin);
        }
        entry.lot = lot(step[QStringLiteral("lot")].toString());
        entry.room = temperature_at(step, QStringLiteral("room"));
        entry.at = moment(step);
        m_names.soaks[step[QStringLiteral("batch")].toString()] = must(step, [&](const Confirmed& yes) { return start_soak(m_workbook, entry, doing(step), yes); });
    } else if (what == QStringLiteral("end_soak")) {
        for (const SoakId id : m_names.soaks.value(step[QStringLiteral("batch")].toString()))
            must(step, [&](const Confirmed&) { return end_soak(m_workbook, id, moment(step), doing(step)); });
    } else if (what == QStringLiteral("weigh") || what == QStringLiteral("correct_weigh")) {
        WeighEntry entry;
        const auto& soaks = m_names.soaks.value(step[QStringLiteral("batch")].toString());
        entry.soak = soaks.at(static_cast<std::size_t>(step[QStringLiteral("bin")].toInt(1) - 1));
        entry.strips = number_at(step, QStringLiteral("strips"));
        if (step.contains(QStringLiteral("total_g")))
            entry.total = maths::grams(step[QStringLiteral("total_g")].toDouble());
        for (const QJsonValue& v : step[QStringLiteral("singles_g")].toArray())
            entry.singles.push_back(maths::grams(v.toDouble()));
        entry.drip_minutes = number_at(step, QStringLiteral("drip"));
        entry.at = moment(step);
        if (what == QStringLiteral("weigh")) {
            must(step, [&](const Confirmed& yes) { return log_weighing(m_workbook, entry, doing(step), yes); });
        } else {
            const auto view = batch_view(m_workbook, batch(step), moment(step).local_day());
            for (const SoakLine& soak : view->soaks)
                if (soak.id == *entry.soak) {
                    entry.at = soak.weighings.back().at;
                    must(step, [&](const Confirmed&) { return correct_weighing(m_workbook, soak.weighings.back().id, entry, doing(step)); });
                }
        }
    } else {
        return false;
    }
    return true;
}

} // namespace soakbook::work
