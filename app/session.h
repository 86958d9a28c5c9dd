// SPDX-License-Identifier: GPL-3.0-or-later
// One run of the program: the welcome or an open workbook, its window, and a safe copy when it is closed.
#pragma once

#include "app/clock.h"

#include <QObject>
#include <QString>
#include <QTemporaryDir>

#include <memory>

#include <tl/expected.hpp>

class QLockFile;

namespace soakbook::book {
class Workbook;
}
namespace soakbook::ui {
class Desk;
class Frame;
class Habits;
class Welcome;
struct WelcomeAnswer;
} // namespace soakbook::ui
namespace soakbook::work {
struct Refusal;
}

namespace soakbook::app {

class Session : public QObject {
    Q_OBJECT

public:
    /// `copy_folder` is where safe copies go; `shown` is off for pictures, when no window comes up by itself.
    Session(Clock clock, QString copy_folder, bool shown = true);
    ~Session() override;

    /// Opens a workbook in place of what is open. Gives back one sentence when it cannot.
    tl::expected<void, QString> open(const QString& path);
    /// Opens a fresh copy of the worked example.
    tl::expected<void, QString> open_example();
    /// Shows the welcome; `why` says why a workbook that was asked for is not open.
    void welcome(const QString& why = {});
    /// The folder for safe copies of this user.
    static QString usual_copy_folder();
    /// The workbook opened last on this computer; empty when there is none.
    static QString last_workbook();

    ui::Frame* frame() const { return m_frame.get(); }
    ui::Welcome* welcome_page() const { return m_welcome.get(); }
    ui::Desk* desk() const { return m_desk.get(); }

private:
    void show_frame();
    void close_workbook();
    void ask_for_workbook();
    std::optional<work::Refusal> make_workbook(const ui::WelcomeAnswer& answer);
    tl::expected<std::unique_ptr<QLockFile>, QString> lock(const QString& path);

    Clock m_clock;
    QString m_copy_folder;
    bool m_shown;
    std::unique_ptr<QTemporaryDir> m_example;
    std::unique_ptr<QLockFile> m_lock;
    std::unique_ptr<book::Workbook> m_workbook;
    std::unique_ptr<ui::Desk> m_desk;
    std::unique_ptr<ui::Frame> m_frame;
    std::unique_ptr<ui::Habits> m_habits;
    std::unique_ptr<ui::Welcome> m_welcome;
    QString m_made;
};

} // namespace soakbook::app
