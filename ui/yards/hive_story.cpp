// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/yards/hive_story.h"

#include "core/work/how_yards.h"
#include "ui/papers/history_dialog.h"
#include "ui/parts/flow_layout.h"
#include "ui/parts/how_button.h"
#include "ui/parts/icons.h"
#include "ui/parts/theme.h"
#include "ui/yards/corrections.h"
#include "ui/yards/hive_form.h"
#include "ui/yards/low_table.h"
#include "ui/yards/mite_words.h"
#include "ui/yards/place_form.h"
#include "ui/yards/yard_words.h"

#include <QPushButton>
#include <QShortcut>
#include <QToolButton>
#include <QVBoxLayout>

#include <algorithm>

namespace soakbook::ui {

using Kind = work::HiveEvent::Kind;

HiveStory::HiveStory(Desk& desk, QWidget* parent)
    : Card(QString(), parent), m_desk(desk), m_sentence(new Sentence), m_how(new HowButton),
      //: Read aloud: the table of what happened to a hive
      m_table(new LowTable(QStringLiteral("yards/story"), tr("What happened to this hive"), 2)),
      m_rows(new RowsModel<Line>(columns(), [](const Line& line) { return line.id; }, this)) {
    setObjectName(QStringLiteral("hive_story"));
    set_heading(QStringLiteral(" "));
    make_buttons();
    set_flush();
    auto* around = new QWidget;
    auto* column = new QVBoxLayout(around);
    column->setContentsMargins(card_padding, 0, card_padding, 8);
    auto* said = new QHBoxLayout;
    said->setSpacing(16);
    said->addWidget(m_sentence, 1);
    said->addWidget(m_how, 0, Qt::AlignVCenter);
    column->addLayout(said);
    m_how->setObjectName(QStringLiteral("story_how"));
    this->column()->addWidget(around);
    this->column()->addWidget(m_table, 1);
    m_table->setObjectName(QStringLiteral("story_table"));
    m_table->set_start_widths({118, 110, 70, 80, 220, 160});
    m_table->set_stretched_column(5);
    m_table->set_rows_model(m_rows);
    //: What stands in the empty story of a hive
    m_table->set_empty_text(tr("Nothing yet. Strips in and out, counts and moves of this hive will stand here."));
    connect(m_table, &RecordTable::current_changed, this, [this] {
        settle_buttons();
        show_how();
    });
    connect(m_table, &RecordTable::opened, this, [this] { m_correct->animateClick(); });
    auto* away = new QShortcut(QKeySequence(Qt::Key_Escape), this);
    away->setContext(Qt::WidgetWithChildrenShortcut);
    connect(away, &QShortcut::activated, this, &HiveStory::closed);
}

void HiveStory::make_buttons() {
    auto* buttons = new QWidget;
    auto* flow = new FlowLayout(8, 8, buttons);
    const auto button = [flow](const QString& words, const char* name) {
        auto* made = new QPushButton(words);
        made->setAutoDefault(false);
        made->setObjectName(QLatin1String(name));
        flow->addWidget(made);
        return made;
    };
    //: Quiet button
    m_correct = button(tr("Correct"), "story_correct");
    //: Quiet button: makes an entry void
    m_void = button(tr("Make void"), "story_void");
    //: Quiet button
    m_weigh = button(tr("Weigh pulled strips"), "story_weigh");
    //: Quiet button: hangs strips in this one hive
    m_place = button(tr("Strips in this hive"), "story_place");
    QPushButton* history = make_history_button(m_desk, this, [this] { return history_of(m_desk, m_name, QStringLiteral("hive"), m_hive.value); }, QStringLiteral("story_history"));
    set_kind(history, "");
    flow->addWidget(history);
    give_history(m_desk, m_table, [this] {
        const work::HiveEvent* event = chosen();
        if (event == nullptr)
            return HistoryOf{};
        return event->kind == Kind::count ? history_of(m_desk, {}, QStringLiteral("mite_count"), event->count.value)
                                          : history_of(m_desk, {}, QStringLiteral("placement"), event->placement.value);
    });
    //: Quiet button
    QPushButton* edit = button(tr("Edit the hive"), "story_edit");
    auto* cross = new QToolButton;
    cross->setIcon(icon(QStringLiteral("close")));
    //: Tool tip of a small cross
    cross->setToolTip(tr("Close the story of this hive"));
    cross->setAccessibleName(cross->toolTip());
    set_kind(cross, "icon");
    flow->addWidget(cross);
    add_head_widget(buttons);
    connect(m_correct, &QPushButton::clicked, this, [this] {
        if (const work::HiveEvent* event = chosen(); event != nullptr && can_be_corrected(*event)) {
            open_correction(window(), m_desk, *event, m_name);
        }
    });
    connect(m_void, &QPushButton::clicked, this, [this] {
        if (const work::HiveEvent* event = chosen()) {
            open_void(window(), m_desk, *event, m_name);
        }
    });
    connect(m_weigh, &QPushButton::clicked, this, [this] {
        if (const work::HiveEvent* event = chosen()) {
            open_pulled_weighing(window(), m_desk, *event, m_name);
        }
    });
    connect(m_place, &QPushButton::clicked, this, [this] {
        if (const auto hive = work::hive(m_desk.workbook(), m_hive)) {
            (new PlaceForm(m_desk, *hive, window()))->open();
        }
    });
    connect(edit, &QPushButton::clicked, this, [this] { open_hive_form(window(), m_desk, m_hive); });
    connect(cross, &QToolButton::clicked, this, &HiveStory::closed);
}

QString HiveStory::what(const work::HiveEvent& event) const {
    switch (event.kind) {
    case Kind::strips_in:
        //: What happened to a hive
        return tr("strips in");
    case Kind::strips_out:
        //: What happened to a hive
        return tr("strips out");
    case Kind::count:
        //: What happened to a hive
        return tr("mite count");
    case Kind::moved:
        //: What happened to a hive
        return tr("moved");
    case Kind::died:
        //: What happened to a hive
        return tr("dead or gone");
    }
    return {};
}

std::vector<Column<HiveStory::Line>> HiveStory::columns() const {
    std::vector<Column<Line>> columns(6);
    //: Column
    columns[0].header = tr("Day");
    columns[0].text = [this](const Line& line) { return YardWords::day(line.event.on, m_desk); };
    columns[0].sort_key = [](const Line& line) { return QVariant(to_qdate(line.event.on)); };
    //: Column
    columns[1].header = tr("What");
    columns[1].text = [this](const Line& line) { return what(line.event); };
    //: Column
    columns[2].header = tr("Strips");
    columns[2].align = Qt::AlignRight;
    columns[2].type = CellType::strong;
    columns[2].text = [](const Line& line) { return line.event.kind == Kind::strips_in || line.event.kind == Kind::strips_out ? QString::number(line.event.strips) : QString(); };
    //: Column: strips that were not found any more
    columns[3].header = tr("Missing");
    columns[3].align = Qt::AlignRight;
    columns[3].text = [](const Line& line) { return line.event.missing == 0 ? QString() : QString::number(line.event.missing); };
    //: Column: bag, yard or count
    columns[4].header = tr("From, to, or found");
    columns[4].text = [](const Line& line) { return line.event.text; };
    //: Column
    columns[5].header = tr("Note");
    columns[5].type = CellType::soft;
    columns[5].text = [](const Line& line) {
        QStringList parts;
        if (line.event.made_void) {
            //: An entry that was made void
            parts += tr("void");
        }
        if (line.event.written_late) {
            //: An entry that was made later than the day it tells of
            parts += tr("entered late");
        }
        if (!line.event.note.isEmpty()) {
            parts += line.event.note;
        }
        return parts.join(QStringLiteral("; "));
    };
    columns[5].state = [](const Line& line) { return line.event.made_void ? std::optional<State>(State::gone) : std::nullopt; };
    columns[5].tip = columns[5].text;
    return columns;
}

void HiveStory::show_hive(work::HiveId hive) {
    m_hive = hive;
    refresh();
    // What happened last is what one comes for.
    if (m_rows->rowCount() > 0) {
        m_table->setCurrentIndex(m_rows->index(0, 0));
    }
}

void HiveStory::refresh() {
    const auto hive = m_hive ? work::hive(m_desk.workbook(), m_hive) : std::nullopt;
    if (!hive) {
        m_hive = {};
        m_rows->set_rows({});
        return;
    }
    m_name = YardWords::hive(hive->name, hive->hives);
    set_heading(m_name);
    std::vector<Line> lines;
    qint64 nameless = 0;
    for (work::HiveEvent& event : work::hive_events(m_desk.workbook(), m_hive)) {
        const qint64 number = event_number(event);
        const bool taken = number == 0 || std::any_of(lines.begin(), lines.end(), [number](const Line& line) { return line.id == number; });
        lines.push_back({taken ? --nameless : number, std::move(event)});
    }
    m_rows->set_rows(std::move(lines));
    if (!m_table->currentIndex().isValid() && m_rows->rowCount() > 0) {
        m_table->setCurrentIndex(m_rows->index(0, 0));
    }

    m_sentence->clear();
    const auto all = work::hive_lines(m_desk.workbook(), hive->yard, m_desk.today());
    const auto found = std::find_if(all.begin(), all.end(), [this](const work::HiveLine& line) { return line.entry.id == m_hive; });
    if (found != all.end()) {
        if (const auto state = YardWords::state(*found)) {
            m_sentence->add(*state, YardWords::word(*found));
        }
        if (found->strips > 0) {
            //: Rich text; %1 the days to pull; %n strips
            m_sentence->add(tr("<b>%n</b> strips hang, to be pulled %1", nullptr, found->strips).arg(YardWords::days(found->pull_from, found->pull_by, m_desk)));
        }
        if (found->last_count) {
            //: Rich text; %1 the rate of the last mite count
            m_sentence->add(tr("last count %1").arg(MiteWords::against_threshold(found->last_count->figures, m_desk)));
        }
        if (found->no_harvest_before) {
            //: Rich text; %1 a day
            m_sentence->add(tr("no harvest before <b>%1</b>").arg(YardWords::day(*found->no_harvest_before, m_desk)));
        }
    }
    if (hive->untreated) {
        //: A hive without strips to compare with
        m_sentence->add(tr("left untreated on purpose"));
    }
    if (!hive->note.isEmpty()) {
        m_sentence->add(YardWords::shortened(hive->note, 90).toHtmlEscaped());
    }
    m_place->setVisible(hive->state == work::StateOfHive::alive);
    settle_buttons();
    show_how();
}

void HiveStory::show_how() {
    const work::HiveEvent* event = chosen();
    std::vector<work::How> hows;
    const auto add_window = [&](work::PlacementId placement) {
        const auto window = work::how_pull_window(m_desk.workbook(), placement);
        if (window && std::none_of(hows.begin(), hows.end(), [&](const work::How& how) { return how.facts == window->facts; })) {
            hows.push_back(*window);
        }
    };
    if (event != nullptr && event->kind == Kind::strips_in) {
        add_window(event->placement);
    } else {
        for (const Line& line : m_rows->rows()) {
            if (line.event.kind == Kind::strips_in && is_hanging(line.event)) {
                add_window(line.event.placement);
            }
        }
    }
    const auto counts = m_hive ? work::counts(m_desk.workbook(), m_hive, {}) : std::vector<work::CountLine>{};
    const bool is_count = event != nullptr && event->kind == Kind::count && !event->made_void;
    const auto count = std::find_if(counts.begin(), counts.end(), [&](const work::CountLine& line) { return !is_count || line.id == event->count; });
    if (count != counts.end()) {
        hows.push_back(work::how_mite_rate(*count));
    }
    m_how->set_hows(hows, m_desk, m_name);
}

bool HiveStory::is_hanging(const work::HiveEvent& strips_in) const {
    const std::vector<Line>& lines = m_rows->rows();
    return !strips_in.made_void && std::none_of(lines.begin(), lines.end(), [&](const Line& line) {
        return line.event.kind == Kind::strips_out && line.event.placement == strips_in.placement;
    });
}

const work::HiveEvent* HiveStory::chosen() const {
    const Line* line = m_rows->find(m_table->current_id());
    return line == nullptr ? nullptr : &line->event;
}

void HiveStory::settle_buttons() {
    const work::HiveEvent* event = chosen();
    m_correct->setVisible(event != nullptr && can_be_corrected(*event));
    m_void->setVisible(event != nullptr && can_be_made_void(*event));
    m_weigh->setVisible(event != nullptr && event->kind == Kind::strips_out && !event->made_void && event->strips > 0);
}

} // namespace soakbook::ui
