// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/store/store_page.h"

#include "core/work/materials.h"
#include "ui/parts/side_list.h"
#include "ui/store/bag_card.h"
#include "ui/store/bags_page.h"
#include "ui/store/lots_page.h"
#include "ui/store/pail_card.h"
#include "ui/store/pails_page.h"
#include "ui/store/store_place.h"

#include <QHBoxLayout>
#include <QStackedWidget>

#include <algorithm>

namespace soakbook::ui {

Place* make_store_place(Desk& desk) {
    return new StorePage(desk);
}

StorePage::StorePage(Desk& desk, QWidget* parent)
    : Place(parent), m_desk(desk),
      //: Read aloud: the name of a list
      m_list(new SideList(tr("Pages of the Store"))), m_stack(new QStackedWidget) {
    m_list->setObjectName(QStringLiteral("store_pages"));
    make_sections();
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(new SplitPage(name(), {}, m_list, m_stack));
    show_list();
    m_list->choose(static_cast<qint64>(Section::bags));
    connect(m_list, &SideList::chosen, this, [this](qint64 id) { show_section(static_cast<Section>(id)); });
    connect(m_list, &SideList::entered_page, this, [this] { shown()->take_focus(); });
    connect(&desk, &Habits::preferences_changed, this, [this] {
        // Units stand in the headers of tables: they are made anew.
        const int kept = m_stack->currentIndex();
        make_sections();
        m_stack->setCurrentIndex(kept);
        refresh();
    });
    refresh();
}

void StorePage::make_sections() {
    while (QWidget* old = m_stack->widget(0)) {
        m_stack->removeWidget(old);
        old->deleteLater();
    }
    m_bags = new BagsPage(m_desk);
    m_pails = new PailsPage(m_desk);
    m_lots = new LotsPage(m_desk);
    for (StoreSection* section : {static_cast<StoreSection*>(m_bags), static_cast<StoreSection*>(m_pails),
                                  static_cast<StoreSection*>(m_lots)}) {
        m_stack->addWidget(section);
        connect(section, &StoreSection::wishes, this, &Place::wishes);
    }
}

QString StorePage::name() const {
    //: A place of the house: bags, pails and deliveries
    return tr("Store");
}

QString StorePage::title() const {
    return shown()->heading();
}

StoreSection* StorePage::shown() const {
    return static_cast<StoreSection*>(m_stack->currentWidget());
}

void StorePage::show_section(Section section) {
    m_stack->setCurrentIndex(static_cast<int>(section) - 1);
    m_list->choose(static_cast<qint64>(section));
    shown()->refresh();
    Q_EMIT title_changed();
}

void StorePage::refresh() {
    show_list();
    shown()->refresh();
}

void StorePage::take_focus() {
    shown()->take_focus();
}

void StorePage::show_list() {
    const work::StockFigures stock = work::stock_figures(m_desk.workbook(), m_desk.today());
    const auto lots = work::lots(m_desk.workbook(), m_desk.today(), true);
    const auto past_date =
        std::any_of(lots.begin(), lots.end(), [](const work::LotLine& lot) { return lot.past_date; });
    const auto pails = work::pails(m_desk.workbook(), m_desk.today());
    const auto waiting =
        std::any_of(pails.begin(), pails.end(), [](const work::PailLine& pail) { return pail.waits_too_long; });
    std::optional<State> bags_state;
    if (stock.past_limit > 0)
        bags_state = State::past;
    else if (stock.near_limit > 0)
        bags_state = State::near;
    m_list->set_items({
        {static_cast<qint64>(Section::bags),
         {},
         m_bags->heading(),
         //: In a list, under "Bags"; %n bags with strips in them
         stock.bags_in_stock == 0 ? tr("none") : tr("%n with strips", nullptr, stock.bags_in_stock),
         bags_state,
         //: In a list, beside "Bags": some are near their limit
         bags_state == State::near ? tr("near") : QString()},
        {static_cast<qint64>(Section::pails),
         {},
         m_pails->heading(),
         //: In a list, under "Pails"; %1 their mass together; %n pails
         stock.pails == 0 ? tr("none")
                          : tr("%n, together %1", nullptr, stock.pails).arg(m_desk.large(stock.in_pails, 1)),
         waiting ? std::optional(State::near) : std::nullopt,
         //: In a list, beside "Pails": some wait longer than allowed
         waiting ? tr("waiting") : QString()},
        {static_cast<qint64>(Section::lots),
         {},
         m_lots->heading(),
         //: In a list, under "Deliveries"; %n of them are not used up
         lots.empty() ? tr("none") : tr("%n in use", nullptr, static_cast<int>(lots.size())),
         past_date ? std::optional(State::past) : std::nullopt,
         //: In a list, beside "Deliveries": some are past their best-before day
         past_date ? tr("past date") : QString()},
    });
}

void StorePage::open_bags(const Intent& intent) {
    show_section(Section::bags);
    const bool any = m_bags->show_bags(intent.ids);
    m_bags->take_focus();
    if (!any)
        return;
    if (intent.task == QLatin1String("move"))
        m_bags->card()->move();
    else if (intent.task == QLatin1String("discard"))
        m_bags->card()->discard();
    else if (intent.task == QLatin1String("labels"))
        m_bags->card()->print_labels();
}

void StorePage::open_pails(const Intent& intent) {
    show_section(Section::pails);
    const bool any = m_pails->show_pails(intent.ids);
    m_pails->take_focus();
    if (any && intent.task == QLatin1String("labels"))
        m_pails->card()->print_labels();
}

void StorePage::open(const Intent& intent) {
    const QString& task = intent.task;
    const bool of_pails = task == QLatin1String("labels") && intent.prefill.value(QStringLiteral("pails")).toBool();
    if (of_pails || task == QLatin1String("pails") || task == QLatin1String("pail")) {
        open_pails(intent);
    } else if (task == QLatin1String("lots") || task == QLatin1String("lot") || task == QLatin1String("new_lot")) {
        show_section(Section::lots);
        if (!intent.ids.empty())
            m_lots->show_lot(intent.ids.front());
        m_lots->take_focus();
        if (task == QLatin1String("new_lot"))
            m_lots->enter_delivery(intent.prefill.value(QStringLiteral("material")));
    } else if (!task.isEmpty()) {
        open_bags(intent);
    }
}

} // namespace soakbook::ui
