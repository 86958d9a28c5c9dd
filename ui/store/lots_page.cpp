// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/store/lots_page.h"

#include "ui/parts/cards.h"
#include "ui/parts/flow_layout.h"
#include "ui/parts/lot_form.h"
#include "ui/parts/record_table.h"
#include "ui/parts/theme.h"
#include "ui/store/filter_row.h"
#include "ui/papers/history_dialog.h"
#include "ui/store/lot_columns.h"
#include "ui/store/lot_forms.h"
#include "ui/store/shelf_table.h"
#include "ui/store/store_cautions.h"
#include "ui/store/store_words.h"

#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace soakbook::ui {

namespace {

enum Shown { in_use, all };

} // namespace

LotsPage::LotsPage(Desk& desk) : m_desk(desk) {
    //: Head of an empty page
    m_empty = new EmptyPage(QStringLiteral("can"), tr("No delivery yet"),
                            //: On an empty page
                            tr("Acid, glycerine, dry strips and bags stand here by delivery, each with its lot number "
                               "and what is left. Batches draw on "
                               "them, so that every strip can be followed back to what it was made of."),
                            //: Button on an empty page: opens the form of a delivery
                            tr("Enter a delivery"));
    m_empty->button()->setObjectName(QStringLiteral("lots_start"));
    connect(m_empty, &EmptyPage::started, this, [this] { enter_delivery(); });
    column()->addWidget(m_empty, 1);
    make_content();
    column()->addWidget(m_content, 1);
}

QString LotsPage::heading() const {
    //: Title of a page: deliveries of material
    return tr("Deliveries");
}

void LotsPage::make_content() {
    m_content = new QWidget;
    auto* whole = new QVBoxLayout(m_content);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->setSpacing(16);
    auto* figures = new Card;
    m_sentence = new Sentence;
    m_sentence->setObjectName(QStringLiteral("lots_sentence"));
    figures->column()->addWidget(m_sentence);
    whole->addWidget(figures);
    auto* card = new Card(heading());
    card->set_flush();
    //: Read aloud: the choices of which deliveries a table shows
    m_filter = new FilterRow(QStringLiteral("lots_filter"), tr("Which deliveries"));
    //: Choice of which deliveries are shown: those not used up
    m_filter->add(Shown::in_use, QStringLiteral("in_use"), tr("In use"));
    //: Choice of which deliveries are shown: finished ones too
    m_filter->add(Shown::all, QStringLiteral("all"), tr("All"));
    m_filter->choose(Shown::in_use);
    card->column()->addWidget(make_buttons(card));
    //: Read aloud: the name of a table
    m_table = new ShelfTable(QStringLiteral("store/lots"), tr("Deliveries, newest first"));
    m_table->setObjectName(QStringLiteral("store_lots"));
    m_rows = new RowsModel<work::LotLine>(
        lot_columns(m_desk), [](const work::LotLine& lot) { return lot.entry.id.value; }, this);
    m_table->set_rows_model(m_rows);
    m_table->set_start_widths(lot_column_widths());
    m_table->set_stretched_column(lot_stretched_column());
    m_table->set_spared_columns({4, 5, 8, 6});
    //: Stands in an empty table
    m_table->set_empty_text(tr("Every delivery is finished."));
    card->column()->addWidget(m_table, 1);
    whole->addWidget(card, 1);
    whole->addWidget(new Caution(keeping_caution()));
    connect(m_filter, &FilterRow::changed, this, &LotsPage::show_rows);
    connect(m_table, &RecordTable::current_changed, this, &LotsPage::settle_buttons);
    connect(m_table, &RecordTable::opened, this, &LotsPage::correct);
}

QWidget* LotsPage::make_buttons(Card* card) {
    //: Filled button: opens the form of a delivery
    QPushButton* enter = card->add_head_button(tr("New delivery"), true);
    enter->setObjectName(QStringLiteral("new_delivery"));
    auto* row = new QWidget;
    auto* flow = new FlowLayout(24, 6, row);
    row->setContentsMargins(12, 0, 12, 4);
    flow->addWidget(m_filter);
    auto* buttons = new QWidget;
    auto* button_flow = new FlowLayout(6, 6, buttons);
    flow->addWidget(buttons);
    const auto add = [button_flow](const QString& words, const char* name) {
        auto* button = new QPushButton(words);
        button->setObjectName(QLatin1String(name));
        button->setAutoDefault(true);
        set_kind(button, "row");
        button_flow->addWidget(button);
        return button;
    };
    //: Button: puts a delivery right
    m_correct = add(tr("Correct"), "lot_correct");
    //: Button: what is left of a delivery was counted or weighed
    m_recount = add(tr("Count anew"), "lot_recount");
    //: Button: a delivery is used up
    m_finish = add(tr("Finished"), "lot_finished");
    m_history = make_history_button(m_desk, this, [this] {
        const work::LotLine* lot = chosen();
        return lot == nullptr ? HistoryOf{} : lot_history(m_desk, *lot);
    }, QStringLiteral("lot_history"));
    button_flow->addWidget(m_history);
    connect(enter, &QPushButton::clicked, this, [this] { enter_delivery(); });
    connect(m_correct, &QPushButton::clicked, this, &LotsPage::correct);
    connect(m_recount, &QPushButton::clicked, this, [this] {
        if (const work::LotLine* lot = chosen())
            open_recount_lot_form(m_desk, *lot, this);
    });
    connect(m_finish, &QPushButton::clicked, this, [this] {
        if (const work::LotLine* lot = chosen())
            open_finish_lot_form(m_desk, *lot, this);
    });
    return row;
}

void LotsPage::enter_delivery(const QVariant& material) {
    const auto kind =
        material.isValid() ? std::optional(static_cast<work::MaterialKind>(material.toInt())) : std::nullopt;
    auto* form = new LotForm(m_desk, kind, this);
    connect(form, &LotForm::saved, this, &LotsPage::show_lot);
    form->open();
}

void LotsPage::correct() {
    if (const work::LotLine* lot = chosen())
        (new LotForm(m_desk, *lot, this))->open();
}

const work::LotLine* LotsPage::chosen() const {
    return m_rows->find(m_table->current_id());
}

void LotsPage::refresh() {
    const auto open = work::lots(m_desk.workbook(), m_desk.today(), true);
    const auto every = work::lots(m_desk.workbook(), m_desk.today());
    m_empty->setVisible(every.empty());
    m_content->setVisible(!every.empty());
    m_filter->set_count(Shown::in_use, m_desk.count(static_cast<qint64>(open.size())));
    m_filter->set_count(Shown::all, m_desk.count(static_cast<qint64>(every.size())));
    say_left(open);
    show_rows();
}

void LotsPage::say_left(const std::vector<work::LotLine>& open) {
    m_sentence->clear();
    using work::MaterialKind;
    for (const MaterialKind material :
         {MaterialKind::acid, MaterialKind::glycerine, MaterialKind::strips, MaterialKind::bags}) {
        qint64 left = 0;
        for (const work::LotLine& lot : open)
            left += lot.entry.material == material ? lot.left : 0;
        //: In a sentence of figures; %1 a material, %2 how much of it is left
        m_sentence->add(tr("%1 <b>%2</b>").arg(material_word(material), lot_amount(m_desk, material, left)));
    }
    const auto past = std::count_if(open.begin(), open.end(), [](const work::LotLine& lot) { return lot.past_date; });
    if (past > 0) {
        //: In a sentence of figures; %n deliveries are past their best-before day
        m_sentence->add(State::past, tr("%n past its date", nullptr, static_cast<int>(past)));
    }
}

void LotsPage::show_rows() {
    m_rows->set_rows(work::lots(m_desk.workbook(), m_desk.today(), m_filter->chosen() == Shown::in_use));
    m_table->choose_some_row();
    settle_buttons();
}

void LotsPage::settle_buttons() {
    const work::LotLine* lot = chosen();
    m_correct->setVisible(lot != nullptr);
    m_history->setVisible(lot != nullptr);
    m_recount->setVisible(lot != nullptr && !lot->finished);
    m_finish->setVisible(lot != nullptr && !lot->finished);
}

void LotsPage::show_lot(qint64 lot) {
    refresh();
    if (m_rows->row_of(lot) < 0) {
        m_filter->choose(Shown::all);
        show_rows();
    }
    m_table->choose_rows({lot});
}

void LotsPage::take_focus() {
    if (m_content->isVisibleTo(this))
        m_table->setFocus(Qt::TabFocusReason);
    else
        m_empty->setFocus(Qt::TabFocusReason);
}

} // namespace soakbook::ui
