// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/command_line.h"

#include "core/exchange/date_text.h"

#include <QCoreApplication>

namespace soakbook::app {

namespace {
class CommandLineWords {
    Q_DECLARE_TR_FUNCTIONS(CommandLine)
};
} // namespace

QString help_text() {
    //: Shown by "soakbook --help". The words that begin with -- and SOAKBOOK stay as they are; FILE, TO, FOLDER and DATE
    //: are translated alike in both columns.
    return CommandLineWords::tr("Soakbook, the workbook for home-made varroa strips\n"
                                "\n"
                                "soakbook                       opens the workbook used last, or the welcome\n"
                                "soakbook FILE                  opens that workbook\n"
                                "soakbook --example             opens a copy of the worked example\n"
                                "soakbook --write-example FILE  writes the worked example to a new file\n"
                                "soakbook --tour FOLDER [FILE]  saves pictures of every page to a folder, of the\n"
                                "                               example or of that workbook, and changes nothing\n"
                                "soakbook --verify FILE         checks that workbook, a line for each check; ends\n"
                                "                               with 0 sound, 1 damaged, 2 cannot be read\n"
                                "soakbook --safe-copy FILE TO   copies that workbook, checked, to the new file TO;\n"
                                "                               ends with 0 copied, 1 damaged, 2 not read or written\n"
                                "soakbook --on DATE             takes that day (2026-10-03) for today\n"
                                "soakbook --help                this text\n"
                                "soakbook --version             the version\n");
}

tl::expected<CommandLine, QString> read_command_line(const QStringList& arguments) {
    CommandLine line;
    QStringList files;
    const auto value_after = [&](qsizetype& i) -> QString {
        return i + 1 < arguments.size() ? arguments.at(++i) : QString();
    };
    const auto file_after = [&](qsizetype& i) -> QString {
        return i + 1 < arguments.size() && !arguments.at(i + 1).startsWith(QStringLiteral("--")) ? arguments.at(++i) : QString();
    };
    for (qsizetype i = 1; i < arguments.size(); ++i) {
        const QString& argument = arguments.at(i);
        if (argument == QStringLiteral("--help") || argument == QStringLiteral("-h")) {
            line.wish = CommandLine::Wish::help;
        } else if (argument == QStringLiteral("--version")) {
            line.wish = CommandLine::Wish::version;
        } else if (argument == QStringLiteral("--example")) {
            line.wish = CommandLine::Wish::example;
        } else if (argument == QStringLiteral("--write-example")) {
            line.wish = CommandLine::Wish::write_example;
            line.file = value_after(i);
            if (line.file.isEmpty())
                //: A command line sentence; --write-example stays as it is.
                return tl::unexpected(CommandLineWords::tr("--write-example needs the name of a new file."));
        } else if (argument == QStringLiteral("--tour")) {
            line.wish = CommandLine::Wish::tour;
            line.folder = value_after(i);
            if (line.folder.isEmpty())
                //: A command line sentence; --tour stays as it is.
                return tl::unexpected(CommandLineWords::tr("--tour needs the name of a folder for its pictures."));
        } else if (argument == QStringLiteral("--verify")) {
            line.wish = CommandLine::Wish::verify;
            line.file = file_after(i);
            if (line.file.isEmpty())
                //: A command line sentence; --verify stays as it is.
                return tl::unexpected(CommandLineWords::tr("--verify needs the name of a workbook to check."));
        } else if (argument == QStringLiteral("--safe-copy")) {
            line.wish = CommandLine::Wish::safe_copy;
            line.file = file_after(i);
            line.copy_to = file_after(i);
            if (line.copy_to.isEmpty())
                //: A command line sentence; --safe-copy stays as it is.
                return tl::unexpected(
                    CommandLineWords::tr("--safe-copy needs the name of a workbook and the name of a new file for its copy."));
        } else if (argument == QStringLiteral("--on")) {
            const auto day = exchange::read_day_iso(value_after(i));
            if (!day)
                //: A command line sentence; --on stays as it is.
                return tl::unexpected(CommandLineWords::tr("--on needs a day written like 2026-10-03."));
            line.on = *day;
        } else if (argument.startsWith(QLatin1Char('-')) && argument.size() > 1) {
            //: A command line sentence; %1 is what was typed, --help stays as it is.
            return tl::unexpected(
                CommandLineWords::tr("Soakbook does not know \"%1\"; --help lists what it knows.").arg(argument));
        } else {
            files << argument;
        }
    }
    const bool takes_file = line.wish == CommandLine::Wish::open || line.wish == CommandLine::Wish::tour;
    if (files.size() > (takes_file ? 1 : 0))
        //: A command line sentence; %1 is the file name that is too much.
        return tl::unexpected(
            CommandLineWords::tr("One workbook at a time: \"%1\" is one too many.").arg(files.last()));
    if (takes_file && !files.isEmpty())
        line.file = files.first();
    return line;
}

} // namespace soakbook::app
