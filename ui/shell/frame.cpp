// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/frame.h"

#include "core/work/undo.h"
#include "ui/parts/cards.h"
#include "ui/parts/desk.h"
#include "ui/parts/draft_door.h"
#include "ui/parts/piece_words.h"
#include "ui/parts/refusal_words.h"
#include "ui/parts/theme.h"
#include "ui/shell/head.h"
#include "ui/shell/key_sheet.h"
#include "ui/shell/navigation.h"
#include "ui/shell/opening_window.h"
#include "ui/shell/who_bar.h"
#include "ui/shell/window_place.h"

#include <QApplication>
#include <QCloseEvent>
#include <QHBoxLayout>
#include <QPushButton>
#include <QShortcut>
#include <QShowEvent>
#include <QStackedWidget>
#include <QVBoxLayout>

#include <algorithm>
#include <utility>

namespace soakbook::ui {

namespace {

constexpr int text_step = 25;

} // namespace

Frame::Frame(Desk& desk, std::vector<Place*> places, QWidget* parent)
    : QWidget(parent), m_desk(desk), m_places(std::move(places)), m_navigation(new Navigation(this)), m_head(new Head(this)),
      m_notice(new NoticeBar({}, this)), m_bars(new QVBoxLayout), m_who_bar(new WhoBar(this)), m_pages(new QStackedWidget(this)),
      m_status_line(new StatusLine(this)) {
    setWindowTitle(QStringLiteral("Soakbook"));
    m_notice->set_can_be_closed(true);
    m_notice->hide();
    auto* page = new QVBoxLayout;
    page->setSpacing(0);
    page->addWidget(m_head);
    page->addLayout(m_bars);
    page->addWidget(m_who_bar);
    page->addWidget(m_notice);
    page->addWidget(m_pages, 1);
    auto* upper = new QHBoxLayout;
    upper->setSpacing(0);
    upper->addWidget(m_navigation);
    upper->addLayout(page, 1);
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->setSpacing(0);
    whole->addLayout(upper, 1);
    whole->addWidget(m_status_line);

    for (Place* place : m_places) {
        add_place(place);
    }
    add_keys();
    connect(m_navigation, &Navigation::went_to, this, &Frame::go_to);
    connect(m_head->find(), &FindBox::found, this, &Frame::go);
    connect(m_head, &Head::undo_wanted, this, &Frame::undo);
    connect(m_head, &Head::redo_wanted, this, &Frame::redo);
    connect(m_status_line, &StatusLine::who_chosen, &desk, &Desk::set_who);
    connect(m_who_bar, &WhoBar::answered, &desk, &Desk::set_who);
    connect(&desk, &Desk::who_changed, this, &Frame::refresh_status);
    connect(&desk, &Desk::work_done, this, &Frame::refresh);
    connect(&desk, &Desk::day_turned, this, [this] {
        refresh();
        ask_who();
    });
    connect(&desk, &Desk::preferences_changed, this, [this] {
        wear_preferences();
        refresh();
    });
    if (!m_places.empty()) {
        show_place(m_places.front());
    }
    refresh_undo();
}

void Frame::add_place(Place* place) {
    m_pages->addWidget(place);
    m_navigation->add(place->place(), place->name());
    m_stale.insert(place);
    connect(place, &Place::wishes, this, &Frame::go);
    connect(place, &Place::title_changed, this, [this, place] {
        if (place == current_place()) {
            take_title();
        }
    });
}

void Frame::add_keys() {
    const auto key = [this](const QKeySequence& keys, auto what) {
        auto* shortcut = new QShortcut(keys, this);
        shortcut->setAutoRepeat(false);
        connect(shortcut, &QShortcut::activated, this, what);
    };
    key(QKeySequence(int{Qt::CTRL} | int{Qt::Key_F}), [this] { m_head->find()->take_focus(); });
    key(QKeySequence(int{Qt::CTRL} | int{Qt::Key_Z}), [this] { undo(); });
    key(QKeySequence(int{Qt::CTRL} | int{Qt::SHIFT} | int{Qt::Key_Z}), [this] { redo(); });
    key(QKeySequence(int{Qt::Key_F1}), [this] { show_keys(); });
    key(QKeySequence(int{Qt::CTRL} | int{Qt::Key_Plus}), [this] { change_text(text_percent() + text_step); });
    key(QKeySequence(int{Qt::CTRL} | int{Qt::Key_Equal}), [this] { change_text(text_percent() + text_step); });
    key(QKeySequence(int{Qt::CTRL} | int{Qt::Key_Minus}), [this] { change_text(text_percent() - text_step); });
    key(QKeySequence(int{Qt::CTRL} | int{Qt::Key_0}), [this] { change_text(100); });
}

void Frame::set_find(Find find) {
    m_head->find()->set_find(std::move(find));
}

void Frame::set_status(std::function<StatusFacts()> status) {
    m_status = std::move(status);
    refresh_status();
}

void Frame::set_people(std::function<QStringList()> people) {
    m_people = std::move(people);
    refresh_status();
    ask_who();
}

Place* Frame::current_place() const {
    return qobject_cast<Place*>(m_pages->currentWidget());
}

void Frame::go_to(PlaceName name) {
    const auto place = std::find_if(m_places.begin(), m_places.end(), [name](const Place* p) { return p->place() == name; });
    if (place != m_places.end()) {
        show_place(*place);
        (*place)->take_focus();
    }
}

void Frame::go(const Intent& intent) {
    go_to(intent.place);
    if (Place* place = current_place(); place != nullptr && place->place() == intent.place) {
        place->open(intent);
        if (intent.prefill.contains(draft_key)) {
            open_draft(*place, m_desk, intent);
        }
    }
}

void Frame::show_place(Place* place) {
    m_pages->setCurrentWidget(place);
    m_navigation->mark(place->place());
    if (m_stale.erase(place) > 0) {
        place->refresh();
    }
    take_title();
}

void Frame::take_title() {
    const Place* place = current_place();
    if (place == nullptr) {
        return;
    }
    m_head->set_title(place->title());
    m_head->set_actions(current_place()->head_actions());
    refresh_status();
}

void Frame::refresh() {
    m_stale.insert(m_places.begin(), m_places.end());
    if (Place* place = current_place()) {
        m_stale.erase(place);
        place->refresh();
        take_title();
    }
    refresh_undo();
    refresh_status();
}

void Frame::refresh_undo() {
    const auto words = [](const std::optional<work::Piece>& piece) { return piece ? piece_words(*piece) : QString(); };
    m_head->set_undo(words(work::next_undo(m_desk.workbook())), words(work::next_redo(m_desk.workbook())));
}

void Frame::refresh_status() {
    const StatusFacts facts = m_status ? m_status() : StatusFacts{};
    //: In the status line; %1 the number of the last entry in the workbook's history
    m_status_line->set_facts(facts, m_status ? tr("Entry %1").arg(m_desk.count(facts.entries)) : QString());
    const bool entries = !m_desk.looking();
    m_status_line->set_people(entries ? m_desk.who() : QString(), entries && m_people ? m_people() : QStringList());
    const Place* place = current_place();
    const QString page = place != nullptr ? place->title() : QString();
    QStringList title{page, facts.workbook, QStringLiteral("Soakbook")};
    title.removeAll(QString());
    setWindowTitle(title.join(QStringLiteral(" · ")));
}

void Frame::undo() {
    m_notice->hide();
    const auto done = work::undo(m_desk.workbook(), m_desk.doing());
    if (!done) {
        say(refusal_words(done.error(), m_desk));
    }
}

void Frame::redo() {
    m_notice->hide();
    const auto done = work::redo(m_desk.workbook(), m_desk.doing());
    if (!done) {
        say(refusal_words(done.error(), m_desk));
    }
}

void Frame::set_banner(const QString& words, const std::vector<WayOn>& ways) {
    if (m_banner != nullptr) {
        // It may be a button of its own that asks for this.
        m_banner->hide();
        m_banner->deleteLater();
        m_banner = nullptr;
    }
    if (words.isEmpty()) {
        return;
    }
    m_banner = new NoticeBar(words, this);
    m_banner->set_text(words);
    m_banner->setObjectName(QStringLiteral("banner"));
    for (const WayOn& way : ways) {
        QPushButton* button = m_banner->add_button(way.words);
        button->setObjectName(way.name);
        connect(button, &QPushButton::clicked, this, [go = way.go] { go(); });
    }
    m_bars->addWidget(m_banner);
    m_banner->show();
}

void Frame::say(const QString& words) {
    m_notice->set_text(words);
    m_notice->show();
}

void Frame::ask_who() {
    if (m_desk.looking()) {
        return;
    }
    const QStringList people = m_people ? m_people() : QStringList();
    if (people.size() == 1 && m_desk.who() != people.front()) {
        m_desk.set_who(people.front());
    } else if (people.size() > 1 && (!m_desk.who_said_today() || !people.contains(m_desk.who()))) {
        m_who_bar->ask(people);
    }
}

void Frame::show_keys() {
    QStringList names;
    for (const Place* place : m_places) {
        names << place->name();
    }
    (new KeySheet(names, this))->open();
}

void Frame::change_text(int percent) {
    Preferences preferences = m_desk.preferences();
    preferences.text_percent = std::clamp(percent, 100, 200);
    m_desk.set_preferences(preferences);
}

void Frame::wear_preferences() {
    const Look wanted = look_for(m_desk.preferences().look);
    if (wanted != look() || m_desk.preferences().text_percent != text_percent()) {
        apply_theme(*qApp, wanted, m_desk.preferences().text_percent);
    }
}

void Frame::restore_place() {
    m_place_remembered = true;
    restore_window(*this);
}

void Frame::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    if (!event->spontaneous() && current_place() != nullptr) {
        current_place()->take_focus();
    }
}

void Frame::closeEvent(QCloseEvent* event) {
    if (m_place_remembered) {
        remember_window(*this);
    }
    QWidget::closeEvent(event);
    Q_EMIT closed();
}

} // namespace soakbook::ui
