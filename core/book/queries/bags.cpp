// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/queries/bags.h"

#include "core/book/queries/joined.h"

namespace soakbook::book {

namespace {

QString bags_query() {
    return QStringLiteral("SELECT ") + joined_columns<Bag>() +
           QStringLiteral(
               ", batch.code, strip_kind.name, coalesce(p.placed, 0), coalesce(c.discarded, 0), coalesce(c.recounted, "
               "0) "
               "FROM bag JOIN batch ON batch.id = bag.batch_id JOIN strip_kind ON strip_kind.id = bag.strip_kind_id "
               "LEFT JOIN (SELECT bag_id, sum(strips) AS placed FROM placement WHERE void_reason IS NULL GROUP BY "
               "bag_id) p "
               "ON p.bag_id = bag.id "
               "LEFT JOIN (SELECT bag_id, sum(CASE kind WHEN 'discard' THEN -strips ELSE 0 END) AS discarded, "
               "sum(CASE kind WHEN 'recount' THEN strips ELSE 0 END) AS recounted FROM bag_change "
               "WHERE void_reason IS NULL GROUP BY bag_id) c ON c.bag_id = bag.id ");
}

// Bags used up long ago are many: they are left in the store.
constexpr const char* on_shelf = "WHERE bag.sealed_on IS NOT NULL AND bag.void_reason IS NULL AND "
                                 "bag.packed - coalesce(p.placed, 0) - coalesce(c.discarded, 0) + "
                                 "coalesce(c.recounted, 0) > 0 ";

std::vector<BagStock> read_bags(Statement& s) {
    std::vector<BagStock> bags;
    const int at = joined_width<Bag>();
    s.run();
    while (s.next()) {
        BagStock b;
        b.bag = take_record<Bag>(s);
        b.batch_code = s.get<QString>(at);
        b.strip_kind_name = s.get<QString>(at + 1);
        b.placed = s.get<int>(at + 2);
        b.discarded = s.get<int>(at + 3);
        b.recounted = s.get<int>(at + 4);
        if (!b.bag.void_reason)
            b.left = b.bag.packed.value_or(0) - b.placed - b.discarded + b.recounted;
        bags.push_back(std::move(b));
    }
    return bags;
}

} // namespace

std::vector<BagStock> all_bag_stock(const Workbook& workbook) {
    Statement s(workbook.db(), bags_query() + QStringLiteral("ORDER BY bag.use_by IS NULL, bag.use_by, bag.id"));
    return read_bags(s);
}

std::vector<BagStock> bag_stock_on_shelf(const Workbook& workbook) {
    Statement s(workbook.db(), bags_query() + QLatin1String(on_shelf) + QStringLiteral("ORDER BY bag.use_by, bag.id"));
    return read_bags(s);
}

std::vector<BagStock> reserved_bag_labels(const Workbook& workbook) {
    // Nothing was ever taken out of them.
    Statement s(workbook.db(), QStringLiteral("SELECT ") + joined_columns<Bag>() +
                                   QStringLiteral(", batch.code, strip_kind.name, 0, 0, 0 FROM bag JOIN batch ON batch.id = bag.batch_id "
                                                  "JOIN strip_kind ON strip_kind.id = bag.strip_kind_id "
                                                  "WHERE bag.sealed_on IS NULL AND bag.void_reason IS NULL ORDER BY bag.id"));
    return read_bags(s);
}

std::vector<BagStock> bag_stock_of_kind(const Workbook& workbook, Id<StripKind> kind) {
    Statement s(workbook.db(), bags_query() + QLatin1String(on_shelf) +
                                   QStringLiteral("AND bag.strip_kind_id = ? ORDER BY bag.use_by, bag.id"));
    s.bind(kind);
    return read_bags(s);
}

std::optional<BagStock> bag_stock(const Workbook& workbook, Id<Bag> id) {
    // For one bag its sums are asked for by its index instead of for every bag.
    const auto bag = fetch<Bag>(workbook, id);
    if (!bag)
        return std::nullopt;
    Statement s(workbook.db(),
                QStringLiteral(
                    "SELECT batch.code, strip_kind.name, "
                    "(SELECT coalesce(sum(strips), 0) FROM placement WHERE bag_id = bag.id AND void_reason IS NULL), "
                    "(SELECT coalesce(-sum(strips), 0) FROM bag_change WHERE bag_id = bag.id AND kind = 'discard' AND "
                    "void_reason IS NULL), "
                    "(SELECT coalesce(sum(strips), 0) FROM bag_change WHERE bag_id = bag.id AND kind = 'recount' AND "
                    "void_reason IS NULL) "
                    "FROM bag JOIN batch ON batch.id = bag.batch_id JOIN strip_kind ON strip_kind.id = "
                    "bag.strip_kind_id WHERE bag.id = ?"));
    s.bind(id).run();
    if (!s.next())
        return std::nullopt;
    BagStock b{*bag, s.get<QString>(0), s.get<QString>(1), s.get<int>(2), s.get<int>(3), s.get<int>(4), 0};
    if (!b.bag.void_reason)
        b.left = b.bag.packed.value_or(0) - b.placed - b.discarded + b.recounted;
    return b;
}

int count_bags(const Workbook& workbook) {
    Statement s(workbook.db(), QStringLiteral("SELECT count(*) FROM bag"));
    s.run();
    return s.next() ? s.get<int>(0) : 0;
}

std::vector<BagChange> changes_of_bag(const Workbook& workbook, Id<Bag> id) {
    return fetch_where<BagChange>(workbook, "WHERE bag_id = ? ORDER BY on_day, id", id);
}

} // namespace soakbook::book
