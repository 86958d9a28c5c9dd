// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/example/player.h"

#include "core/work/figures.h"
#include "core/work/materials.h"
#include "core/work/setup.h"

#include <QJsonArray>

namespace soakbook::work {

namespace {

StripKindEntry kind_from(const QJsonObject& o) {
    StripKindEntry kind;
    kind.name = o[QStringLiteral("name")].toString();
    kind.dry = maths::grams(o[QStringLiteral("dry_g")].toDouble());
    kind.target = maths::grams(o[QStringLiteral("target_g")].toDouble());
    kind.tolerance = maths::grams(o[QStringLiteral("tolerance_g")].toDouble());
    kind.strips_per_bag = o[QStringLiteral("per_bag")].toInt();
    kind.dose_rule = DoseRule::frames_of_bees;
    kind.dose_frames_tenths = o[QStringLiteral("frames_tenths")].toInt();
    kind.dose_least = o[QStringLiteral("least")].toInt();
    kind.dose_most = o[QStringLiteral("most")].toInt();
    return kind;
}

VesselEntry vessel_from(const QJsonObject& o) {
    VesselEntry vessel;
    vessel.name = o[QStringLiteral("name")].toString();
    vessel.is_tank = o.contains(QStringLiteral("capacity_kg"));
    if (vessel.is_tank)
        vessel.capacity = maths::kilograms(o[QStringLiteral("capacity_kg")].toDouble());
    else
        vessel.strips_held = o[QStringLiteral("strips")].toInt();
    if (o.contains(QStringLiteral("flood_kg")))
        vessel.flood = maths::kilograms(o[QStringLiteral("flood_kg")].toDouble());
    return vessel;
}

MaterialKind material_from(const QString& word) {
    return word == QStringLiteral("acid")        ? MaterialKind::acid
           : word == QStringLiteral("glycerine") ? MaterialKind::glycerine
           : word == QStringLiteral("strips")    ? MaterialKind::strips
                                                 : MaterialKind::bags;
}

} // namespace

bool ExamplePlayer::play_set_up(const QString& what, const Step& step) {
    if (what == QStringLiteral("set_up")) {
        FirstSetUp entry;
        entry.operation = {step[QStringLiteral("name")].toString(), step[QStringLiteral("maker")].toString(), step[QStringLiteral("registration")].toString()};
        entry.person = step[QStringLiteral("who")].toString();
        entry.kind = kind_from(step[QStringLiteral("kind")].toObject());
        entry.tank = vessel_from(step[QStringLiteral("tank")].toObject());
        entry.bin = vessel_from(step[QStringLiteral("bin")].toObject());
        must(step, [&](const Confirmed&) { return first_set_up(m_workbook, entry, doing(step)); });
    } else if (what == QStringLiteral("person")) {
        must(step, [&](const Confirmed&) { return save_person(m_workbook, {{}, step[QStringLiteral("name")].toString(), true}, doing(step)); });
    } else if (what == QStringLiteral("vessel")) {
        must(step, [&](const Confirmed&) { return save_vessel(m_workbook, vessel_from(step), doing(step)); });
    } else if (what == QStringLiteral("figures")) {
        std::vector<SetFigure> changes;
        const QJsonObject said = step[QStringLiteral("said")].toObject();
        for (auto it = said.begin(); it != said.end(); ++it) {
            const auto which = figure_of(it.key());
            if (!which)
                throw std::runtime_error("no figure " + it.key().toStdString());
            changes.push_back({*which, static_cast<qint64>(it.value().toDouble()), step[QStringLiteral("source")].toString()});
        }
        must(step, [&](const Confirmed&) { return set_figures(m_workbook, changes, doing(step)); });
    } else if (what == QStringLiteral("lot")) {
        LotEntry entry;
        entry.material = material_from(step[QStringLiteral("material")].toString());
        entry.name = step[QStringLiteral("name")].toString();
        entry.supplier = step[QStringLiteral("supplier")].toString();
        entry.received_on = moment(step).local_day();
        const bool by_mass = entry.material == MaterialKind::acid || entry.material == MaterialKind::glycerine;
        const auto amount = [&](const QString& key) {
            const double n = step[key].toDouble();
            return by_mass ? maths::kilograms(n).count : static_cast<qint64>(n);
        };
        entry.amount = amount(QStringLiteral("amount"));
        if (step.contains(QStringLiteral("container")))
            entry.container_amount = amount(QStringLiteral("container"));
        if (entry.material == MaterialKind::acid) {
            entry.acid_form = FormOfAcid::dihydrate;
            entry.assay = maths::percent(step[QStringLiteral("assay")].toDouble());
        }
        if (entry.material == MaterialKind::strips) {
            entry.strip_kind = strip_kinds(m_workbook).at(0).id;
            if (step.contains(QStringLiteral("dry_g")))
                entry.dry = maths::grams(step[QStringLiteral("dry_g")].toDouble());
        }
        if (step.contains(QStringLiteral("cost")))
            entry.cost = maths::Money{static_cast<std::int64_t>(step[QStringLiteral("cost")].toDouble() * 10'000)};
        entry.best_before = day_at(step, QStringLiteral("best_before"));
        must(step, [&](const Confirmed& yes) { return save_lot(m_workbook, entry, doing(step), yes); });
    } else if (what == QStringLiteral("finish_lot")) {
        must(step, [&](const Confirmed&) { return finish_lot(m_workbook, lot(step[QStringLiteral("name")].toString()), doing(step)); });
    } else {
        return false;
    }
    return true;
}

} // namespace soakbook::work
