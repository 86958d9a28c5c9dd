// SPDX-License-Identifier: GPL-3.0-or-later
// What a person is told and asked while a workbook is opened, each in a window of its own with the ways on.
#include "app/file_place.h"
#include "app/first_check.h"
#include "app/keeper.h"
#include "app/open_words.h"
#include "app/opening_words.h"
#include "app/session.h"
#include "core/work/safe_copies.h"
#include "ui/parts/desk.h"
#include "ui/safekeeping/comparison_window.h"
#include "ui/safekeeping/salvage_window.h"
#include "ui/setup/welcome.h"
#include "ui/shell/frame.h"
#include "ui/shell/opening_window.h"

#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QSettings>

namespace soakbook::app {

namespace {

const QString network_key = QStringLiteral("told/network_folders");

Wish looking_at(LookingWhy why, const std::optional<Holder>& holder = {}) {
    Wish wish;
    wish.look = true;
    wish.why = why;
    wish.holder = holder;
    return wish;
}

} // namespace

ui::OpeningWindow* Session::question() const { return m_question; }

// Whatever is opened over a question stands before it; beside it, it would take no keys.
QWidget* Session::front() const { return m_question ? static_cast<QWidget*>(m_question.data()) : window(); }

QString Session::moment(const maths::Instant& at) const { return m_habits->moment(at); }

void Session::ask(const ui::OpeningNews& news) {
    delete m_question;
    ui::OpeningNews later = news;
    // An answer may end the window that it was given in, and the one behind it.
    for (ui::WayOn& way : later.ways)
        way.go = [this, way] {
            QTimer::singleShot(0, this, [this, way] {
                const QPointer<ui::OpeningWindow> answered = m_question;
                if (way.go)
                    way.go();
                if (answered && !way.stays)
                    answered->end();
            });
        };
    auto* question = new ui::OpeningWindow(later, window());
    m_question = question;
    connect(question, &ui::OpeningWindow::left, this, [this] {
        if (!window())
            welcome();
    });
    question->setWindowModality(Qt::WindowModal);
    if (m_shown)
        question->show();
}

QString Session::newest_copy_of(const QString& path) const {
    const QByteArray uid = m_memory.uid_at(path);
    if (uid.isEmpty())
        return {};
    // Not the one with the highest number: that may hold what was left behind when an older copy was put back.
    const auto copy = work::newest_copy(m_copy_folder, QString::fromLatin1(uid.toHex().left(8)), path);
    return copy ? copy->path : QString();
}

void Session::say_not_open(const NotOpen& why, const QString& path) {
    if (!why.why) {
        say_held(why.lock, path);
        return;
    }
    using book::NotOpened;
    const bool is_spoilt = *why.why == NotOpened::damaged || *why.why == NotOpened::changed_structure || *why.why == NotOpened::empty_file ||
                           *why.why == NotOpened::not_there;
    const bool may_pass = *why.why == NotOpened::busy || *why.why == NotOpened::unreadable || *why.why == NotOpened::not_copied ||
                          *why.why == NotOpened::not_brought_up || *why.why == NotOpened::broken_off;
    ui::OpeningNews news{refused_title(*why.why), {words_for(*why.why, path)}, {}, {}};
    if (is_spoilt)
        news.ways = ways_from_damage(path, *why.why == NotOpened::damaged || *why.why == NotOpened::changed_structure, *why.why == NotOpened::damaged);
    if (may_pass)
        //: A button
        news.ways.push_back({tr("Try again"), QStringLiteral("try_again"), [this, path] { visit(path); }});
    //: A button
    news.ways.push_back({tr("Choose another workbook..."), QStringLiteral("choose_other"), [this] { ask_for_workbook(); }, true});
    ask(news);
}

void Session::say_held(const NotLocked& lock, const QString& path) {
    const auto& holder = lock.holder;
    ui::OpeningNews news;
    //: Title of a window
    news.title = tr("This workbook is open elsewhere");
    news.text << held_words(lock, path, [this](const maths::Instant& at) { return moment(at); });
    news.file = QDir::toNativeSeparators(path);
    //: A button
    news.ways.push_back({tr("Only look at it"), QStringLiteral("look"), [this, path, holder] { visit(path, looking_at(LookingWhy::held, holder)); }});
    //: A button
    news.ways.push_back({tr("Try again"), QStringLiteral("try_again"), [this, path] { visit(path); }});
    if (!holder || is_alive(*holder, !is_on_network(path)) != Alive::yes) {
        const bool elsewhere = holder && holder->host != Holder::here(holder->since).host;
        //: A button
        const QString words = elsewhere ? tr("That computer is surely off: take the workbook over...")
                                        //: A button
                                        : tr("It is surely not open any more: take it over...");
        news.ways.push_back({words, QStringLiteral("take_over"), [this, holder, path] { confirm_take_over(holder, path); }});
    }
    //: A button
    news.ways.push_back({tr("Choose another workbook..."), QStringLiteral("choose_other"), [this] { ask_for_workbook(); }, true});
    ask(news);
}

void Session::confirm_take_over(const std::optional<Holder>& holder, const QString& path) {
    ui::OpeningNews news;
    //: Title of a window
    news.title = tr("Take the workbook over?");
    if (holder)
        //: %1 a computer's name, %2 a person's name on it
        news.text << tr("Take it over only if Soakbook surely does not run on %1 any more. If it does, %2 can make no more entries there, and "
                        "what is typed there and not entered yet may be lost.")
                         .arg(holder->host, holder->user);
    else
        //: Where nobody knows who has a workbook open
        news.text << tr("Take it over only if Soakbook surely runs nowhere with this workbook any more.");
    news.file = QDir::toNativeSeparators(path);
    //: A button: nothing is taken over
    news.ways.push_back({tr("Leave it as it is"), QStringLiteral("leave"), [this, path] { visit(path); }});
    //: A button
    news.ways.push_back({tr("It is not open any more: take it over"), QStringLiteral("confirm_take_over"), [this, path, holder] {
                             Wish wish;
                             wish.take_over = true;
                             wish.holder = holder;
                             visit(path, wish);
                         }});
    ask(news);
}

std::vector<ui::WayOn> Session::ways_from_damage(const QString& path, bool is_damaged, bool can_look) {
    std::vector<ui::WayOn> ways;
    if (const QString copy = newest_copy_of(path); !copy.isEmpty()) {
        //: A button
        ways.push_back({tr("Put the newest safe copy in its place..."), QStringLiteral("put_back"), [this, copy, path] { confirm_put_back(copy, path); }});
        //: A button
        ways.push_back({tr("Look at the newest safe copy"), QStringLiteral("newest_copy"), [this, copy] { visit(copy); }});
    }
    if (is_damaged)
        //: A button: of a damaged workbook
        ways.push_back({tr("Read what is left..."), QStringLiteral("read_left"), [this, path] { ui::open_salvage(path, *m_habits, front()); }, true});
    const bool is_shown = can_look && book::Workbook::open_for_looking(path, book::Workbook::Pages::as_they_are).has_value();
    if (is_shown)
        //: A button: of a damaged workbook
        ways.push_back({tr("Look at what can be read"), QStringLiteral("look"), [this, path] { visit(path, looking_at(LookingWhy::damaged)); }});
    return ways;
}

void Session::confirm_put_back(const QString& copy, const QString& file) {
    ui::OpeningNews news;
    //: Title of a window
    news.title = tr("Put the safe copy in the workbook's place?");
    //: In a window that asks whether to put a safe copy back
    news.text << tr("The copy is checked first. What lies there now is kept among the safe copies, so that nothing is lost.");
    //: In a window that asks whether to put a safe copy back; %1 a file, %2 another one
    news.file = tr("%1 in the place of %2").arg(QDir::toNativeSeparators(copy), QDir::toNativeSeparators(file));
    //: A button
    news.ways.push_back({tr("Put it back"), QStringLiteral("confirm_put_back"), [this, copy, file] { put_back(copy, file); }});
    //: A button: nothing is put back
    news.ways.push_back({tr("Leave it as it is"), QStringLiteral("leave"), [this, file] {
                             if (!m_frame)
                                 visit(file);
                         }});
    ask(news);
}

void Session::say_not_put_back(const QString& words, const QString& file) {
    if (!m_frame)
        visit(file);
    ui::OpeningNews news;
    //: Title of a window
    news.title = tr("The safe copy was not put back");
    news.text << words;
    if (m_frame) {
        //: A button that closes a window
        news.ways.push_back({tr("Go on"), QStringLiteral("go_on"), {}});
    } else {
        //: A button
        news.ways.push_back({tr("Try again"), QStringLiteral("try_again"), [this, file] { visit(file); }});
        //: A button
        news.ways.push_back({tr("Choose another workbook..."), QStringLiteral("choose_other"), [this] { ask_for_workbook(); }, true});
    }
    ask(news);
}

void Session::say_missing() {
    if (!m_check || !m_check->missing())
        return;
    const QString file = m_open.file;
    ui::OpeningNews news;
    //: Title of a window
    news.title = tr("Is this the workbook you mean?");
    news.text << missing_words(*m_check->missing(), [this](const maths::Instant& at) { return moment(at); });
    //: In a window that asks what a file is
    news.text << tr("No entry can be made until you say whether this is the right one. Nothing was changed.");
    news.file = QDir::toNativeSeparators(file);
    if (const QString copy = newest_copy_of(file); !copy.isEmpty()) {
        //: A button
        news.ways.push_back({tr("Compare it with the newest safe copy..."), QStringLiteral("compare"), [this, copy] {
                                 ui::open_comparison(*m_desk, copy, front());
                             }, true});
        //: A button
        news.ways.push_back({tr("Put the newest safe copy in its place..."), QStringLiteral("put_back"), [this, copy, file] { confirm_put_back(copy, file); }});
    }
    //: A button
    news.ways.push_back({tr("It is meant so: go on with this one"), QStringLiteral("go_on"), [this] {
                             if (m_check)
                                 m_check->go_on_with_this();
                         }});
    //: A button
    news.ways.push_back({tr("Only look at it"), QStringLiteral("look"), [this, file] { visit(file, looking_at(LookingWhy::wished)); }});
    //: A button
    news.ways.push_back({tr("Choose another workbook..."), QStringLiteral("choose_other"), [this] { ask_for_workbook(); }, true});
    ask(news);
}

void Session::say_damaged(const book::Verdict& verdict) {
    const QString file = m_open.file;
    visit(file, looking_at(LookingWhy::damaged));
    if (!m_open.looking)
        return;
    ui::OpeningNews news;
    news.title = refused_title(book::NotOpened::damaged);
    //: In a window about a damaged workbook; %1 what is wrong, a sentence
    news.text << tr("It was looked through, and it is not as it was written. %1").arg(damage_words(verdict));
    //: In a window about a damaged workbook
    news.text << tr("Nothing in the file was changed. What can still be read of it is shown, only to be looked at.");
    news.file = QDir::toNativeSeparators(file);
    news.ways = ways_from_damage(file, true, false);
    //: A button: of a damaged workbook that is shown
    news.ways.push_back({tr("Go on looking"), QStringLiteral("go_on_looking"), {}});
    ask(news);
}

std::vector<ui::WayOn> Session::ways_from_looking() {
    const QString file = m_open.file;
    switch (*m_open.looking) {
    case LookingWhy::held:
    case LookingWhy::file_kept:
    case LookingWhy::folder_kept:
    case LookingWhy::medium_kept:
    case LookingWhy::wished:
        //: A button beside why a workbook is open only to be looked at
        return {{tr("Open it for entries"), QStringLiteral("open_for_entries"), [this, file] { QTimer::singleShot(0, this, [this, file] { visit(file); }); }}};
    case LookingWhy::damaged: {
        std::vector<ui::WayOn> ways;
        for (const ui::WayOn& way : ways_from_damage(file, true, false))
            ways.push_back({way.words, way.name, [this, go = way.go] { QTimer::singleShot(0, this, go); }});
        return ways;
    }
    case LookingWhy::safe_copy: {
        const auto places = m_memory.of(m_open.workbook->uid());
        if (places.empty())
            break;
        const QString place = places.front().place;
        const auto later = [this](auto what) { return [this, what] { QTimer::singleShot(0, this, what); }; };
        //: A button beside the news that a safe copy is shown
        return {{tr("Put it in the workbook's place..."), QStringLiteral("put_back"), later([this, file, place] { confirm_put_back(file, place); })},
                //: A button beside the news that a safe copy is shown
                {tr("Back to the workbook"), QStringLiteral("open_workbook"), later([this, place] { visit(place); })}};
    }
    case LookingWhy::newer:
        break;
    }
    return {};
}

void Session::refresh_banner() {
    if (!m_frame)
        return;
    if (m_open.looking) {
        QString words = looking_words(*m_open.looking, m_open.holder, [this](const maths::Instant& at) { return moment(at); });
        if (m_open.aside)
            //: Behind why a workbook is open only to be looked at
            words = tr("%1 An older Soakbook wrote it: you see a copy that was brought up to date.").arg(words);
        m_frame->set_banner(words, ways_from_looking());
        return;
    }
    if (!m_check) {
        m_frame->set_banner({});
        return;
    }
    switch (m_check->state()) {
    case FirstCheck::State::missing:
        m_frame->set_banner(missing_words(*m_check->missing(), [this](const maths::Instant& at) { return moment(at); }),
                            //: A button beside the news that entries are missing
                            {{tr("What now?"), QStringLiteral("what_now"), [this] { QTimer::singleShot(0, this, &Session::say_missing); }}});
        return;
    case FirstCheck::State::looking_through:
        //: Above the pages
        m_frame->set_banner(tr("This workbook was not looked through on this computer before. That is done now, on a copy; entries can be made as soon "
                               "as it is found sound. You can look at everything meanwhile."));
        return;
    case FirstCheck::State::free:
    case FirstCheck::State::damaged:
        break;
    }
    const QString& not_checked = m_check->not_checked();
    //: Above the pages; %1 why, a sentence
    m_frame->set_banner(not_checked.isEmpty() ? QString() : tr("This workbook could not be looked through, so it is not known whether it is sound. %1").arg(not_checked));
}

void Session::say_if_on_network() {
    if (m_example || m_open.looking || !is_on_network(m_open.file))
        return;
    const QString folder = QFileInfo(m_open.file).absolutePath();
    QStringList told = QSettings().value(network_key).toStringList();
    if (told.contains(folder))
        return;
    told << folder;
    QSettings().setValue(network_key, told);
    //: Said once when a workbook is opened
    m_frame->say(tr("This workbook lies in a network folder. It is safer on this computer itself: when the connection breaks off, entries "
                    "have to wait. Safe copies can go to the network instead; Set-up has a second place for them."));
}

void Session::ask_for_workbook() {
    //: Title of a window that asks for a file, and the kind of file.
    const QString path = QFileDialog::getOpenFileName(front(), tr("Open a workbook"), QFileInfo(last_workbook()).absolutePath(), tr("Workbooks (*.soakbook)"));
    if (!path.isEmpty())
        visit(path);
}

} // namespace soakbook::app
