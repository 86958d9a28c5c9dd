// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/clock.h"
#include "app/command_line.h"
#include "app/example.h"

#include <QCoreApplication>
#include <QTextStream>

int main(int argc, char** argv) {
    QCoreApplication app(argc, argv);
    const auto line = soakbook::app::read_command_line(app.arguments());
    QTextStream out(stdout), err(stderr);
    if (!line) { err << line.error() << '\n'; return 2; }
    if (line->wish == soakbook::app::CommandLine::Wish::write_example) {
        const auto w = soakbook::app::write_example(line->file, soakbook::app::make_clock(line->on)());
        if (!w) { err << w.error() << '\n'; return 1; }
        return 0;
    }
    out << soakbook::app::help_text();
    return 0;
}
