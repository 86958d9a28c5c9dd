// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/yards/yard_page.h"

#include "ui/papers/history_dialog.h"
#include "ui/parts/cards.h"
#include "ui/parts/flow_layout.h"
#include "ui/parts/page_scroll.h"
#include "ui/parts/refusal_words.h"
#include "ui/parts/theme.h"
#include "ui/yards/choice_delegate.h"
#include "ui/yards/hive_form.h"
#include "ui/yards/hive_story.h"
#include "ui/yards/hives_form.h"
#include "ui/yards/low_table.h"
#include "ui/yards/yard_form.h"
#include "ui/yards/yard_words.h"

#include <QLabel>
#include <QMenu>
#include <QPushButton>
#include <QVBoxLayout>

namespace soakbook::ui {

namespace {

/// What the story of a hive says as well goes first where the page is narrow.
std::vector<int> spared_columns() { return {hive_since, hive_bags, hive_day, hive_boxes}; }

} // namespace

YardPage::YardPage(Desk& desk, QWidget* parent)
    : QWidget(parent), m_desk(desk), m_news(new NoticeBar({})), m_sentence(new Sentence), m_card(new Card), m_buttons(new FlowLayout(8, 8)),
      m_complaint(make_label({}, Type::body, nullptr, true)),
      //: Read aloud: the table of hives
      m_table(new LowTable(QStringLiteral("yards/hives"), tr("Hives of the yard"), 6)), m_rows(nullptr), m_halves(new QVBoxLayout),
      m_story(new HiveStory(desk)), m_menu(new QMenu(this)) {
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    auto* scroll = new PageScroll;
    whole->addWidget(scroll);
    m_news->set_can_be_closed(true);
    m_news->setObjectName(QStringLiteral("yard_news"));
    m_news->hide();
    scroll->column()->addWidget(m_news);
    auto* figures = new Card;
    figures->column()->addWidget(m_sentence);
    scroll->column()->addWidget(figures);

    m_card->set_flush();
    auto* head = new QWidget;
    auto* column = new QVBoxLayout(head);
    column->setContentsMargins(card_padding, 12, card_padding, 12);
    auto* buttons = new QWidget;
    buttons->setLayout(m_buttons);
    column->addWidget(buttons);
    m_complaint->setProperty("kind", QStringLiteral("complaint"));
    m_complaint->setObjectName(QStringLiteral("yard_complaint"));
    m_complaint->hide();
    column->addWidget(m_complaint);
    m_card->column()->addWidget(head);
    make_buttons();
    make_table();
    give_history(m_desk, this, [this] { return history(); });
    give_history(m_desk, m_table, [this] { return history_of(m_desk, {}, QStringLiteral("hive"), m_table->current_id()); });
    m_card->column()->addWidget(m_table, 1);

    m_halves->setSpacing(16);
    m_halves->addWidget(m_card, 3);
    m_halves->addWidget(m_story, 2);
    m_story->hide();
    scroll->column()->addLayout(m_halves, 1);
    connect(m_story, &HiveStory::closed, this, [this] {
        m_story->hide();
        m_table->setFocus();
    });
}

QPushButton* YardPage::button(const QString& words, const char* name) {
    auto* made = new QPushButton(words);
    made->setAutoDefault(false);
    made->setObjectName(QLatin1String(name));
    m_buttons->addWidget(made);
    return made;
}

void YardPage::make_buttons() {
    //: Button: hang strips in the hives of this yard
    m_in = button(tr("Strips in"), "yard_strips_in");
    //: Button: take strips out of the hives of this yard
    m_out = button(tr("Strips out"), "yard_strips_out");
    //: Button
    m_count = button(tr("Count mites"), "yard_count");
    //: Button: a sheet of paper to take along
    m_run_sheet = button(tr("Run sheet"), "yard_run_sheet");
    //: Button: a sheet of paper to take along
    m_pull_list = button(tr("Pull list"), "yard_pull_list");
    //: Button
    m_add = button(tr("Add hives"), "yard_add_hives");
    //: Button: flows and closed times
    m_times = button(tr("Times of this yard"), "yard_times");
    //: Button that opens a short list of further things to do
    m_more = button(tr("More …"), "yard_more");
    connect(m_more, &QPushButton::clicked, this, [this] {
        fill_more();
        m_menu->popup(m_more->mapToGlobal(QPoint(0, m_more->height() + 2)));
    });
    connect(m_in, &QPushButton::clicked, this, &YardPage::wants_strips_in);
    connect(m_out, &QPushButton::clicked, this, &YardPage::wants_strips_out);
    connect(m_count, &QPushButton::clicked, this, &YardPage::wants_count);
    connect(m_run_sheet, &QPushButton::clicked, this, &YardPage::wants_run_sheet);
    connect(m_pull_list, &QPushButton::clicked, this, &YardPage::wants_pull_list);
    connect(m_add, &QPushButton::clicked, this, [this] { (new HivesForm(m_desk, m_yard, m_entry.name, window()))->open(); });
    connect(m_times, &QPushButton::clicked, this, [this] { open_yard_times(window(), m_desk, m_yard, m_entry.name); });
}

HistoryOf YardPage::history() const {
    return history_of(m_desk, m_entry.name, QStringLiteral("yard"), m_yard.value);
}

void YardPage::fill_more() {
    m_menu->clear();
    const auto hives = chosen_hives();
    if (m_yard) {
        //: In a short list of things to do
        m_menu->addAction(tr("Edit this yard"), this, [this] { open_yard_form(window(), m_desk, m_entry); })->setObjectName(QStringLiteral("yard_edit"));
        //: In a short list of things to do: what the record of a yard said before, who changed it, when and why
        m_menu->addAction(tr("History of this yard"), this, [this] { open_history(m_desk, history(), window()); })->setObjectName(QStringLiteral("yard_history"));
    }
    if (!hives.empty()) {
        //: In a short list of things to do
        QAction* move = m_menu->addAction(tr("Move %n hives to another yard", nullptr, static_cast<int>(hives.size())), this,
                                          [this, hives] { open_move_form(window(), m_desk, hives); });
        move->setObjectName(QStringLiteral("yard_move"));
        //: In a short list of things to do
        m_menu->addAction(tr("Edit the hive"), this, [this, hives] { open_hive_form(window(), m_desk, hives.front()); })->setObjectName(QStringLiteral("yard_edit_hive"));
    }
}

void YardPage::make_table() {
    m_rows = new RowsModel<HiveLineRow>(
        HiveGrid::columns(m_desk, [this](const work::HiveEntry& hive) { return save(hive); },
                          [this](const QString& hive) {
                              //: %1 a hive, %2 why a text does not read
                              m_complaint->setText(tr("%1: %2").arg(hive, unreadable_words(exchange::Unreadable::not_a_number)));
                              m_complaint->show();
                          }),
        [](const HiveLineRow& row) { return row.line.entry.id.value; }, this);
    m_table->setObjectName(QStringLiteral("yard_hives"));
    m_table->set_start_widths(HiveGrid::widths());
    m_table->set_stretched_column(hive_count);
    m_table->set_rows_model(m_rows);
    m_table->set_many_can_be_chosen(true);
    // Since when, from which bags and which day are in the story too.
    m_table->set_spared_columns(spared_columns());
    //: What stands in the empty table of hives
    m_table->set_empty_text(tr("No hive stands here yet. Add hives: twenty numbered ones are one line, a row without numbers is one too."));
    m_table->setItemDelegateForColumn(hive_supers, new ChoiceDelegate(
                                                       [] {
                                                           //: Nobody said whether honey supers are on
                                                           return std::vector<ChoiceDelegate::Choice>{{QString(), tr("not said")},
                                                                                                      {HiveGrid::supers_word(true), HiveGrid::supers_word(true)},
                                                                                                      {HiveGrid::supers_word(false), HiveGrid::supers_word(false)}};
                                                       },
                                                       this));
    connect(m_table, &RecordTable::opened, this, [this](qint64 id) { show_hive(work::HiveId{id}); });
    connect(m_table, &RecordTable::current_changed, this, [this](qint64 id) {
        if (id != 0 && m_table->hasFocus()) {
            m_story->show_hive(work::HiveId{id});
            settle_story();
        }
    });
}

void YardPage::show_yard(work::YardId yard) {
    if (yard != m_yard) {
        m_complaint->hide();
        m_story->show_hive({});
        m_story->hide();
        m_rows->set_rows({});
    }
    m_yard = yard;
    m_table->setColumnHidden(hive_yard, bool(m_yard));
    m_table->set_spared_columns(spared_columns());
    refresh();
}

void YardPage::show_hive(work::HiveId hive) {
    m_table->choose(hive.value);
    m_story->show_hive(hive);
    settle_story();
}

void YardPage::settle_story() {
    m_story->setVisible(bool(m_story->hive()));
    // Beside the table where there is room for both, below it otherwise.
    const bool beside = width() >= scaled(1700);
    m_halves->setDirection(beside ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
    m_table->set_least_rows(m_story->isHidden() ? 6 : 3);
}

void YardPage::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    settle_story();
}

void YardPage::tell(const QString& news) {
    m_news->set_text(news);
    m_news->setVisible(!news.isEmpty());
}

void YardPage::take_focus() {
    if (m_rows->rowCount() > 0) {
        m_table->setFocus();
    } else {
        (m_yard ? m_add : m_in)->setFocus();
    }
}

void YardPage::refresh() {
    m_entry = {};
    for (const work::YardEntry& yard : work::yards(m_desk.workbook(), true)) {
        if (yard.id == m_yard) {
            m_entry = yard;
        }
    }
    const std::vector<work::HiveLine> lines = work::hive_lines(m_desk.workbook(), m_yard, m_desk.today());
    std::vector<HiveLineRow> rows;
    for (const work::HiveLine& line : lines) {
        HiveLineRow row{line, {}, {}};
        if (const HiveLineRow* before = m_rows->find(line.entry.id.value)) {
            row.boxes = before->boxes;
            row.frames = before->frames;
        }
        rows.push_back(std::move(row));
    }
    m_rows->set_rows(std::move(rows));
    show_sentence(lines);
    settle_buttons(lines);
    m_story->refresh();
    settle_story();
}

bool YardPage::save(const work::HiveEntry& hive) {
    const auto saved = work::save_hives(m_desk.workbook(), {hive}, m_desk.doing());
    m_complaint->setText(saved ? QString() : YardWords::hive(hive.name, hive.hives) + QStringLiteral(": ") + refusal_words(saved.error(), m_desk));
    m_complaint->setVisible(!saved);
    return saved.has_value();
}

std::vector<work::HiveId> YardPage::chosen_hives() const {
    std::vector<work::HiveId> hives;
    for (const qint64 id : m_table->chosen_ids()) {
        hives.push_back(work::HiveId{id});
    }
    return hives;
}

} // namespace soakbook::ui
