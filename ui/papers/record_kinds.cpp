// SPDX-License-Identifier: GPL-3.0-or-later
// What the store's records are called.
#include "ui/papers/record_words.h"

#include <QCoreApplication>

#include <map>

namespace soakbook::ui {

namespace {

class RecordKinds {
    Q_DECLARE_TR_FUNCTIONS(RecordKinds)

public:
    static std::map<QString, QString> words();
};

std::map<QString, QString> RecordKinds::words() {
    return {
        //: A kind of record, before its code or name
        {QStringLiteral("operation"), RecordKinds::tr("operation")},
        //: A kind of record, before its code or name
        {QStringLiteral("person"), RecordKinds::tr("person")},
        //: A kind of record, before its code or name
        {QStringLiteral("figure"), RecordKinds::tr("figure")},
        //: A kind of record, before its code or name
        {QStringLiteral("strip_kind"), RecordKinds::tr("strip kind")},
        //: A kind of record, before its code or name
        {QStringLiteral("material_lot"), RecordKinds::tr("delivery")},
        //: A kind of record, before its code or name
        {QStringLiteral("lot_change"), RecordKinds::tr("change of a delivery")},
        //: A kind of record, before its code or name
        {QStringLiteral("vessel"), RecordKinds::tr("tank or bin")},
        //: A kind of record, before its code or name
        {QStringLiteral("batch"), RecordKinds::tr("batch")},
        //: A kind of record, before its code or name
        {QStringLiteral("batch_input"), RecordKinds::tr("weigh-in")},
        //: A kind of record, before its code or name
        {QStringLiteral("reading"), RecordKinds::tr("reading")},
        //: A kind of record, before its code or name
        {QStringLiteral("stir"), RecordKinds::tr("stir")},
        //: A kind of record, before its code or name
        {QStringLiteral("soak"), RecordKinds::tr("soak")},
        //: A kind of record, before its code or name
        {QStringLiteral("weigh_in"), RecordKinds::tr("weighing")},
        //: A kind of record, before its code or name
        {QStringLiteral("bag"), RecordKinds::tr("bag")},
        //: A kind of record, before its code or name
        {QStringLiteral("bag_change"), RecordKinds::tr("change of a bag")},
        //: A kind of record, before its code or name
        {QStringLiteral("pour"), RecordKinds::tr("pour")},
        //: A kind of record, before its code or name
        {QStringLiteral("pail"), RecordKinds::tr("pail")},
        //: A kind of record, before its code or name
        {QStringLiteral("batch_loss"), RecordKinds::tr("loss")},
        //: A kind of record, before its code or name
        {QStringLiteral("yard"), RecordKinds::tr("yard")},
        //: A kind of record, before its code or name
        {QStringLiteral("yard_time"), RecordKinds::tr("time of a yard")},
        //: A kind of record, before its code or name
        {QStringLiteral("hive"), RecordKinds::tr("hive")},
        //: A kind of record, before its code or name
        {QStringLiteral("hive_move"), RecordKinds::tr("move of a hive")},
        //: A kind of record, before its code or name
        {QStringLiteral("round"), RecordKinds::tr("round")},
        //: A kind of record, before its code or name
        {QStringLiteral("round_yard"), RecordKinds::tr("yard of a round")},
        //: A kind of record, before its code or name
        {QStringLiteral("placement"), RecordKinds::tr("strips in a hive")},
        //: A kind of record, before its code or name
        {QStringLiteral("mite_count"), RecordKinds::tr("mite count")},
        //: A kind of record, before its code or name
        {QStringLiteral("given_code"), RecordKinds::tr("code given out")},
        //: A kind of record, before its code or name
        {QStringLiteral("shown"), RecordKinds::tr("paper shown")},
        //: A kind of record, before its code or name
        {QStringLiteral("workbook"), RecordKinds::tr("workbook")},
        //: A kind of record, before its code or name: one strip weighed alone
        {QStringLiteral("weigh_single"), RecordKinds::tr("strip weighed alone")},
    };
}

} // namespace

QString record_kind_words(const QString& table) {
    const std::map<QString, QString> words = RecordKinds::words();
    const auto found = words.find(table);
    return found == words.end() ? table : found->second;
}

} // namespace soakbook::ui
