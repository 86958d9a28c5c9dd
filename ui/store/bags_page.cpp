// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/store/bags_page.h"

#include "core/work/short_questions.h"

#include "ui/parts/cards.h"
#include "ui/parts/record_table.h"
#include "ui/parts/theme.h"
#include "ui/store/bag_card.h"
#include "ui/store/bag_columns.h"
#include "ui/store/filter_row.h"
#include "ui/store/page_with_card.h"
#include "ui/store/shelf_table.h"
#include "ui/store/stock_card.h"
#include "ui/store/store_cautions.h"

#include <QShortcut>
#include <QVBoxLayout>

#include <algorithm>

namespace soakbook::ui {

using work::BagFilter;
using work::BagLine;
using work::BagState;

BagsPage::BagsPage(Desk& desk) : m_desk(desk), m_card(new BagCard(desk)) {
    //: Head of an empty page
    m_empty = new EmptyPage(QStringLiteral("strips"), tr("No bag yet"),
                            //: On an empty page
                            tr("Every bag of strips will stand here in order of its limit, with the days it has left, "
                               "where it stands and whether "
                               "its label is printed. Bags come from a batch in the Shed."),
                            //: Button on an empty page: goes to the form of a batch
                            tr("Start a batch"));
    m_empty->button()->setObjectName(QStringLiteral("bags_start"));
    connect(m_empty, &EmptyPage::started, this, [this] {
        Q_EMIT wishes({PlaceName::shed, QStringLiteral("new_batch"), {}, {}});
    });
    column()->addWidget(m_empty, 1);
    m_content = new PageWithCard(m_card);
    m_stock = new StockCard(desk);
    m_content->left()->addWidget(m_stock);
    m_content->left()->addWidget(make_table_card(), 1);
    m_content->left()->addWidget(new Caution(keeping_caution()));
    column()->addWidget(m_content, 1);
    give_history(desk, this, [this] { return m_card->history(); });
    connect(m_card, &BagCard::wishes, this, &StoreSection::wishes);
    connect(m_card, &BagCard::left, m_table, [this] { m_table->setFocus(Qt::OtherFocusReason); });
    connect(m_table, &RecordTable::chosen_changed, this, &BagsPage::show_chosen);
    connect(m_table, &RecordTable::opened, m_card, &BagCard::take_focus);
    auto* away = new QShortcut(QKeySequence(Qt::Key_Delete), m_table);
    away->setContext(Qt::WidgetShortcut);
    connect(away, &QShortcut::activated, m_card, &BagCard::discard);
}

QString BagsPage::heading() const {
    //: Title of a page: bags of strips
    return tr("Bags");
}

QWidget* BagsPage::make_table_card() {
    auto* card = new Card;
    card->set_flush();
    //: Read aloud: the choices of which bags a table shows
    m_filter = new FilterRow(QStringLiteral("bags_filter"), tr("Which bags"));
    const auto add = [this](BagFilter filter, const char* key, const QString& words) {
        m_filter->add(static_cast<int>(filter), QLatin1String(key), words);
    };
    //: Choice of which bags are shown: those with strips in them
    add(BagFilter::in_stock, "in_stock", tr("In stock"));
    //: Choice of which bags are shown
    add(BagFilter::resting, "resting", tr("Resting"));
    //: Choice of which bags are shown
    add(BagFilter::ready, "ready", tr("Ready"));
    //: Choice of which bags are shown
    add(BagFilter::near_limit, "near_limit", tr("Near the limit"));
    //: Choice of which bags are shown
    add(BagFilter::past_limit, "past_limit", tr("Past it"));
    //: Choice of which bags are shown
    add(BagFilter::opened, "opened", tr("Opened"));
    //: Choice of which bags are shown: labels that were printed before their bags were filled
    add(BagFilter::reserved, "reserved", tr("No bag yet"));
    //: Choice of which bags are shown
    add(BagFilter::gone, "gone", tr("Gone"));
    //: Choice of which bags are shown
    add(BagFilter::all, "all", tr("All"));
    m_filter->choose(static_cast<int>(BagFilter::in_stock));
    m_filter->setContentsMargins(12, 12, 12, 4);
    card->column()->addWidget(m_filter);
    //: Read aloud: the name of a table
    m_table = new ShelfTable(QStringLiteral("store/bags"), tr("Bags by limit"));
    m_table->setObjectName(QStringLiteral("store_bags"));
    m_rows = new RowsModel<BagLine>(
        bag_columns(m_desk), [](const BagLine& bag) { return bag.id.value; }, this);
    m_table->set_rows_model(m_rows);
    m_table->set_start_widths(bag_column_widths());
    m_table->set_stretched_column(bag_stretched_column());
    // The card of the chosen bag says what goes.
    m_table->set_spared_columns({8, 7, 9, 10, 6, 5});
    m_table->set_many_can_be_chosen(true);
    //: Stands in an empty table
    m_table->set_empty_text(tr("No bag is of this kind now."));
    card->column()->addWidget(m_table, 1);
    connect(m_filter, &FilterRow::changed, this, &BagsPage::show_rows);
    return card;
}

BagFilter BagsPage::filter() const {
    return static_cast<BagFilter>(m_filter->chosen());
}

void BagsPage::refresh() {
    const int ever = work::bags_ever(m_desk.workbook());
    m_empty->setVisible(ever == 0);
    m_content->setVisible(ever != 0);
    const std::vector<BagLine> in_stock = work::bags(m_desk.workbook(), m_desk.today());
    m_stock->show_bags(in_stock);
    count_rows(in_stock, ever);
    show_rows();
}

void BagsPage::count_rows(const std::vector<BagLine>& stock, int ever) {
    const auto set = [this](BagFilter filter, std::ptrdiff_t n) {
        m_filter->set_count(static_cast<int>(filter), m_desk.count(static_cast<qint64>(n)));
    };
    const auto of = [&stock](BagState state) {
        return std::count_if(stock.begin(), stock.end(), [state](const BagLine& bag) { return bag.state == state; });
    };
    const auto near = of(BagState::near_limit);
    const auto ready = of(BagState::ready) + near;
    const auto in_stock = of(BagState::resting) + ready + of(BagState::past_limit);
    set(BagFilter::in_stock, in_stock);
    set(BagFilter::resting, of(BagState::resting));
    set(BagFilter::ready, ready);
    set(BagFilter::near_limit, near);
    set(BagFilter::past_limit, of(BagState::past_limit));
    set(BagFilter::opened,
        std::count_if(stock.begin(), stock.end(), [](const BagLine& bag) { return bag.opened_on && bag.left > 0; }));
    // Those that are gone are most of them after some years: they are counted, not read.
    const auto reserved = static_cast<std::ptrdiff_t>(work::bags(m_desk.workbook(), m_desk.today(), BagFilter::reserved).size());
    set(BagFilter::reserved, reserved);
    set(BagFilter::gone, ever - in_stock - reserved);
    set(BagFilter::all, ever);
}

void BagsPage::show_rows() {
    m_rows->set_rows(work::bags(m_desk.workbook(), m_desk.today(), filter()));
    m_table->choose_some_row();
    show_chosen();
}

void BagsPage::show_chosen() {
    std::vector<BagLine> bags;
    for (const qint64 id : m_table->chosen_ids()) {
        if (const BagLine* bag = m_rows->find(id))
            bags.push_back(*bag);
    }
    m_card->show_bags(bags);
}

bool BagsPage::show_bags(const std::vector<qint64>& bags) {
    refresh();
    const auto is_hidden = [this](qint64 id) { return m_rows->row_of(id) < 0; };
    for (const BagFilter wider : {BagFilter::in_stock, BagFilter::all}) {
        if (std::any_of(bags.begin(), bags.end(), is_hidden)) {
            m_filter->choose(static_cast<int>(wider));
            show_rows();
        }
    }
    return m_table->choose_rows(bags);
}

void BagsPage::take_focus() {
    if (m_content->isVisibleTo(this))
        m_table->setFocus(Qt::TabFocusReason);
    else
        m_empty->setFocus(Qt::TabFocusReason);
}

} // namespace soakbook::ui
