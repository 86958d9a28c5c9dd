// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/store/pails_page.h"

#include "ui/parts/cards.h"
#include "ui/parts/record_table.h"
#include "ui/parts/theme.h"
#include "ui/store/filter_row.h"
#include "ui/store/page_with_card.h"
#include "ui/store/pail_card.h"
#include "ui/store/pail_columns.h"
#include "ui/store/shelf_table.h"
#include "ui/store/store_cautions.h"

#include <QLabel>
#include <QShortcut>
#include <QVBoxLayout>

#include <algorithm>

namespace soakbook::ui {

using work::PailLine;
using work::PailState;

namespace {

enum Shown { standing, all };

} // namespace

PailsPage::PailsPage(Desk& desk) : m_desk(desk), m_card(new PailCard(desk)) {
    //: Head of an empty page
    m_empty = new EmptyPage(QStringLiteral("pail"), tr("No pail yet"),
                            //: On an empty page
                            tr("What is left in the bins after a soak is poured into pails while it is warm and clear. "
                               "Each will stand here with its "
                               "mass and strength until it goes into a mix, whole."),
                            //: Button on an empty page: goes to the place where batches are made
                            tr("Go to the Shed"));
    m_empty->button()->setObjectName(QStringLiteral("pails_start"));
    connect(m_empty, &EmptyPage::started, this, [this] { Q_EMIT wishes({PlaceName::shed, {}, {}, {}}); });
    column()->addWidget(m_empty, 1);
    m_content = new PageWithCard(m_card);
    m_content->left()->addWidget(make_sentence_card());
    m_content->left()->addWidget(make_table_card(), 1);
    m_content->left()->addWidget(new Caution(keeping_caution()));
    column()->addWidget(m_content, 1);
    give_history(desk, this, [this] { return m_card->history(); });
    connect(m_card, &PailCard::left, m_table, [this] { m_table->setFocus(Qt::OtherFocusReason); });
    connect(m_table, &RecordTable::chosen_changed, this, &PailsPage::show_chosen);
    connect(m_table, &RecordTable::opened, m_card, &PailCard::take_focus);
    auto* away = new QShortcut(QKeySequence(Qt::Key_Delete), m_table);
    away->setContext(Qt::WidgetShortcut);
    connect(away, &QShortcut::activated, m_card, &PailCard::discard);
}

QString PailsPage::heading() const {
    //: Title of a page: pails of leftover liquid
    return tr("Pails");
}

QWidget* PailsPage::make_sentence_card() {
    auto* card = new Card;
    m_sentence = new Sentence;
    m_sentence->setObjectName(QStringLiteral("pails_sentence"));
    card->column()->addWidget(m_sentence);
    //: Explains why pails are not used in part
    card->column()->addWidget(make_soft_label(tr("A pail goes into a mix whole, scraped to the bottom, or not at all: "
                                                 "acid settles while it stands, and the upper half "
                                                 "may be almost pure glycerine."),
                                              Type::body));
    return card;
}

QWidget* PailsPage::make_table_card() {
    auto* card = new Card;
    card->set_flush();
    //: Read aloud: the choices of which pails a table shows
    m_filter = new FilterRow(QStringLiteral("pails_filter"), tr("Which pails"));
    //: Choice of which pails are shown: those whose liquid is still there
    m_filter->add(Shown::standing, QStringLiteral("standing"), tr("On the shelf"));
    //: Choice of which pails are shown: used and thrown away ones too
    m_filter->add(Shown::all, QStringLiteral("all"), tr("All"));
    m_filter->choose(Shown::standing);
    m_filter->setContentsMargins(12, 12, 12, 4);
    card->column()->addWidget(m_filter);
    //: Read aloud: the name of a table
    m_table = new ShelfTable(QStringLiteral("store/pails"), tr("Pails, oldest first"));
    m_table->setObjectName(QStringLiteral("store_pails"));
    m_rows = new RowsModel<PailLine>(
        pail_columns(m_desk), [](const PailLine& pail) { return pail.id.value; }, this);
    m_table->set_rows_model(m_rows);
    m_table->set_start_widths(pail_column_widths());
    m_table->set_stretched_column(pail_stretched_column());
    // The card of the chosen pail says what goes.
    m_table->set_spared_columns({10, 9, 8, 7, 11, 6, 5});
    m_table->set_many_can_be_chosen(true);
    //: Stands in an empty table
    m_table->set_empty_text(tr("No pail stands on the shelf: all are used up or thrown away."));
    card->column()->addWidget(m_table, 1);
    connect(m_filter, &FilterRow::changed, this, &PailsPage::show_rows);
    return card;
}

void PailsPage::refresh() {
    const auto standing = work::pails(m_desk.workbook(), m_desk.today());
    const auto with_gone = work::pails(m_desk.workbook(), m_desk.today(), true);
    m_empty->setVisible(with_gone.empty());
    m_content->setVisible(!with_gone.empty());
    m_filter->set_count(Shown::standing, m_desk.count(static_cast<qint64>(standing.size())));
    m_filter->set_count(Shown::all, m_desk.count(static_cast<qint64>(with_gone.size())));
    say_figures(standing);
    show_rows();
}

void PailsPage::say_figures(const std::vector<PailLine>& standing) {
    const work::StockFigures stock = work::stock_figures(m_desk.workbook(), m_desk.today());
    const auto unknown = std::count_if(standing.begin(), standing.end(),
                                       [](const PailLine& p) { return p.state == PailState::strength_unknown; });
    const auto waiting =
        std::count_if(standing.begin(), standing.end(), [](const PailLine& p) { return p.waits_too_long; });
    m_sentence->clear();
    //: In a sentence of figures; %n pails stand on the shelf
    m_sentence->add(tr("<b>%n</b> pail(s) on the shelf", nullptr, stock.pails));
    if (stock.pails > 0) {
        //: In a sentence of figures; %1 the mass of all pails
        m_sentence->add(tr("<b>%1</b> together").arg(m_desk.large(stock.in_pails, 2)));
    }
    if (waiting > 0) {
        //: In a sentence of figures; %n pails wait longer than allowed
        m_sentence->add(State::near, tr("%n wait(s) too long", nullptr, static_cast<int>(waiting)));
    }
    if (unknown > 0) {
        //: In a sentence of figures; %n pails have no known strength
        m_sentence->add(State::near, tr("%n of unknown strength", nullptr, static_cast<int>(unknown)));
    }
}

void PailsPage::show_rows() {
    m_rows->set_rows(work::pails(m_desk.workbook(), m_desk.today(), m_filter->chosen() == Shown::all));
    m_table->choose_some_row();
    show_chosen();
}

void PailsPage::show_chosen() {
    std::vector<PailLine> pails;
    for (const qint64 id : m_table->chosen_ids()) {
        if (const PailLine* pail = m_rows->find(id))
            pails.push_back(*pail);
    }
    m_card->show_pails(pails);
}

bool PailsPage::show_pails(const std::vector<qint64>& pails) {
    refresh();
    if (std::any_of(pails.begin(), pails.end(), [this](qint64 id) { return m_rows->row_of(id) < 0; })) {
        m_filter->choose(Shown::all);
        show_rows();
    }
    return m_table->choose_rows(pails);
}

void PailsPage::take_focus() {
    if (m_content->isVisibleTo(this))
        m_table->setFocus(Qt::TabFocusReason);
    else
        m_empty->setFocus(Qt::TabFocusReason);
}

} // namespace soakbook::ui
