// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session.h"

#include "app/example.h"
#include "app/open_words.h"
#include "core/book/workbook.h"
#include "core/work/safe_copies.h"
#include "core/work/setup.h"
#include "ui/parts/desk.h"
#include "ui/setup/setup_place.h"
#include "ui/setup/welcome.h"
#include "ui/shell/copy_state.h"
#include "ui/shell/find_answers.h"
#include "ui/shell/frame.h"
#include "ui/shell/places.h"
#include "ui/shell/window_place.h"

#include <QApplication>
#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QLockFile>
#include <QSettings>
#include <QStandardPaths>
#include <QTimer>

namespace soakbook::app {

namespace {
const QString last_key = QStringLiteral("last_workbook");

QStringList names_of_people(const book::Workbook& workbook) {
    QStringList names;
    for (const work::PersonLine& person : work::people(workbook))
        if (person.active)
            names << person.name;
    return names;
}
} // namespace

Session::Session(Clock clock, QString copy_folder, bool shown) : m_clock(std::move(clock)), m_copy_folder(std::move(copy_folder)), m_shown(shown) {}

Session::~Session() { close_workbook(); }

QString Session::usual_copy_folder() {
    return QDir(QStandardPaths::writableLocation(QStandardPaths::AppDataLocation)).filePath(QStringLiteral("safe copies"));
}

QString Session::last_workbook() { return QSettings().value(last_key).toString(); }

tl::expected<std::unique_ptr<QLockFile>, QString> Session::lock(const QString& path) {
    auto lock = std::make_unique<QLockFile>(path + QStringLiteral(".lock"));
    lock->setStaleLockTime(0);
    if (lock->tryLock(0))
        return lock;
    if (lock->error() != QLockFile::LockFailedError)
        return lock; // the folder takes no lock file; opening itself says what is wrong
    qint64 process = 0;
    QString host;
    QString program;
    lock->getLockInfo(&process, &host, &program);
    //: %1 is a file, %2 a computer's name.
    return tl::unexpected(tr("%1 is open in another Soakbook window already, on the computer %2. Go on there, or close it there first.")
                              .arg(QDir::toNativeSeparators(path), host.isEmpty() ? QSysInfo::machineHostName() : host));
}

tl::expected<void, QString> Session::open(const QString& path) {
    const QString file = QFileInfo(path).absoluteFilePath();
    if (m_workbook && QFileInfo(m_workbook->path()) == QFileInfo(file)) {
        show_frame();
        return {};
    }
    std::unique_ptr<QLockFile> lock_file;
    if (QFileInfo(file).isFile()) {
        auto locked = lock(file);
        if (!locked)
            return tl::unexpected(locked.error());
        lock_file = std::move(*locked);
    }
    auto opened = book::Workbook::open(file, m_example ? QString() : m_copy_folder);
    if (!opened)
        return tl::unexpected(words_for(opened.error(), file));
    close_workbook();
    m_lock = std::move(lock_file);
    m_workbook = std::move(*opened);
    m_desk = std::make_unique<ui::Desk>(*m_workbook, m_clock);
    // Somebody of another workbook, or of the example, makes no entries in this one.
    if (const QStringList names = names_of_people(*m_workbook); !names.contains(m_desk->who()))
        m_desk->set_who(names.size() == 1 || (m_example && !names.isEmpty()) ? names.first() : QString());
    show_frame();
    if (!m_example)
        QSettings().setValue(last_key, file);
    return {};
}

void Session::show_frame() {
    if (!m_frame) {
        const QString folder = m_example ? QString() : m_copy_folder;
        const auto later = [this](auto what) { return [this, what] { QTimer::singleShot(0, this, what); }; };
        const ui::WorkbookDoors doors{folder, later([this] { ask_for_workbook(); }), later([this] { welcome(); }), later([this] {
                                          if (auto opened = open_example(); !opened)
                                              m_frame->say(opened.error());
                                      })};
        m_frame = std::make_unique<ui::Frame>(*m_desk, ui::make_places(*m_desk, doors));
        m_frame->set_find(ui::find_at(*m_desk));
        m_frame->set_status([this, folder] { return m_example ? ui::example_facts(*m_desk) : ui::status_facts(*m_desk, folder); });
        m_frame->set_people([this] { return names_of_people(*m_workbook); });
        m_frame->setWindowTitle(QFileInfo(m_workbook->path()).completeBaseName() + QStringLiteral(" - Soakbook"));
        m_frame->setObjectName(QStringLiteral("frame"));
        if (m_shown)
            m_frame->restore_place();
        m_frame->refresh();
    }
    if (m_welcome) {
        m_welcome->hide();
        m_welcome.release()->deleteLater();
    }
    if (m_shown) {
        m_frame->show();
        m_frame->raise();
        m_frame->activateWindow();
    }
}

void Session::close_workbook() {
    if (!m_workbook)
        return;
    m_frame.reset();
    m_desk.reset();
    if (!m_example && work::safe_copy_state(*m_workbook, m_copy_folder).entries_behind > 0)
        (void)work::make_safe_copy(*m_workbook, m_copy_folder);
    m_workbook.reset();
    m_lock.reset();
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
    auto opened = open(path);
    if (!opened)
        m_example.reset();
    return opened;
}

void Session::welcome(const QString& why) {
    if (!m_welcome) {
        m_habits = std::make_unique<ui::Habits>(m_clock);
        //: Name of the file of a new workbook, without its ending.
        const QString name = tr("treatments") + QStringLiteral(".soakbook");
        const QString folder = QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
        m_welcome = std::make_unique<ui::Welcome>(*m_habits, QDir::toNativeSeparators(QDir(folder).filePath(name)),
                                                  [this](const ui::WelcomeAnswer& answer) { return make_workbook(answer); });
        m_welcome->setWindowTitle(QStringLiteral("Soakbook"));
        m_welcome->setObjectName(QStringLiteral("welcome"));
        m_welcome->resize(1100, 820);
        connect(m_welcome.get(), &ui::Welcome::made, this, [this] {
            if (auto opened = open(m_made); !opened)
                m_welcome->say(opened.error());
        }, Qt::QueuedConnection);
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
    made->reset();
    m_made = path;
    return std::nullopt;
}

void Session::ask_for_workbook() {
    QWidget* parent = m_frame ? static_cast<QWidget*>(m_frame.get()) : m_welcome.get();
    //: Title of a window that asks for a file, and the kind of file.
    const QString path = QFileDialog::getOpenFileName(parent, tr("Open a workbook"), QFileInfo(last_workbook()).absolutePath(), tr("Workbooks (*.soakbook)"));
    if (path.isEmpty())
        return;
    if (auto opened = open(path); !opened) {
        if (m_welcome && !m_frame)
            m_welcome->say(opened.error());
        else if (m_frame)
            m_frame->say(opened.error());
    }
}

} // namespace soakbook::app
