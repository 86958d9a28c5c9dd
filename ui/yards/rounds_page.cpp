// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/yards/rounds_page.h"

#include "core/work/how_yards.h"
#include "core/work/mite_change.h"
#include "ui/papers/history_dialog.h"
#include "ui/parts/cards.h"
#include "ui/parts/flow_layout.h"
#include "ui/parts/how_button.h"
#include "ui/parts/page_scroll.h"
#include "ui/parts/refusal_words.h"
#include "ui/parts/theme.h"
#include "ui/yards/low_table.h"
#include "ui/yards/mite_words.h"
#include "ui/yards/round_form.h"
#include "ui/yards/yard_words.h"

#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace soakbook::ui {

RoundsPage::RoundsPage(Desk& desk, QWidget* parent)
    : QWidget(parent), m_desk(desk), m_filled(new PageScroll),
      m_empty(new EmptyPage(QStringLiteral("hang"),
                            //: An empty page: its heading
                            tr("No round yet"),
                            //: An empty page: what will stand here
                            tr("A round says which yards get strips, how many for each hive, and when. It tells you at once whether the store "
                               "has enough, and each yard's visit then stands ready to be entered."),
                            //: The button of an empty page
                            tr("Plan a round"))),
      m_sentence(new Sentence),
      //: Read aloud: the table of rounds
      m_table(new LowTable(QStringLiteral("yards/rounds"), tr("Rounds"), 3)), m_rows(nullptr), m_yards_card(new Card),
      //: Read aloud: the table of a round's yards
      m_yards_table(new LowTable(QStringLiteral("yards/round_yards"), tr("Yards of the round"), 2)), m_yard_rows(nullptr),
      m_mites_row(new QWidget), m_mites(make_soft_label({}, Type::body)), m_how(new HowButton), m_complaint(make_label({}, Type::body, nullptr, true)) {
    setObjectName(QStringLiteral("rounds_page"));
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->addWidget(m_filled);
    whole->addWidget(m_empty);
    m_empty->button()->setObjectName(QStringLiteral("rounds_plan_first"));
    connect(m_empty, &EmptyPage::started, this, [this] { plan({}); });
    make_rounds();
    make_yards();
}

void RoundsPage::make_rounds() {
    auto* scroll = static_cast<PageScroll*>(m_filled);
    auto* figures = new Card;
    figures->column()->addWidget(m_sentence);
    scroll->column()->addWidget(figures);
    //: Heading of a table
    auto* card = new Card(tr("Rounds"));
    //: Filled button
    QPushButton* plan_button = card->add_head_button(tr("Plan a round"), true);
    plan_button->setObjectName(QStringLiteral("rounds_plan"));
    connect(plan_button, &QPushButton::clicked, this, [this] { plan({}); });
    card->set_flush();
    m_rows = new RowsModel<work::RoundLine>(round_columns(), [](const work::RoundLine& round) { return round.id.value; }, this);
    m_table->setObjectName(QStringLiteral("rounds_table"));
    m_table->set_start_widths(round_widths());
    m_table->set_stretched_column(0);
    m_table->set_rows_model(m_rows);
    m_table->set_spared_columns({2, 4, 3});
    card->column()->addWidget(m_table, 1);
    scroll->column()->addWidget(card, 2);
    connect(m_table, &RecordTable::current_changed, this, &RoundsPage::show_chosen);
}

void RoundsPage::make_yards() {
    auto* scroll = static_cast<PageScroll*>(m_filled);
    m_yards_card->set_heading(QStringLiteral(" "));
    auto* buttons = new QWidget;
    auto* flow = new FlowLayout(8, 8, buttons);
    const auto button = [flow](const QString& words, const char* name) {
        auto* made = new QPushButton(words);
        made->setAutoDefault(false);
        made->setObjectName(QLatin1String(name));
        flow->addWidget(made);
        return made;
    };
    //: Button: hang strips in the chosen yard
    m_in = button(tr("Strips in"), "rounds_strips_in");
    //: Button: a sheet of paper to take along
    m_sheet = button(tr("Run sheet"), "rounds_run_sheet");
    //: Button: a sheet of paper that says what goes into the car
    m_load = button(tr("Load-out"), "rounds_load_out");
    //: Quiet button
    m_change = button(tr("Change the round"), "rounds_change");
    //: Quiet button: a round that is over
    m_close = button(tr("Close the round"), "rounds_close");
    QPushButton* history = make_history_button(m_desk, this, [this] {
        const auto* round = chosen();
        return round == nullptr ? HistoryOf{} : history_of(m_desk, round->name, QStringLiteral("round"), round->id.value);
    }, QStringLiteral("rounds_history"));
    set_kind(history, "");
    flow->addWidget(history);
    m_yards_card->add_head_widget(buttons);
    m_yards_card->set_flush();
    m_complaint->setProperty("kind", QStringLiteral("complaint"));
    m_complaint->setContentsMargins(card_padding, 0, card_padding, 8);
    m_complaint->hide();
    m_yards_card->column()->addWidget(m_complaint);
    m_yard_rows = new RowsModel<YardOfRound>(yard_columns(), [](const YardOfRound& row) { return row.yard.id.value; }, this);
    m_yards_table->setObjectName(QStringLiteral("rounds_yards"));
    m_yards_table->set_start_widths({200, 90, 100, 150, 150});
    m_yards_table->set_stretched_column(0);
    m_yards_table->set_rows_model(m_yard_rows);
    m_yards_card->column()->addWidget(m_yards_table, 1);
    m_mites->setObjectName(QStringLiteral("round_mites"));
    m_how->setObjectName(QStringLiteral("round_mites_how"));
    auto* around = new QVBoxLayout(m_mites_row);
    around->setContentsMargins(12, 12, card_padding, 12);
    auto* said = new QHBoxLayout;
    said->setSpacing(16);
    said->addWidget(m_mites, 1);
    said->addWidget(m_how, 0, Qt::AlignVCenter);
    around->addLayout(said);
    m_yards_card->column()->addWidget(m_mites_row);
    scroll->column()->addWidget(m_yards_card, 3);
    scroll->column()->addWidget(new Caution(YardWords::harvest_caution()));

    const auto strips_in = [this] {
        if (const auto* round = chosen(); round != nullptr && m_yards_table->current_id() != 0) {
            Q_EMIT wants_strips_in(round->id.value, m_yards_table->current_id());
        }
    };
    connect(m_yards_table, &RecordTable::opened, this, strips_in);
    connect(m_in, &QPushButton::clicked, this, strips_in);
    connect(m_sheet, &QPushButton::clicked, this, [this] {
        if (const auto* round = chosen(); round != nullptr && m_yards_table->current_id() != 0) {
            Q_EMIT wants_run_sheet(round->id.value, m_yards_table->current_id());
        }
    });
    connect(m_load, &QPushButton::clicked, this, [this] {
        if (const auto* round = chosen()) {
            Q_EMIT wants_load_out(round->id.value);
        }
    });
    connect(m_change, &QPushButton::clicked, this, [this] {
        if (const auto* round = chosen()) {
            (new RoundForm(m_desk, work::round_entry(m_desk.workbook(), round->id), {}, window()))->open();
        }
    });
    connect(m_close, &QPushButton::clicked, this, &RoundsPage::close_chosen);
}

void RoundsPage::plan(const std::vector<work::YardId>& yards, std::function<void(work::RoundId)> done) {
    work::RoundEntry entry;
    entry.yards = yards;
    (new RoundForm(m_desk, entry, [this, done](work::RoundId round) {
        refresh();
        show_round(round);
        if (done) {
            done(round);
        }
    }, window()))->open();
}

void RoundsPage::close_chosen() {
    const auto* round = chosen();
    if (round == nullptr) {
        return;
    }
    const auto closed = work::close_round(m_desk.workbook(), round->id, m_desk.doing());
    m_complaint->setText(closed ? QString() : refusal_words(closed.error(), m_desk));
    m_complaint->setVisible(!closed);
}

void RoundsPage::refresh() {
    m_worst.clear();
    for (const work::PullLine& line : work::hanging(m_desk.workbook(), {}, m_desk.today())) {
        work::PullState& worst = m_worst.try_emplace(line.round_name, line.state).first->second;
        worst = std::max(worst, line.state);
    }
    m_rows->set_rows(work::rounds(m_desk.workbook()));
    const bool any = m_rows->rowCount() > 0;
    m_filled->setVisible(any);
    m_empty->setVisible(!any);
    int open = 0;
    int hanging = 0;
    int to_come = 0;
    for (const work::RoundLine& round : m_rows->rows()) {
        open += round.closed ? 0 : 1;
        hanging += round.strips_hanging;
        to_come += round.closed ? 0 : std::max(0, round.strips_planned - round.strips_in);
    }
    m_sentence->clear();
    //: Rich text: keep the marks around the figure
    m_sentence->add(tr("<b>%n</b> rounds open", nullptr, open));
    //: Rich text: keep the marks around the figure
    m_sentence->add(tr("<b>%n</b> strips hang", nullptr, hanging));
    //: Rich text: keep the marks around the figure
    m_sentence->add(tr("<b>%n</b> strips still to hang", nullptr, to_come));
    if (any && !m_table->currentIndex().isValid()) {
        m_table->setCurrentIndex(m_rows->index(0, 0));
    }
    show_chosen();
}

void RoundsPage::show_round(work::RoundId round) {
    if (m_rows->row_of(round.value) >= 0) {
        m_table->choose(round.value);
    }
    show_chosen();
}

void RoundsPage::take_focus() {
    if (m_rows->rowCount() > 0) {
        m_table->setFocus();
    } else {
        m_empty->button()->setFocus();
    }
}

const work::RoundLine* RoundsPage::chosen() const {
    return m_rows->find(m_table->current_id());
}

void RoundsPage::show_chosen() {
    const work::RoundLine* round = chosen();
    m_yards_card->setVisible(round != nullptr);
    if (round == nullptr) {
        return;
    }
    m_yards_card->set_heading(round->name);
    std::vector<YardOfRound> rows;
    for (const work::YardLine& yard : work::yard_lines(m_desk.workbook(), m_desk.today())) {
        for (const auto& [id, visited] : round->yards) {
            if (id == yard.id) {
                rows.push_back({round->id, yard, visited});
            }
        }
    }
    m_yard_rows->set_rows(std::move(rows));
    if (!m_yards_table->currentIndex().isValid() && m_yard_rows->rowCount() > 0) {
        m_yards_table->setCurrentIndex(m_yard_rows->index(0, 0));
    }
    show_mites(*round);
    m_in->setVisible(!round->closed);
    m_sheet->setVisible(!round->closed);
    m_load->setVisible(!round->closed);
    m_change->setVisible(!round->closed && round->strips_in == 0);
    m_close->setVisible(!round->closed);
}

void RoundsPage::show_mites(const work::RoundLine& round) {
    m_mites_row->setVisible(round.strips_in > 0);
    QStringList said;
    std::vector<work::How> hows;
    work::MiteChange change;
    for (const auto kind : {work::MiteCountKind::wash, work::MiteCountKind::powder, work::MiteCountKind::drop}) {
        change = round.strips_in > 0 ? work::mite_change(m_desk.workbook(), round.id, kind) : work::MiteChange{};
        if (change.says != work::MiteChangeSays::no_counts) {
            said += MiteWords::change(change, m_desk);
            hows.push_back(work::how_mite_change(change));
        }
    }
    m_mites->setText(said.isEmpty() ? MiteWords::change(change, m_desk) : said.join(QLatin1Char('\n')));
    m_how->set_hows(hows, m_desk);
}

} // namespace soakbook::ui
