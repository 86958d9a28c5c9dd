// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/application.h"
#include "app/command_line.h"
#include "app/example.h"
#include "app/program.h"
#include "app/scripts.h"
#include "app/second_start.h"
#include "app/session.h"
#include "app/tour.h"

#include <QApplication>
#include <QSettings>
#include <QTemporaryDir>
#include <QTextStream>

namespace {

int fail(const QString& sentence) {
    QTextStream(stderr) << sentence << '\n';
    return 1;
}

int run(soakbook::app::Application& application, const soakbook::app::CommandLine& line) {
    using Wish = soakbook::app::CommandLine::Wish;
    const soakbook::app::Clock clock = soakbook::app::make_clock(line.on);
    soakbook::app::dress(application);
    if (line.wish == Wish::write_example) {
        const auto written = soakbook::app::write_example(line.file, clock());
        return written ? 0 : fail(written.error());
    }
    if (line.wish == Wish::tour) {
        const auto seen = soakbook::app::tour(line.folder, line.file, clock);
        if (!seen)
            return fail(seen.error());
        QTextStream(stdout) << *seen << '\n';
        return 0;
    }
    soakbook::app::Session session(clock, soakbook::app::Session::usual_copy_folder());
    application.set_unread([&session](const soakbook::book::StoreError&) { session.say_unread(); });
    if (line.wish == Wish::example) {
        if (const auto opened = session.open_example(); !opened)
            return fail(opened.error());
    } else {
        const QString file = line.file.isEmpty() ? soakbook::app::Session::last_workbook() : line.file;
        // Another start has it open: that one comes to the front, and this one has done its work.
        if (!file.isEmpty() && soakbook::app::SecondStart::raise_first(file))
            return 0;
        if (file.isEmpty())
            session.welcome();
        else
            session.visit(file);
    }
    return QApplication::exec();
}

} // namespace

int main(int argc, char** argv) {
    QStringList arguments;
    for (int i = 0; i < argc; ++i)
        arguments << QString::fromLocal8Bit(argv[i]);
    soakbook::app::name_program();
    const auto line = soakbook::app::read_command_line(arguments);
    if (!line) {
        QTextStream(stderr) << line.error() << '\n';
        return 2;
    }
    using Wish = soakbook::app::CommandLine::Wish;
    if (line->wish == Wish::help || line->wish == Wish::version) {
        QTextStream(stdout) << (line->wish == Wish::help ? soakbook::app::help_text() : QStringLiteral("Soakbook " SOAKBOOK_VERSION "\n"));
        return 0;
    }
    if (line->wish == Wish::verify || line->wish == Wish::safe_copy) {
        QCoreApplication application(argc, argv);
        soakbook::app::load_words(application);
        return line->wish == Wish::verify ? soakbook::app::verify_file(line->file) : soakbook::app::copy_file(line->file, line->copy_to);
    }
    const bool unseen = line->wish == Wish::tour || line->wish == Wish::write_example;
    if (unseen || soakbook::app::no_display()) {
        if (!unseen)
            return fail(soakbook::app::no_display_words());
        qputenv("QT_QPA_PLATFORM", "offscreen");
    }
    // A tour is of the program, not of this user: it begins without settings and leaves none behind.
    QTemporaryDir settings;
    if (line->wish == Wish::tour) {
        QSettings::setDefaultFormat(QSettings::IniFormat);
        QSettings::setPath(QSettings::IniFormat, QSettings::UserScope, settings.path());
    }
    soakbook::app::Application application(argc, argv);
    try {
        return run(application, *line);
    } catch (const std::exception& broken) {
        return fail(QString::fromUtf8(broken.what()));
    }
}
