// SPDX-License-Identifier: GPL-3.0-or-later
// What is open, and its window. What a person is asked on the way stands in session_questions.cpp.
#include "app/session.h"

#include "app/example.h"
#include "app/file_place.h"
#include "app/first_check.h"
#include "app/keeper.h"
#include "app/open_words.h"
#include "app/opening_words.h"
#include "app/second_start.h"
#include "core/book/restore.h"
#include "core/book/statement.h"
#include "core/work/setup.h"
#include "ui/parts/desk.h"
#include "ui/setup/setup_place.h"
#include "ui/setup/welcome.h"
#include "ui/shell/copy_state.h"
#include "ui/shell/find_answers.h"
#include "ui/shell/frame.h"
#include "ui/shell/opening_window.h"
#include "ui/shell/places.h"
#include "ui/shell/window_place.h"

#include <QApplication>
#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QSettings>
#include <QStandardPaths>

namespace soakbook::app {

namespace {

const QString last_key = QStringLiteral("last_workbook");
constexpr int seen_after_ms = 2000;
constexpr int lock_watch_ms = 20'000;
constexpr int banner_after_ms = 700;

QStringList names_of_people(const book::Workbook& workbook) {
    QStringList names;
    for (const work::PersonLine& person : work::people(workbook))
        if (person.active)
            names << person.name;
    return names;
}

/// What is remembered of workbooks lies beside their safe copies' folder.
QString memory_beside(const QString& copy_folder) { return QDir(QFileInfo(copy_folder).absolutePath()).filePath(QStringLiteral("verified")); }

QDateTime time_of(const maths::Instant& at) { return QDateTime::fromMSecsSinceEpoch(at.utc_ms, Qt::UTC); }

} // namespace

Session::Session(Clock clock, QString copy_folder, bool shown)
    : m_clock(std::move(clock)), m_copy_folder(std::move(copy_folder)), m_shown(shown), m_memory(memory_beside(m_copy_folder)),
      m_second_start(std::make_unique<SecondStart>()), m_habits(std::make_unique<ui::Habits>(m_clock)) {
    connect(m_second_start.get(), &SecondStart::asked, this, &Session::raise_window);
    m_seen.setSingleShot(true);
    m_seen.setInterval(seen_after_ms);
    connect(&m_seen, &QTimer::timeout, this, [this] {
        if (m_check)
            m_check->note_seen();
    });
    m_lock_watch.setInterval(lock_watch_ms);
    connect(&m_lock_watch, &QTimer::timeout, this, &Session::mind_lock);
    // A check that is over before anybody could read of it is not spoken of.
    m_banner_wait.setSingleShot(true);
    m_banner_wait.setInterval(banner_after_ms);
    connect(&m_banner_wait, &QTimer::timeout, this, &Session::refresh_banner);
}

Session::~Session() {
    delete m_question;
    close_workbook();
}

QString Session::usual_copy_folder() {
    return QDir(QStandardPaths::writableLocation(QStandardPaths::AppDataLocation)).filePath(QStringLiteral("safe copies"));
}

QString Session::last_workbook() { return QSettings().value(last_key).toString(); }

tl::expected<void, QString> Session::open(const QString& path) {
    if (m_open.workbook && is_same_file(m_open.file, path)) {
        show_frame();
        return {};
    }
    auto opened = open_book(path, m_copy_folder, time_of(m_clock()));
    if (!opened) {
        const NotOpen& why = opened.error();
        const QString file = QFileInfo(path).absoluteFilePath();
        return tl::unexpected(why.why ? words_for(*why.why, file) : held_words(why.lock, file, [this](const maths::Instant& at) { return moment(at); }));
    }
    take(std::move(*opened));
    return {};
}

void Session::visit(const QString& path, const Wish& wish) {
    const bool is_open = m_open.workbook && is_same_file(m_open.file, path);
    if (is_open && !m_open.looking && !wish.look) {
        show_frame();
        return;
    }
    if (!is_open && !wish.look && SecondStart::raise_first(path)) {
        if (m_frame)
            //: Said where another workbook was asked for
            m_frame->say(tr("That workbook is open in a window of its own, which was brought to the front."));
        return;
    }
    // Its header is read anew, and a file that is open must not be opened past SQLite: closing it drops SQLite's locks.
    if (is_open)
        close_workbook();
    auto opened = open_book(path, m_copy_folder, time_of(m_clock()), wish);
    if (opened)
        take(std::move(*opened));
    else
        say_not_open(opened.error(), QFileInfo(path).absoluteFilePath());
}

void Session::take(OpenBook open) {
    close_workbook();
    m_open = std::move(open);
    m_desk = std::make_unique<ui::Desk>(*m_open.workbook, m_clock);
    if (m_open.looking)
        m_desk->set_looking_why(looking_hint(*m_open.looking));
    // Somebody of another workbook, or of the example, makes no entries in this one.
    if (const QStringList names = names_of_people(*m_open.workbook); !names.contains(m_desk->who()))
        m_desk->set_who(names.size() == 1 || (m_example && !names.isEmpty()) ? names.first() : QString());
    // Of pictures no copy is kept, and nobody waits for a check.
    if (!m_example && m_shown)
        watch_over();
    try {
        show_frame();
    } catch (const book::StoreError&) {
        // Not even the first page can be shown.
        const QString file = m_open.file;
        close_workbook();
        say_not_open({book::NotOpened::damaged, {}}, file);
        return;
    }
    delete m_question;
    if (!m_example && m_open.looking != LookingWhy::safe_copy)
        QSettings().setValue(last_key, m_open.file);
    say_if_on_network();
    // After the window is there: the first page waits for no check.
    if (m_check)
        QTimer::singleShot(0, m_check.get(), &FirstCheck::begin);
}

void Session::watch_over() {
    m_keeper = std::make_unique<Keeper>(*m_open.workbook, m_copy_folder, m_clock);
    connect(m_keeper.get(), &Keeper::news, this, [this] {
        if (m_frame)
            m_frame->refresh_status();
    }, Qt::QueuedConnection);
    if (m_open.looking)
        return;
    m_check = std::make_unique<FirstCheck>(*m_open.workbook, *m_keeper, m_memory, m_open.file, m_clock);
    const auto later = Qt::QueuedConnection;
    connect(m_check.get(), &FirstCheck::changed, this, [this] {
        if (m_frame)
            m_frame->refresh_status();
        if (m_check->state() == FirstCheck::State::looking_through && !m_banner_wait.isActive())
            m_banner_wait.start();
        if (m_check->state() != FirstCheck::State::looking_through)
            refresh_banner();
    }, later);
    connect(m_check.get(), &FirstCheck::entries_missing, this, &Session::say_missing, later);
    connect(m_check.get(), &FirstCheck::found_damaged, this, &Session::say_damaged, later);
    connect(m_desk.get(), &ui::Desk::work_done, &m_seen, qOverload<>(&QTimer::start));
    m_second_start->listen(m_open.file);
    m_lock_watch.start();
}

// A person on another computer may have been sure that this one is off.
void Session::mind_lock() {
    if (!m_open.lock || m_open.lock->is_ours())
        return;
    if (const auto holder = Lock::holder_of(m_open.file)) {
        Wish look;
        look.look = true;
        look.why = LookingWhy::held;
        look.holder = holder;
        const QString file = m_open.file;
        visit(file, look);
        return;
    }
    if (auto lock = Lock::take(m_open.file, time_of(m_clock())))
        m_open.lock = std::move(*lock);
}

void Session::put_back(const QString& copy, const QString& file, const QString& why) {
    const QString place = QFileInfo(file).absoluteFilePath();
    const QString who = m_desk ? m_desk->who() : QString();
    // It may be the workbook that is open, or the copy.
    close_workbook();
    {
        const auto lock = Lock::take(place, time_of(m_clock()));
        if (!lock) {
            say_not_put_back(held_words(lock.error(), place, [this](const maths::Instant& at) { return moment(at); }), place);
            return;
        }
        QApplication::setOverrideCursor(Qt::WaitCursor);
        //: The reason that stands beside an entry of the history
        const book::Doing doing{m_clock(), who, why.isEmpty() ? tr("A safe copy was put back") : why, false};
        const auto restored = book::restore({place, copy, m_copy_folder}, doing);
        QApplication::restoreOverrideCursor();
        if (!restored) {
            say_not_put_back(not_restored_words(restored.error(), copy, place), place);
            return;
        }
        // It was checked whole on its way.
        const QString real = QFileInfo(place).canonicalFilePath();
        m_memory.note_seen(restored->uid, restored->head, real, m_clock());
        m_memory.note_verified({restored->uid, restored->head}, real, m_clock());
    }
    visit(place);
    if (m_frame)
        //: After a safe copy was put back; %1 the number of an entry
        m_frame->say(tr("The safe copy up to entry %1 is the workbook now. What lay here before is kept among the safe copies.").arg(m_open.workbook->last_seq()));
}

ui::StatusFacts Session::status() const {
    if (m_example)
        return ui::example_facts(*m_desk);
    ui::StatusFacts facts = ui::status_facts(*m_desk, m_copy_folder, m_keeper.get());
    if (m_open.looking == LookingWhy::safe_copy) {
        facts.safe_copy.clear();
        facts.copy_state.reset();
    }
    if (m_check && m_check->state() == FirstCheck::State::looking_through)
        //: In the status line while entries wait for a check; %1 how much of it is done, in percent
        facts.checking = tr("Being looked through before entries are made: %1 %").arg(m_check->percent());
    return facts;
}

void Session::show_frame() {
    if (!m_frame) {
        const QString folder = m_example ? QString() : m_copy_folder;
        const auto later = [this](auto what) { return [this, what] { QTimer::singleShot(0, this, what); }; };
        const ui::WorkbookDoors doors{folder, later([this] { ask_for_workbook(); }), later([this] { welcome(); }), later([this] {
                                          if (auto opened = open_example(); !opened)
                                              m_frame->say(opened.error());
                                      }), m_keeper.get(), [this](const QString& copy, const QString& why) {
                                          QTimer::singleShot(0, this, [this, copy, why, file = m_open.file] { put_back(copy, file, why); });
                                      }};
        m_frame = std::make_unique<ui::Frame>(*m_desk, ui::make_places(*m_desk, doors));
        m_frame->set_find(ui::find_at(*m_desk));
        m_frame->set_status([this] { return status(); });
        m_frame->set_people([this] { return names_of_people(*m_open.workbook); });
        m_frame->setWindowTitle(QFileInfo(m_open.file).completeBaseName() + QStringLiteral(" - Soakbook"));
        m_frame->setObjectName(QStringLiteral("frame"));
        if (m_shown)
            m_frame->restore_place();
        m_frame->refresh();
        refresh_banner();
    }
    if (m_welcome) {
        m_welcome->hide();
        m_welcome.release()->deleteLater();
    }
    if (m_shown)
        raise_window();
}

QWidget* Session::window() const {
    return m_frame ? static_cast<QWidget*>(m_frame.get()) : m_welcome.get();
}

void Session::raise_window() {
    QWidget* front = window();
    if (!front)
        return;
    if (front->isMinimized())
        front->showNormal();
    front->show();
    front->raise();
    front->activateWindow();
    if (m_question)
        m_question->raise();
}

void Session::say_unread() {
    if (m_frame)
        //: Under the head of a page, some of whose content is missing
        m_frame->say(tr("Something here could not be read: the file is damaged, or its disk failed. What is shown may lack entries. Nothing was changed."));
}

void Session::close_workbook() {
    if (!m_open.workbook)
        return;
    delete m_question;
    m_lock_watch.stop();
    m_seen.stop();
    m_banner_wait.stop();
    m_second_start->stop();
    m_frame.reset();
    if (m_check)
        m_check->note_seen();
    const bool is_damaged = m_check && m_check->state() == FirstCheck::State::damaged;
    m_check.reset();
    if (m_keeper && !is_damaged)
        m_keeper->finish();
    m_keeper.reset();
    m_desk.reset();
    m_open = {};
    m_example.reset();
}

tl::expected<void, QString> Session::open_example() {
    auto folder = std::make_unique<QTemporaryDir>();
    //: Name of the file that holds a copy of the worked example, without its ending.
    const QString path = folder->filePath(tr("example") + QStringLiteral(".soakbook"));
    if (auto written = write_example(path, m_clock()); !written)
        return tl::unexpected(written.error());
    close_workbook();
    m_example = std::move(folder);
    auto opened = open_book(path, {}, time_of(m_clock()));
    if (!opened) {
        m_example.reset();
        return tl::unexpected(words_for(opened.error().why.value_or(book::NotOpened::busy), path));
    }
    take(std::move(*opened));
    return {};
}

void Session::welcome(const QString& why) {
    if (!m_welcome) {
        //: Name of the file of a new workbook, without its ending.
        const QString name = tr("treatments") + QStringLiteral(".soakbook");
        const QString folder = QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
        m_welcome = std::make_unique<ui::Welcome>(*m_habits, QDir::toNativeSeparators(QDir(folder).filePath(name)),
                                                  [this](const ui::WelcomeAnswer& answer) { return make_workbook(answer); });
        m_welcome->setWindowTitle(QStringLiteral("Soakbook"));
        m_welcome->setObjectName(QStringLiteral("welcome"));
        m_welcome->resize(1100, 820);
        connect(m_welcome.get(), &ui::Welcome::made, this, [this] { visit(m_made); }, Qt::QueuedConnection);
        connect(m_welcome.get(), &ui::Welcome::example_wanted, this, [this] {
            if (auto opened = open_example(); !opened)
                m_welcome->say(opened.error());
        }, Qt::QueuedConnection);
        connect(m_welcome.get(), &ui::Welcome::other_wanted, this, &Session::ask_for_workbook, Qt::QueuedConnection);
    }
    if (!why.isEmpty())
        m_welcome->say(why);
    if (m_shown) {
        m_welcome->show();
        m_welcome->activateWindow();
    }
}

std::optional<work::Refusal> Session::make_workbook(const ui::WelcomeAnswer& answer) {
    QString path = answer.path.trimmed();
    if (path.isEmpty())
        return work::Refusal{work::Why::missing, QStringLiteral("path"), {}, false};
    if (!path.endsWith(QStringLiteral(".soakbook")))
        path += QStringLiteral(".soakbook");
    path = QFileInfo(QDir::fromNativeSeparators(path)).absoluteFilePath();
    QDir().mkpath(QFileInfo(path).absolutePath());
    const book::Doing doing{m_clock(), answer.set_up.person, {}, false};
    auto made = book::Workbook::create(path, doing);
    if (!made) {
        QTimer::singleShot(0, this, [this, words = words_for(made.error(), path)] {
            if (m_welcome)
                m_welcome->refuse_path(words);
        });
        return work::Refusal{made.error() == book::NotOpened::exists_already ? work::Why::name_taken : work::Why::read_only, QStringLiteral("path"), {path}, false};
    }
    if (auto set_up = work::first_set_up(**made, answer.set_up, doing); !set_up) {
        made->reset();
        QFile::remove(path);
        return set_up.error();
    }
    // Written a moment ago by this program alone.
    m_memory.note_verified({(*made)->uid(), book::newest_seal_of(**made)}, QFileInfo(path).canonicalFilePath(), m_clock());
    made->reset();
    m_made = path;
    return std::nullopt;
}

} // namespace soakbook::app
