// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shed/bag_form.h"

#include "core/work/how_keeping.h"
#include "core/work/how_strips.h"
#include "core/work/setup.h"
#include "core/work/store_view.h"
#include "ui/parts/count_words.h"
#include "ui/parts/day_field.h"
#include "ui/parts/quantity_field.h"
#include "ui/parts/refusal_words.h"
#include "ui/parts/result_card.h"
#include "ui/parts/text_field.h"
#include "ui/shed/lot_field.h"
#include "ui/shed/shed_draft.h"
#include "ui/shed/shed_words.h"

#include <algorithm>

namespace soakbook::ui {

BagForm::BagForm(Desk& desk, QWidget* parent)
    : FormFrame(desk, QString(), parent), m_desk(desk),
      //: A unit behind a number
      m_bags(add(tr("Bags"), new CountField(desk, tr("bags")), QStringLiteral("bags"))),
      //: A unit behind a number
      m_strips(add(tr("Strips in each"), new CountField(desk, tr("strips")), QStringLiteral("strips_per_bag"))),
      //: A unit behind a number
      m_last(add(tr("Strips in a short last bag"), new CountField(desk, tr("strips")), QStringLiteral("last_bag"),
                 //: Help under a field
                 tr("Empty: as full as the others."))),
      m_net(add(tr("Contents of a full bag weigh"), new MassField(desk, MassSize::large), QStringLiteral("net"), net_help())),
      //: Label of a field: the day
      m_sealed(add(tr("Sealed on"), new DayField(desk), QStringLiteral("sealed_on"))),
      m_lot(add(tr("Bags from"), new LotField(desk, work::MaterialKind::bags), QStringLiteral("bag_lot"))),
      //: Label of a field: the place on the shelf
      m_stands(add(tr("Stands"), new TextField, QStringLiteral("stands"))) {
    m_bags->setObjectName(QStringLiteral("bag_count"));
    m_strips->setObjectName(QStringLiteral("bag_strips"));
    m_last->setObjectName(QStringLiteral("bag_last"));
    m_net->setObjectName(QStringLiteral("bag_net"));
    m_sealed->setObjectName(QStringLiteral("bag_sealed"));
    m_lot->setObjectName(QStringLiteral("bag_lot"));
    m_stands->setObjectName(QStringLiteral("bag_stands"));
    //: Stands in an empty field
    m_sealed->set_placeholder(tr("today"));
    //: Button that writes filled bags down; their labels come next
    set_primary(tr("They are sealed"));
    set_commit([this](const work::Confirmed& confirmed) {
        const auto made = work::fill_bags(m_desk.workbook(), entry(), m_desk.doing(), confirmed);
        if (made)
            Q_EMIT filled(made->bags);
        return refusal_of(made);
    });
    connect(this, &FormFrame::edited, this, &BagForm::reckon);
}

void BagForm::show_batch(const work::BatchView& batch) {
    const bool same = m_batch == batch.line.id && is_edited();
    m_batch = batch.line.id;
    m_lot->refresh();
    m_stands->set_suggestions(bag_places(m_desk));
    if (!same)
        fill(batch);
}

void BagForm::fill(const work::BatchView& batch) {
    const auto each = strips_per_bag(m_desk.workbook(), batch.strip_kind);
    const int left = std::max(0, batch.strips_soaked - batch.strips_bagged);
    m_strips->set_value(each ? std::optional<qint64>(*each) : std::nullopt);
    m_bags->clear();
    m_last->clear();
    if (each && *each > 0 && left > 0) {
        const int rest = left % *each;
        m_bags->set_value(left / *each + (rest > 0 ? 1 : 0));
        if (rest > 0)
            m_last->set_value(rest);
    }
    m_net->clear();
    m_sealed->clear();
    m_lot->choose_newest();
    const QStringList places = bag_places(m_desk);
    m_stands->set_value(places.isEmpty() ? QString() : places.front());
    start_again();
    //: What a form is for, after the code of a batch
    set_draft(shed_draft(QStringLiteral("bag"), QStringLiteral("bag"), batch.line.id, batch.line.code, tr("fill bags"), QStringLiteral("bag_fill")));
}

work::BagEntry BagForm::entry() const {
    const auto count = [](const CountField* field) {
        const auto n = field->value();
        return n ? std::optional<int>(static_cast<int>(*n)) : std::nullopt;
    };
    work::BagEntry entry;
    entry.batch = m_batch;
    entry.bags = count(m_bags);
    entry.strips_per_bag = count(m_strips);
    entry.last_bag = count(m_last);
    entry.net = m_net->value();
    entry.sealed_on = m_sealed->value();
    entry.bag_lot = m_lot->lot();
    entry.stands = m_stands->value();
    return entry;
}

void BagForm::reckon() {
    result()->clear();
    const auto check = count_by_weight();
    m_net->set_help(check ? count_words(m_desk, *check) : net_help());
    const auto figures = work::reckon_bags(m_desk.workbook(), entry(), m_desk.today());
    if (!figures) {
        if (figures.error().why != work::Why::missing)
            result()->set_next(refusal_words(figures.error(), m_desk));
        return;
    }
    show_bag_figures(*this, m_desk, *figures);
    std::vector<work::How> hows;
    if (const auto acid = work::how_acid_in_strip(*figures))
        hows.push_back(*acid);
    if (check && check->spread)
        hows.push_back(work::how_count_by_weight(*check));
    const maths::Day sealed = m_sealed->value().value_or(m_desk.today());
    const std::vector<work::How> days = work::how_bag_days(m_desk.workbook(), sealed, *figures);
    hows.insert(hows.end(), days.begin(), days.end());
    result()->set_how(hows, m_desk);
}

QString BagForm::net_help() {
    //: Help under the weight of a bag's contents
    return tr("Without the bag, before free liquid is poured in. Empty: not weighed.");
}

std::optional<work::CountCheck> BagForm::count_by_weight() const {
    const auto net = m_net->value();
    const auto packed = m_strips->value();
    if (!net || !packed)
        return std::nullopt;
    const auto check = work::count_check(
        m_desk.workbook(), {m_batch, std::nullopt, *net, static_cast<int>(*packed), m_sealed->value()});
    return check ? std::optional(*check) : std::nullopt;
}

std::optional<int> strips_per_bag(const book::Workbook& workbook, work::StripKindId kind) {
    for (const work::StripKindEntry& entry : work::strip_kinds(workbook, true)) {
        if (entry.id == kind)
            return entry.strips_per_bag;
    }
    return std::nullopt;
}

QStringList bag_places(const Desk& desk) {
    std::vector<work::BagLine> bags = work::bags(desk.workbook(), desk.today());
    std::sort(bags.begin(), bags.end(), [](const work::BagLine& a, const work::BagLine& b) { return b.id < a.id; });
    QStringList places;
    for (const work::BagLine& bag : bags) {
        if (!bag.stands.isEmpty() && !places.contains(bag.stands))
            places.push_back(bag.stands);
    }
    return places;
}

void show_bag_figures(FormFrame& form, const Habits& habits, const work::BagFigures& figures) {
    ResultCard* card = form.result();
    QString text = QStringLiteral("<b>%1</b>").arg(
        //: What bags hold together
        BagForm::tr("%n strips", nullptr, figures.strips));
    if (figures.acid_per_strip) {
        //: Acid in one strip; %1 a mass
        text += QStringLiteral(", ") + BagForm::tr("%1 acid a strip").arg(small(habits, *figures.acid_per_strip));
    }
    text += figures.still_to_bag > 0
                //: Strips of the batch that are in no bag yet
                ? QStringLiteral(", ") + BagForm::tr("%n strips still to bag", nullptr, figures.still_to_bag)
                //: No strip of the batch is left without a bag
                : QStringLiteral(", ") + BagForm::tr("then all are bagged");
    card->set_text(text + QLatin1Char('.'));
    QStringList dates;
    if (figures.rest_until) {
        //: %1 a day: until then the strips take up what is still wet
        dates.push_back(BagForm::tr("rests until %1").arg(habits.day(*figures.rest_until)));
    }
    //: %1 a day
    dates.push_back(BagForm::tr("use by %1").arg(habits.day(figures.use_by)));
    if (figures.expected_net) {
        //: What the contents of a full bag should weigh; %1 a mass
        dates.push_back(BagForm::tr("a full bag should weigh %1").arg(large(habits, *figures.expected_net)));
    }
    card->set_next(joined(dates));
    if (!figures.verdict) {
        //: Bags are filled without a weighing
        card->set_verdict(State::near, BagForm::tr("Not weighed"), BagForm::tr("weigh some strips first, so that the label can "
                                                                               "say what is in them."));
    } else if (*figures.verdict == work::WeighVerdict::light) {
        //: The last weighing was under the target
        card->set_verdict(State::near, BagForm::tr("Light"), BagForm::tr("the last weighing was under the target."));
    }
}

} // namespace soakbook::ui
