// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/house/floors.h"

#include <algorithm>
#include <regex>

namespace soakbook::house {
namespace {

/// What a folder may include of the house: whole folders, ending in '/', and single headers.
struct Floor {
    std::string folder;
    std::vector<std::string> may_include;
};

const std::vector<std::string>& below_ui() {
    static const std::vector<std::string> allowed{"core/work/",        "core/exchange/", "core/maths/quantities.h",
                                                  "core/book/doing.h", "core/book/id.h", "resources/"};
    return allowed;
}

std::vector<std::string> with_below_ui(std::vector<std::string> own) {
    own.insert(own.end(), below_ui().begin(), below_ui().end());
    return own;
}

const std::vector<Floor>& floors() {
    static const std::vector<Floor> all = [] {
        std::vector<Floor> list{
            {"core/maths", {"core/maths/"}},
            {"core/exchange", {"core/exchange/", "core/maths/"}},
            {"core/book", {"core/book/", "core/maths/"}},
            {"core/work", {"core/work/", "core/book/", "core/exchange/", "core/maths/"}},
            {"ui/parts", with_below_ui({"ui/parts/"})},
            // hazard.h for its names of statements and pictograms; that no sum is called is a rule of its own.
            {"ui/print", with_below_ui({"ui/print/", "ui/parts/", "core/maths/hazard.h"})},
            {"ui/charts", with_below_ui({"ui/charts/", "ui/print/", "ui/parts/"})},
            {"ui/papers", with_below_ui({"ui/papers/", "ui/print/", "ui/charts/", "ui/parts/"})},
            {"ui/safekeeping", with_below_ui({"ui/safekeeping/", "ui/papers/", "ui/print/", "ui/charts/", "ui/parts/"})},
            {"ui/shell", with_below_ui({"ui/", "translations/"})},
            {"tests/maths", {"tests/maths/", "core/maths/"}},
            {"tests/exchange", {"tests/exchange/", "core/exchange/", "core/maths/"}},
            {"tests/book", {"tests/book/", "core/"}},
            {"tests/work", {"tests/work/", "core/"}},
            {"tests/house", {"tests/house/"}},
            // The main job knows the program as its user does: through its front door.
            {"tests/ui/main_job", {"tests/ui/main_job/", "app/", "ui/shell/"}},
        };
        for (const char* place : {"due", "shed", "store", "yards", "register", "setup"}) {
            const std::string room = std::string("ui/") + place;
            list.push_back({room, with_below_ui({room + "/", "ui/parts/", "ui/charts/", "ui/print/", "ui/papers/", "ui/safekeeping/"})});
        }
        return list;
    }();
    return all;
}

bool allows(const Floor& floor, const std::string& header) {
    return std::any_of(floor.may_include.begin(), floor.may_include.end(), [&header](const std::string& allowed) {
        return allowed.ends_with('/') ? header.starts_with(allowed) : header == allowed;
    });
}

bool is_below_ui(const SourceFile& file) {
    return file.is_under("core");
}

/// Includes in angle brackets that match.
std::vector<Breach> foreign_includes(const SourceFile& file, const std::regex& pattern, const std::string& why) {
    std::vector<Breach> breaches;
    for (const Include& include : includes_of(file)) {
        if (!include.quoted && std::regex_search(include.target, pattern)) {
            breaches.push_back({file.path, include.line, "<" + include.target + "> " + why});
        }
    }
    return breaches;
}

bool reads_like_sql(const std::string& literal) {
    static const std::regex opening(
        R"re(^\s*(SELECT|INSERT|UPDATE|DELETE|REPLACE|WITH RECURSIVE|CREATE|DROP|ALTER|PRAGMA|BEGIN|COMMIT|ROLLBACK|SAVEPOINT|VACUUM)\b)re");
    static const std::regex anywhere(
        R"re(\bSELECT\s+\S+.*\sFROM\b|\bINSERT\s+(OR\s+\w+\s+)?INTO\b|\bUPDATE\s+\w+\s+SET\b|\bDELETE\s+FROM\b|\sWHERE\s|\sORDER BY\s|\sJOIN\s)re");
    static const std::regex in_small_letters(
        R"re(\bselect\s+[\w*.,() ]+\sfrom\s+\w+\s+(where|order by|join|group by)\b|\bselect \*|\binsert\s+into\s+\w+\s*\(|\bdelete\s+from\s+\w+\s+where\b|\bupdate\s+\w+\s+set\s+\w+\s*=|^\s*pragma\s+\w+)re");
    std::string one_line = literal;
    std::replace(one_line.begin(), one_line.end(), '\n', ' ');
    if (one_line.size() > 4000) {
        one_line.resize(4000);
    }
    return std::regex_search(one_line, opening) || std::regex_search(one_line, anywhere) ||
           std::regex_search(one_line, in_small_letters);
}

} // namespace

std::vector<Breach> includes_against_the_floors(const SourceFile& file) {
    std::vector<Breach> breaches;
    for (const Floor& floor : floors()) {
        if (!file.is_under(floor.folder)) {
            continue;
        }
        for (const Include& include : includes_of(file)) {
            // A test may name its neighbour shortly; what the build generates lies beside its source.
            const bool is_neighbour = file.is_under("tests") && include.target.find('/') == std::string::npos;
            const bool is_generated = include.target.ends_with(".moc");
            if (include.quoted && !is_neighbour && !is_generated && !allows(floor, include.target)) {
                breaches.push_back({file.path, include.line, floor.folder + " may not include " + include.target});
            }
        }
    }
    return breaches;
}

std::vector<Breach> machinery_in_maths(const SourceFile& file) {
    static const std::regex machinery("^(Q[A-Z]\\w*|Qt\\w*/.*|q[a-z]+\\.h|sqlite3.*)$");
    return file.is_under("core/maths") ? foreign_includes(file, machinery, "in the sums") : std::vector<Breach>{};
}

std::vector<Breach> widgets_below_ui(const SourceFile& file) {
    static const std::regex widgets("^Qt(Gui|Widgets|Charts|PrintSupport|Svg|SvgWidgets)(/.*)?$|"
                                    "^Q(Widget|Application|GuiApplication|Painter\\w*|Pen|Brush|Color|Font\\w*|Palette|"
                                    "Pixmap|Image\\w*|Icon\\w*|Cursor|Screen|"
                                    "Window|MainWindow|Dialog\\w*|\\w+Dialog|Label|\\w*Button\\w*|\\w*LineEdit|\\w*"
                                    "TextEdit|\\w*SpinBox|\\w*ComboBox|CheckBox|"
                                    "\\w*Layout\\w*|Frame|GroupBox|(List|Table|Tree|Graphics|Header|Column|"
                                    "AbstractItem|Chart)View|\\w+Delegate|\\w+Widget\\w*|Menu\\w*|"
                                    "Action\\w*|ToolTip|ToolBar|StatusBar|Style\\w*|"
                                    "Shortcut|KeySequence|KeyEvent|MouseEvent|Text(Document|Cursor|Layout|Option|"
                                    "Format)\\w*|Page(Size|Layout|dPaintDevice)|"
                                    "PdfWriter|Printer\\w*|Svg\\w+|Chart\\w*|\\w+Series|\\w+Axis|Clipboard|"
                                    "StandardItemModel|Validator|\\w+Validator|Transform|"
                                    "Polygon\\w*|Region)$");
    return is_below_ui(file) ? foreign_includes(file, widgets, "below ui") : std::vector<Breach>{};
}

std::vector<Breach> readers_in_the_main_job(const SourceFile& file) {
    static const std::regex readers("^(QSql\\w*|QtSql.*|sqlite3.*|QPdf\\w*|QtPdf.*|poppler.*|zbar.*|qrcodegen.*)$");
    return file.is_under("tests/ui/main_job") ? foreign_includes(file, readers, "where results are read by programs of others")
                                              : std::vector<Breach>{};
}

std::vector<Breach> sql_outside_the_book(const SourceFile& file) {
    const bool judged = file.is_under("ui") || file.is_under("app") || file.is_under("translations") ||
                        (file.is_under("core") && !file.is_under("core/book"));
    if (!judged || !file.is_cpp()) {
        return {};
    }
    static const std::regex database("^(QSql\\w*|QtSql.*|sqlite3.*)$");
    std::vector<Breach> breaches = foreign_includes(file, database, "outside core/book");
    for (const Literal& literal : file.lexed.literals) {
        if (reads_like_sql(literal.text)) {
            breaches.push_back({file.path, literal.line, "SQL outside core/book: " + literal.text.substr(0, 60)});
        }
    }
    return breaches;
}

std::vector<Breach> sums_called_from_ui(const SourceFile& file) {
    if (!file.is_under("ui") || !file.is_cpp()) {
        return {};
    }
    static const std::regex call("\\bmaths::([a-z_]+)\\s*\\(");
    static const std::vector<std::string> no_sums{
        "milligrams", "grams",        "kilograms",    "millilitres", "litres",    "celsius",    "percent",        "ppm",
        "in_grams",   "in_kilograms", "in_litres",    "in_celsius",  "as_number", "in_percent", "in_millilitres", "day",
        "days_after", "days_between", "hours_between"};
    std::vector<Breach> breaches;
    for (std::size_t i = 0; i < file.lexed.code.size(); ++i) {
        std::smatch match;
        if (std::regex_search(file.lexed.code[i], match, call) &&
            std::find(no_sums.begin(), no_sums.end(), match[1].str()) == no_sums.end()) {
            breaches.push_back({file.path, i + 1, "ui reckons with " + match[0].str()});
        }
    }
    return breaches;
}

std::vector<Breach> links_against_the_floors(const SourceFile& file) {
    struct Limit {
        const char* path;
        const char* never;
    };
    static const std::vector<Limit> limits{
        {"core/maths/CMakeLists.txt", "Qt6::|house_qt|SQLite|soakbook_(exchange|book|work|ui)"},
        {"core/exchange/CMakeLists.txt",
         "Qt6::(Gui|Widgets|Sql|Charts|PrintSupport|Svg)|SQLite|soakbook_(book|work|ui)"},
        {"core/book/CMakeLists.txt", "Qt6::(Gui|Widgets|Charts|PrintSupport|Svg)|soakbook_(work|ui)"},
        {"core/work/CMakeLists.txt", "Qt6::(Gui|Widgets|Sql|Charts|PrintSupport|Svg)|SQLite|soakbook_ui"},
    };
    std::vector<Breach> breaches;
    for (const Limit& limit : limits) {
        if (file.path != limit.path) {
            continue;
        }
        const std::regex never(limit.never);
        const std::vector<std::string> lines = lines_of(file.text);
        for (std::size_t i = 0; i < lines.size(); ++i) {
            std::smatch match;
            const std::string code = lines[i].substr(0, lines[i].find('#'));
            if (std::regex_search(code, match, never)) {
                breaches.push_back({file.path, i + 1, "links " + match.str() + " against the floors"});
            }
        }
    }
    return breaches;
}

} // namespace soakbook::house
