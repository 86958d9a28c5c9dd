// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/example/player.h"

#include "core/work/bag.h"
#include "core/work/leftovers.h"
#include "core/work/papers.h"
#include "core/work/stock.h"

#include <QJsonArray>

namespace soakbook::work {

bool ExamplePlayer::play_bags(const QString& what, const Step& step) {
    const QString name = step[QStringLiteral("batch")].toString();
    const auto number_at = [&](const char* key) {
        return step.contains(QLatin1String(key)) ? std::optional(step[QLatin1String(key)].toInt()) : std::nullopt;
    };
    const auto add_bags = [&](const BagsFilled& filled) {
        for (const BagId id : filled.bags)
            m_names.bags[name].push_back(id);
    };
    if (what == QStringLiteral("fill_bags")) {
        BagEntry entry;
        entry.batch = batch(step);
        entry.bags = number_at("count");
        entry.last_bag = number_at("last_bag");
        if (step.contains(QStringLiteral("net_kg")))
            entry.net = maths::kilograms(step[QStringLiteral("net_kg")].toDouble());
        entry.sealed_on = moment(step).local_day();
        entry.stands = step[QStringLiteral("stands")].toString();
        if (step.contains(QStringLiteral("bag_lot")))
            entry.bag_lot = lot(step[QStringLiteral("bag_lot")].toString());
        add_bags(must(step, [&](const Confirmed& yes) { return fill_bags(m_workbook, entry, doing(step), yes); }));
    } else if (what == QStringLiteral("reserve_labels")) {
        add_bags(must(step, [&](const Confirmed&) { return reserve_labels(m_workbook, batch(step), number_at("count"), doing(step)); }));
    } else if (what == QStringLiteral("labels_printed")) {
        must(step, [&](const Confirmed&) { return labels_printed(m_workbook, bags_named(step), {}, doing(step)); });
    } else if (what == QStringLiteral("void_bag")) {
        for (const BagId id : bags_named(step))
            must(step, [&](const Confirmed&) { return void_bag(m_workbook, id, doing(step)); });
    } else if (what == QStringLiteral("move_bags")) {
        must(step, [&](const Confirmed&) { return move_bags(m_workbook, bags_named(step), step[QStringLiteral("stands")].toString(), doing(step)); });
    } else if (what == QStringLiteral("discard_strips")) {
        must(step, [&](const Confirmed&) {
            return discard_strips(m_workbook, bags_named(step).front(), number_at("strips"), moment(step).local_day(), step[QStringLiteral("reason")].toString(), doing(step));
        });
    } else if (what == QStringLiteral("recount_bag")) {
        must(step, [&](const Confirmed&) {
            return recount_bag(m_workbook, bags_named(step).front(), number_at("left"), step[QStringLiteral("reason")].toString(), doing(step));
        });
    } else if (what == QStringLiteral("pour")) {
        PourEntry entry;
        entry.batch = batch(step);
        for (const QJsonValue& v : step[QStringLiteral("pails_kg")].toArray())
            entry.pails.push_back(maths::kilograms(v.toDouble()));
        entry.warm_and_clear = step[QStringLiteral("warm")].toBool();
        entry.scraped = step[QStringLiteral("scraped")].toBool();
        entry.at = moment(step);
        entry.stands = step[QStringLiteral("stands")].toString();
        const auto poured = must(step, [&](const Confirmed& yes) { return pour_leftovers(m_workbook, entry, doing(step), yes); });
        for (const PailId id : poured.pails)
            m_names.pails[name].push_back(id);
    } else if (what == QStringLiteral("loss")) {
        must(step, [&](const Confirmed&) {
            return log_loss(m_workbook, batch(step), NamedLoss::drips, maths::kilograms(step[QStringLiteral("kg")].toDouble()), {}, doing(step));
        });
    } else if (what == QStringLiteral("close_batch")) {
        must(step, [&](const Confirmed& yes) { return close_batch(m_workbook, batch(step), doing(step), yes); });
    } else if (what == QStringLiteral("pail_used_in_part")) {
        must(step, [&](const Confirmed&) {
            return pail_used_in_part(m_workbook, m_names.pails.value(name).at(static_cast<std::size_t>(step[QStringLiteral("pail")].toInt() - 1)), moment(step).local_day(), doing(step));
        });
    } else {
        return false;
    }
    return true;
}

} // namespace soakbook::work
