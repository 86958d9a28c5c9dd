// SPDX-License-Identifier: GPL-3.0-or-later
// A workbook is opened by a person: at once where it was found sound before, for looking alone where that is what is left,
// and with a window that says what stands against it otherwise.
#include "app/first_check.h"
#include "app/lock.h"
#include "app/session.h"
#include "core/work/papers.h"
#include "core/work/setup.h"
#include "core/work/watch.h"
#include "tests/book/shelf.h"
#include "ui/parts/cards.h"
#include "ui/parts/desk.h"
#include "ui/parts/form.h"
#include "ui/shell/frame.h"
#include "ui/shell/opening_window.h"

#include <QApplication>
#include <QDir>
#include <QElapsedTimer>
#include <QFile>
#include <QLabel>
#include <QPushButton>

namespace soakbook::tests {

using app::FirstCheck;
using app::Session;

namespace {

maths::Instant some_afternoon() { return moment(60, 14); }

QByteArray bytes_of_file(const QString& path) {
    QFile in(path);
    return in.open(QIODevice::ReadOnly) ? in.readAll() : QByteArray();
}

void write_file(const QString& path, const QByteArray& bytes) {
    QFile out(path);
    ASSERT_TRUE(out.open(QIODevice::WriteOnly));
    ASSERT_EQ(out.write(bytes), bytes.size());
}

/// Lets the program go on until that is so; a minute at most.
template <class F> bool comes_true(F&& f) {
    QElapsedTimer timer;
    timer.start();
    while (!f() && timer.elapsed() < 60'000)
        QApplication::processEvents(QEventLoop::AllEvents | QEventLoop::WaitForMoreEvents, 20);
    return f();
}

struct Opened : ::testing::Test {
    Shelf shelf;
    QTemporaryDir own; ///< what this user keeps: safe copies, memory
    QString copies = own.filePath(QStringLiteral("safe copies"));
    QString file = shelf.path();
    std::unique_ptr<Session> session;

    void SetUp() override {
        shelf.fill();
        shelf.close();
        start();
    }
    void TearDown() override { session.reset(); }
    void start() {
        session.reset();
        session = std::make_unique<Session>(some_afternoon, copies);
    }
    void open_and_wait() {
        session->visit(file);
        ASSERT_TRUE(session->frame());
        ASSERT_TRUE(comes_true([this] { return session->first_check()->state() == FirstCheck::State::free; }));
    }
    book::Workbook& book() const { return session->desk()->workbook(); }
    /// One entry as a person makes it.
    std::optional<work::Why> enter(const QString& name) const {
        const auto made = work::save_person(book(), {{}, name, true}, session->desk()->doing());
        return made ? std::nullopt : std::optional<work::Why>(made.error().why);
    }
    QPushButton* button(const char* name) const {
        if (session->question())
            return session->question()->findChild<QPushButton*>(QLatin1String(name));
        return session->frame() ? session->frame()->findChild<QPushButton*>(QLatin1String(name)) : nullptr;
    }
    void press(const char* name) const {
        ASSERT_TRUE(button(name)) << name;
        button(name)->click();
        for (int i = 0; i < 5; ++i)
            QApplication::processEvents();
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    }
    QString asked() const {
        QStringList words;
        if (session->question())
            for (const QLabel* label : session->question()->findChildren<QLabel*>())
                words << label->text();
        return words.join(QLatin1Char('\n'));
    }
    QString banner() const {
        const auto* bar = session->frame() ? session->frame()->findChild<ui::NoticeBar*>(QStringLiteral("banner")) : nullptr;
        return bar && !bar->isHidden() ? bar->accessibleName() : QString();
    }
    QStringList beside() const { return QDir(QFileInfo(file).absolutePath()).entryList(QDir::Files | QDir::Hidden, QDir::Name); }
    int safe_copies() const { return static_cast<int>(QDir(copies).entryList({QStringLiteral("*.soakbook")}, QDir::Files).size()); }
    /// The workbook as it was, with that many entries more, closed.
    void enter_and_close(int entries) {
        start();
        open_and_wait();
        for (int i = 0; i < entries; ++i)
            ASSERT_FALSE(enter(QStringLiteral("helper %1 of %2").arg(i).arg(book().last_seq())));
        start();
    }
};

} // namespace

TEST_F(Opened, for_the_first_time_it_is_looked_through_on_a_copy_and_then_takes_entries) {
    session->visit(file);
    ASSERT_TRUE(session->frame());
    EXPECT_TRUE(session->frame()->isVisible());
    EXPECT_EQ(enter(QStringLiteral("Ida")), work::Why::being_checked);
    ASSERT_TRUE(comes_true([this] { return session->first_check()->state() == FirstCheck::State::free; }));
    EXPECT_EQ(safe_copies(), 1);
    EXPECT_FALSE(enter(QStringLiteral("Ida")));
    EXPECT_TRUE(QFile::exists(app::Lock::path_of(file)));
    start();
    EXPECT_EQ(beside(), QStringList{QFileInfo(file).fileName()});
}

TEST_F(Opened, again_it_takes_entries_without_a_copy) {
    enter_and_close(3);
    session->visit(file);
    std::vector<FirstCheck::State> states;
    QObject::connect(session->first_check(), &FirstCheck::changed, [&] { states.push_back(session->first_check()->state()); });
    ASSERT_TRUE(comes_true([&states] { return !states.empty(); }));
    EXPECT_EQ(states.front(), FirstCheck::State::free) << "what was verified before was verified again";
    EXPECT_FALSE(enter(QStringLiteral("Ida")));
}

TEST_F(Opened, what_was_spoilt_since_is_found_on_the_copy_and_the_rest_is_shown) {
    enter_and_close(3);
    const QString mark = QStringLiteral("helper 1 of ");
    QByteArray bytes = bytes_of_file(file);
    const qsizetype at = bytes.lastIndexOf(mark.toUtf8());
    ASSERT_GT(at, 0);
    bytes[at] = 'H';
    write_file(file, bytes);
    session->visit(file);
    ASSERT_TRUE(comes_true([this] { return session->question() != nullptr; }));
    EXPECT_TRUE(session->desk()->looking());
    EXPECT_EQ(enter(QStringLiteral("Ida")), work::Why::looking_only);
    EXPECT_TRUE(asked().contains(QStringLiteral("damaged"))) << asked().toStdString();
    EXPECT_TRUE(banner().contains(QStringLiteral("damaged"))) << banner().toStdString();
    EXPECT_TRUE(button("newest_copy"));
    start();
    EXPECT_EQ(bytes_of_file(file), bytes);
    EXPECT_EQ(beside(), QStringList{QFileInfo(file).fileName()});
}

TEST_F(Opened, an_older_copy_in_its_place_is_asked_about_with_the_number_of_entries_that_are_missing) {
    enter_and_close(1);
    const QByteArray older = bytes_of_file(file);
    enter_and_close(7);
    write_file(file, older);
    session->visit(file);
    ASSERT_TRUE(comes_true([this] { return session->question() != nullptr; }));
    ASSERT_EQ(session->first_check()->state(), FirstCheck::State::missing);
    ASSERT_TRUE(session->first_check()->missing());
    EXPECT_EQ(session->first_check()->missing()->entries, 7);
    EXPECT_TRUE(asked().contains(QStringLiteral("7 "))) << asked().toStdString();
    EXPECT_EQ(enter(QStringLiteral("Ida")), work::Why::being_checked);
    // Closed without an answer, it asks again.
    start();
    EXPECT_EQ(bytes_of_file(file), older);
    session->visit(file);
    ASSERT_TRUE(comes_true([this] { return session->question() != nullptr; }));
    press("go_on");
    ASSERT_TRUE(comes_true([this] { return session->first_check()->state() == FirstCheck::State::free; }));
    EXPECT_FALSE(enter(QStringLiteral("Ida")));
    start();
    open_and_wait();
    EXPECT_FALSE(session->question());
}

TEST_F(Opened, two_copies_that_were_used_apart_are_told) {
    enter_and_close(1);
    const QByteArray before = bytes_of_file(file);
    enter_and_close(2);
    const QByteArray here = bytes_of_file(file);
    write_file(file, before);
    {
        auto elsewhere = book::Workbook::open(file);
        ASSERT_TRUE(elsewhere.has_value());
        for (int i = 0; i < 4; ++i)
            ASSERT_TRUE(work::save_person(**elsewhere, {{}, QStringLiteral("somebody %1").arg(i), true}, on_day(61)));
    }
    session->visit(file);
    ASSERT_TRUE(comes_true([this] { return session->question() != nullptr; }));
    EXPECT_EQ(session->first_check()->state(), FirstCheck::State::missing);
    EXPECT_EQ(session->first_check()->missing()->entries, 0);
    EXPECT_TRUE(asked().contains(QStringLiteral("two copies"))) << asked().toStdString();
}

TEST_F(Opened, a_copy_in_another_place_that_lacks_entries_is_told_too) {
    enter_and_close(1);
    const QString stick = shelf.folder() + QStringLiteral("/stick.soakbook");
    ASSERT_TRUE(QFile::copy(file, stick));
    enter_and_close(2);
    session->visit(stick);
    ASSERT_TRUE(comes_true([this] { return session->question() != nullptr; }));
    EXPECT_EQ(session->first_check()->missing()->place, QFileInfo(file).canonicalFilePath());
}

TEST_F(Opened, by_somebody_on_another_computer_it_can_be_looked_at) {
    const QByteArray before = bytes_of_file(file);
    QByteArray lock;
    {
        const auto taken = app::Lock::take(file, QDateTime::currentDateTimeUtc());
        ASSERT_TRUE(taken.has_value());
        lock = bytes_of_file(app::Lock::path_of(file));
    }
    QList<QByteArray> lines = lock.split('\n');
    lines[1] = "shed-computer";
    lines[2] = "ida";
    lock = lines.join('\n');
    write_file(app::Lock::path_of(file), lock);
    session->visit(file);
    ASSERT_TRUE(session->question());
    EXPECT_FALSE(session->frame());
    EXPECT_TRUE(asked().contains(QStringLiteral("shed-computer")) && asked().contains(QStringLiteral("ida"))) << asked().toStdString();
    press("look");
    ASSERT_TRUE(session->frame());
    EXPECT_FALSE(session->question());
    EXPECT_TRUE(session->desk()->looking());
    EXPECT_TRUE(banner().contains(QStringLiteral("shed-computer"))) << banner().toStdString();
    EXPECT_EQ(enter(QStringLiteral("Ida")), work::Why::looking_only);
    ui::FormFrame form(*session->desk(), QStringLiteral("A form"));
    EXPECT_FALSE(form.primary()->isEnabled());
    EXPECT_FALSE(form.primary()->toolTip().isEmpty());
    form.set_commit([](const work::Confirmed&) { return work::Refusal{work::Why::looking_only, {}, {}, false}; });
    form.commit();
    EXPECT_FALSE(form.primary()->isEnabled()) << "what was tried does not turn it on";
    form.start_again();
    EXPECT_FALSE(form.primary()->isEnabled()) << "a form that is filled anew stays off";
    const qint64 entries = book().last_seq();
    EXPECT_TRUE(work::sheet_printed(book(), QStringLiteral("register"), {}, {}, {}, session->desk()->doing()));
    EXPECT_EQ(book().last_seq(), entries);
    EXPECT_EQ(bytes_of_file(file), before);
    EXPECT_EQ(bytes_of_file(app::Lock::path_of(file)), lock);
    EXPECT_EQ(beside().size(), 2);
    // It was closed there in the meantime.
    QFile::remove(app::Lock::path_of(file));
    press("open_for_entries");
    EXPECT_FALSE(session->desk()->looking());
    EXPECT_TRUE(banner().isEmpty() || session->first_check()->state() == FirstCheck::State::looking_through) << banner().toStdString();
}

TEST_F(Opened, it_is_taken_over_after_being_asked_twice) {
    QByteArray lock;
    {
        const auto taken = app::Lock::take(file, QDateTime::currentDateTimeUtc());
        lock = bytes_of_file(app::Lock::path_of(file));
    }
    write_file(app::Lock::path_of(file), lock.replace(lock.indexOf('\n') + 1, lock.indexOf('\n', lock.indexOf('\n') + 1) - lock.indexOf('\n') - 1, "shed-computer"));
    session->visit(file);
    press("take_over");
    ASSERT_TRUE(session->question());
    EXPECT_FALSE(session->frame());
    press("leave");
    ASSERT_TRUE(button("take_over"));
    press("take_over");
    press("confirm_take_over");
    ASSERT_TRUE(session->frame());
    EXPECT_FALSE(session->desk()->looking());
    EXPECT_EQ(app::Lock::holder_of(file)->process, QCoreApplication::applicationPid());
}

TEST_F(Opened, a_damaged_one_is_named_and_the_newest_safe_copy_is_shown_as_what_it_is) {
    enter_and_close(2);
    const std::string root = Raw(file).cell("SELECT rootpage FROM sqlite_schema WHERE name = 'placement'");
    QByteArray bytes = bytes_of_file(file);
    bytes.replace((std::stoll(root) - 1) * 4096, 4096, QByteArray(4096, 'x'));
    write_file(file, bytes);
    session->visit(file);
    ASSERT_TRUE(session->question());
    EXPECT_FALSE(session->frame());
    EXPECT_TRUE(button("look"));
    EXPECT_TRUE(button("read_left"));
    press("newest_copy");
    ASSERT_TRUE(session->frame());
    EXPECT_TRUE(session->desk()->looking());
    EXPECT_TRUE(banner().contains(QStringLiteral("safe copy"))) << banner().toStdString();
    EXPECT_EQ(bytes_of_file(file), bytes);
    EXPECT_EQ(beside(), QStringList{QFileInfo(file).fileName()});
}

TEST_F(Opened, the_newest_safe_copy_is_put_in_the_place_of_a_damaged_one) {
    enter_and_close(2);
    QByteArray bytes = bytes_of_file(file);
    bytes.chop(4096);
    write_file(file, bytes);
    session->visit(file);
    ASSERT_TRUE(session->question());
    EXPECT_FALSE(button("look")) << "of a file that was cut SQLite reads nothing";
    press("put_back");
    press("confirm_put_back");
    ASSERT_TRUE(session->frame());
    EXPECT_FALSE(session->desk()->looking());
    ASSERT_TRUE(comes_true([this] { return session->first_check()->state() == FirstCheck::State::free; }));
    EXPECT_FALSE(enter(QStringLiteral("Ida")));
    start();
    EXPECT_NE(records_of(file).find("helper 1"), std::string::npos);
    EXPECT_EQ(beside(), QStringList{QFileInfo(file).fileName()});
}

TEST_F(Opened, what_is_not_there_or_no_workbook_has_a_window_of_its_own) {
    session->visit(shelf.folder() + QStringLiteral("/none.soakbook"));
    ASSERT_TRUE(session->question());
    const QString none = asked();
    const QString page = shelf.folder() + QStringLiteral("/page.soakbook");
    write_file(page, QByteArray("<html>") + QByteArray(500, ' '));
    session->visit(page);
    ASSERT_TRUE(session->question());
    EXPECT_NE(asked(), none);
    EXPECT_TRUE(button("choose_other"));
    EXPECT_FALSE(session->frame());
    // Put away, it leaves the welcome.
    session->question()->close();
    EXPECT_TRUE(session->welcome_page());
}

TEST_F(Opened, the_worked_example_waits_for_nothing) {
    ASSERT_TRUE(session->open_example().has_value());
    EXPECT_FALSE(session->first_check());
    EXPECT_FALSE(enter(QStringLiteral("Ida")));
    EXPECT_TRUE(banner().isEmpty());
}

TEST_F(Opened, a_place_for_safe_copies_that_takes_none_keeps_nobody_from_their_work) {
    write_file(copies, "in the way");
    session->visit(file);
    ASSERT_TRUE(comes_true([this] { return session->first_check()->state() == FirstCheck::State::free; }));
    EXPECT_FALSE(enter(QStringLiteral("Ida")));
    EXPECT_TRUE(comes_true([this] { return banner().contains(QStringLiteral("not known whether it is sound")); })) << banner().toStdString();
}

} // namespace soakbook::tests
