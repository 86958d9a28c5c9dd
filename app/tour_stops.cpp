// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/tour_stops.h"

#include "core/work/materials.h"
#include "core/work/round.h"
#include "core/work/shed_view.h"
#include "core/work/store_view.h"
#include "core/work/yards_view.h"
#include "ui/parts/desk.h"

namespace soakbook::app {

namespace {

using ui::PlaceName;

class Stops {
public:
    explicit Stops(const ui::Desk& desk) : m_book(desk.workbook()), m_today(desk.today()) {}

    std::vector<TourStop> all() {
        add("due", PlaceName::due, "");
        shed();
        store();
        yards();
        add("register", PlaceName::register_, "");
        add("register-corrections", PlaceName::register_, "corrections");
        add("register-hives", PlaceName::register_, "hives");
        add("register-journal", PlaceName::register_, "journal");
        for (const char* page : {"operation", "people", "strip_kinds", "vessels", "figures", "habits", "safe_copies", "workbooks"})
            add(QByteArray("setup-") + page, PlaceName::setup, page);
        return m_stops;
    }

private:
    void add(const QByteArray& name, PlaceName place, const char* task, std::vector<qint64> ids = {}) {
        m_stops.push_back({QString::fromLatin1(name), {place, QLatin1String(task), std::move(ids), {}}});
    }

    void shed() {
        add("shed-new-batch", PlaceName::shed, "new_batch");
        for (const work::BatchLine& line : work::batches(m_book, m_today)) {
            const auto view = work::batch_view(m_book, line.id, m_today);
            const QByteArray code = line.code.toLatin1();
            add("shed-" + code, PlaceName::shed, "show", {line.id.value});
            if (!view || line.state == work::BatchState::closed)
                continue;
            if (line.state == work::BatchState::planned)
                add("shed-" + code + "-weigh-in", PlaceName::shed, "weigh_mix", {line.id.value});
            for (const char* step : {"reading", "stir", "soak", "bag", "leftovers"})
                add("shed-" + code + "-" + step, PlaceName::shed, step, {line.id.value});
            if (!view->soaks.empty())
                add("shed-" + code + "-weigh", PlaceName::shed, "weigh", {line.id.value, view->soaks.front().id.value});
            if (view->labels_reserved > 0)
                add("shed-" + code + "-fill", PlaceName::shed, "fill_reserved", {line.id.value});
        }
    }

    void store() {
        add("store-bags", PlaceName::store, "bags");
        const auto bags = work::bags(m_book, m_today);
        if (!bags.empty()) {
            add("store-bag", PlaceName::store, "bag", {bags.front().id.value});
            add("store-move", PlaceName::store, "move", {bags.front().id.value});
            add("store-discard", PlaceName::store, "discard", {bags.front().id.value});
            add("store-labels", PlaceName::store, "labels", {bags.front().id.value, bags.back().id.value});
        }
        add("store-pails", PlaceName::store, "pails");
        const auto pails = work::pails(m_book, m_today, true);
        if (!pails.empty())
            add("store-pail", PlaceName::store, "pail", {pails.front().id.value});
        add("store-deliveries", PlaceName::store, "lots");
        add("store-new-delivery", PlaceName::store, "new_lot");
    }

    void yards() {
        add("yards", PlaceName::yards, "");
        bool first = true;
        for (const work::YardLine& yard : work::yard_lines(m_book, m_today)) {
            add("yard-" + QByteArray::number(static_cast<qlonglong>(yard.id.value)), PlaceName::yards, "show", {yard.id.value});
            if (yard.strips_hanging > 0 && first) {
                first = false;
                add("yard-strips-out", PlaceName::yards, "strips_out", {yard.id.value});
                add("yard-count", PlaceName::yards, "count", {yard.id.value});
                add("yard-pull-list", PlaceName::yards, "pull_list", {yard.id.value});
                const auto hives = work::hive_lines(m_book, yard.id, m_today);
                if (!hives.empty())
                    add("yard-hive", PlaceName::yards, "hive", {hives.front().entry.id.value});
            }
        }
        for (const work::RoundLine& round : work::rounds(m_book)) {
            add("round", PlaceName::yards, "round", {round.id.value});
            for (const auto& [yard, visited] : round.yards)
                if (!visited) {
                    add("yard-strips-in", PlaceName::yards, "strips_in", {yard.value, round.id.value});
                    break;
                }
            break;
        }
        add("yard-new", PlaceName::yards, "new_yard");
        add("round-plan", PlaceName::yards, "plan_round");
    }

    const book::Workbook& m_book;
    maths::Day m_today;
    std::vector<TourStop> m_stops;
};

} // namespace

std::vector<TourStop> tour_stops(const ui::Desk& desk) { return Stops(desk).all(); }

} // namespace soakbook::app
