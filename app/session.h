// SPDX-License-Identifier: GPL-3.0-or-later
// One run of the program: the welcome or an open workbook, its window, and whoever keeps it safe.
#pragma once

#include "app/clock.h"
#include "app/opening.h"
#include "core/book/verified.h"

#include <QObject>
#include <QPointer>
#include <QString>
#include <QTemporaryDir>
#include <QTimer>

#include <memory>

#include <tl/expected.hpp>

namespace soakbook::ui {
class Desk;
class Frame;
class Habits;
class OpeningWindow;
class Welcome;
struct OpeningNews;
struct StatusFacts;
struct WayOn;
struct WelcomeAnswer;
} // namespace soakbook::ui
namespace soakbook::work {
struct Refusal;
}

namespace soakbook::app {

class FirstCheck;
class Keeper;
class SecondStart;

class Session : public QObject {
    Q_OBJECT

public:
    /// `copy_folder` is where safe copies go; `shown` is off for pictures, when no window comes up by itself.
    Session(Clock clock, QString copy_folder, bool shown = true);
    ~Session() override;

    /// Opens a workbook in place of what is open. Gives back one sentence when it cannot.
    tl::expected<void, QString> open(const QString& path);
    /// The same for a person: where it cannot be opened, a window says why and has the ways on.
    void visit(const QString& path, const Wish& wish = {});
    /// Opens a fresh copy of the worked example.
    tl::expected<void, QString> open_example();
    /// Puts a safe copy in the place of the workbook at `file`, which is closed before, and opens it. What lies there now is
    /// kept among the safe copies. Where it cannot be done, a window says why.
    void put_back(const QString& copy, const QString& file, const QString& why = {});
    /// The same for the workbook that is open.
    void restore(const QString& copy) { put_back(copy, m_open.file); }
    /// Shows the welcome; `why` says why a workbook that was asked for is not open.
    void welcome(const QString& why = {});
    /// Says that something of what is shown could not be read.
    void say_unread();
    /// The folder for safe copies of this user.
    static QString usual_copy_folder();
    /// The workbook opened last on this computer; empty when there is none.
    static QString last_workbook();

    ui::Frame* frame() const { return m_frame.get(); }
    ui::Welcome* welcome_page() const { return m_welcome.get(); }
    ui::Desk* desk() const { return m_desk.get(); }
    FirstCheck* first_check() const { return m_check.get(); }
    /// The window that waits for an answer, if one does.
    ui::OpeningWindow* question() const;

private:
    // What is open.
    void take(OpenBook open);
    void watch_over();
    void close_workbook();
    void mind_lock();
    ui::StatusFacts status() const;

    // The windows.
    QWidget* window() const;
    QWidget* front() const;
    void show_frame();
    void raise_window();
    void refresh_banner();
    void say_if_on_network();
    void ask_for_workbook();
    std::optional<work::Refusal> make_workbook(const ui::WelcomeAnswer& answer);

    // The questions; each is one window.
    void ask(const ui::OpeningNews& news);
    void say_not_open(const NotOpen& why, const QString& path);
    void say_held(const NotLocked& lock, const QString& path);
    void confirm_take_over(const std::optional<Holder>& holder, const QString& path);
    void say_missing();
    void say_not_put_back(const QString& words, const QString& file);
    void confirm_put_back(const QString& copy, const QString& file);
    void say_damaged(const book::Verdict& verdict);
    std::vector<ui::WayOn> ways_from_looking();
    std::vector<ui::WayOn> ways_from_damage(const QString& path, bool is_damaged, bool can_look);
    QString moment(const maths::Instant& at) const;
    /// The newest safe copy of whatever workbook stood at `path`; empty when there is none.
    QString newest_copy_of(const QString& path) const;

    Clock m_clock;
    QString m_copy_folder;
    bool m_shown;
    book::VerifiedBefore m_memory;
    std::unique_ptr<QTemporaryDir> m_example;
    OpenBook m_open;
    std::unique_ptr<ui::Desk> m_desk;
    std::unique_ptr<Keeper> m_keeper;
    std::unique_ptr<FirstCheck> m_check;
    std::unique_ptr<SecondStart> m_second_start;
    std::unique_ptr<ui::Frame> m_frame;
    std::unique_ptr<ui::Habits> m_habits;
    std::unique_ptr<ui::Welcome> m_welcome;
    QPointer<ui::OpeningWindow> m_question;
    QTimer m_seen;
    QTimer m_lock_watch;
    QTimer m_banner_wait;
    QString m_made;
};

} // namespace soakbook::app
