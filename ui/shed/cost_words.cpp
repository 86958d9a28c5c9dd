// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shed/cost_words.h"

#include "ui/shed/shed_words.h"

#include <QCoreApplication>

namespace soakbook::ui {

namespace {

struct CostWords {
    Q_DECLARE_TR_FUNCTIONS(CostWords)
};

QString material_word(work::MaterialKind material) {
    switch (material) {
    case work::MaterialKind::acid:
        //: A material whose cost is not known, within a sentence
        return CostWords::tr("the acid");
    case work::MaterialKind::glycerine:
        //: A material whose cost is not known, within a sentence
        return CostWords::tr("the glycerine");
    case work::MaterialKind::strips:
        //: A material whose cost is not known, within a sentence
        return CostWords::tr("the dry strips");
    case work::MaterialKind::bags:
        //: A material whose cost is not known, within a sentence
        return CostWords::tr("the bags");
    }
    return {};
}

/// One line for each delivery, however many batches it went into.
QString missing_words(const std::vector<work::MissingCost>& missing) {
    QStringList lacking;
    for (const work::MissingCost& one : missing) {
        const QString words = one.lot
                                  //: A delivery without a cost; %1 its name
                                  ? CostWords::tr("the cost of %1").arg(one.name)
                                  //: A material of which no delivery was written down; %1 "the acid"
                                  : CostWords::tr("which delivery %1 came from").arg(material_word(one.material));
        if (!lacking.contains(words))
            lacking << words;
    }
    //: Why the cost of a strip is not known; %1 what is missing, such as "the cost of GL-1048, which delivery the bags came from"
    return CostWords::tr("What a strip costs is not known: missing is %1. A delivery takes its cost in the Store, under Deliveries.")
        .arg(lacking.join(QStringLiteral(", ")));
}

QString parts_words(const Habits& habits, const work::BatchCost& cost) {
    QStringList parts;
    const auto add = [&parts, &habits](const QString& words, const std::optional<maths::Money>& sum) {
        if (sum && sum->count > 0)
            parts << words.arg(money(habits, *sum));
    };
    //: A part of what strips cost; %1 an amount of money
    add(CostWords::tr("acid %1"), cost.acid);
    //: A part of what strips cost; %1 an amount of money
    add(CostWords::tr("glycerine %1"), cost.glycerine);
    //: A part of what strips cost: liquid of older batches; %1 an amount of money
    add(CostWords::tr("from pails %1"), cost.carried);
    //: A part of what strips cost; %1 an amount of money
    add(CostWords::tr("dry strips %1"), cost.dry_strips);
    //: A part of what strips cost; %1 an amount of money
    add(CostWords::tr("bags %1"), cost.bag_cost);
    return joined(parts);
}

} // namespace

QString cost_words(const Habits& habits, const work::BatchCost& cost) {
    if (cost.strips == 0)
        return {};
    const QString parts = parts_words(habits, cost);
    if (!cost.each || !cost.total) {
        if (cost.missing.empty())
            return {};
        //: After a sentence on what is missing; %1 parts such as "acid 31.10 · bags 3.00"
        return missing_words(cost.missing) + (parts.isEmpty() ? QString() : QStringLiteral("<br>") + CostWords::tr("Known: %1").arg(parts));
    }
    //: What a strip costs; %1 an amount of money, %2 that of all, %n strips
    QString text = CostWords::tr("<b>A strip costs %1</b>: %2 for %n strips.", nullptr, cost.strips)
                       .arg(small_money(habits, *cost.each), money(habits, *cost.total));
    if (!cost.closed && cost.still_in_work && cost.still_in_work->count > 0) {
        //: After what a strip costs, of a batch that is not closed; %1 an amount of money
        text += QLatin1Char(' ') + CostWords::tr("Liquid worth %1 is still in work.").arg(money(habits, *cost.still_in_work));
    }
    return text + QStringLiteral("<br>") + parts;
}

} // namespace soakbook::ui
