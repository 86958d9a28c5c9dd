// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/house/habits.h"

#include <algorithm>
#include <map>
#include <regex>

namespace soakbook::house {
namespace {

constexpr std::size_t longest = 500;
constexpr std::size_t most_lines_before = 3;

bool carries_licence_line(const SourceFile& file) {
    const auto is = [&file](const char* ending) { return file.path.ends_with(ending); };
    return file.is_cpp() || is(".sql") || is("CMakeLists.txt") || is(".cmake") || is(".sh") ||
           file.text.starts_with("#!");
}

/// Lines of code that match, comments and literals left out.
std::vector<Breach> code_that_matches(const SourceFile& file, const std::regex& pattern, const std::string& why) {
    std::vector<Breach> breaches;
    for (std::size_t i = 0; i < file.lexed.code.size(); ++i) {
        std::smatch match;
        if (std::regex_search(file.lexed.code[i], match, pattern)) {
            breaches.push_back({file.path, i + 1, match.str() + ": " + why});
        }
    }
    return breaches;
}

std::vector<Breach> text_that_matches(const SourceFile& file, const std::regex& pattern, const std::string& why) {
    std::vector<Breach> breaches;
    const std::vector<std::string> lines = lines_of(file.text);
    for (std::size_t i = 0; i < lines.size(); ++i) {
        std::smatch match;
        if (lines[i].size() < 5000 && std::regex_search(lines[i], match, pattern)) {
            breaches.push_back({file.path, i + 1, match.str() + ": " + why});
        }
    }
    return breaches;
}

bool is_blank(const std::string& text) {
    return text.find_first_not_of(" \t\r") == std::string::npos;
}

bool tells_translator(const std::string& comment) {
    return comment.find("//:") != std::string::npos || comment.find("/*:") != std::string::npos;
}

/// Does a comment for the translator stand on this line (from 0), one of the three before, or over them in one piece?
bool translator_told(const Lexed& lexed, std::size_t line) {
    for (std::size_t back = 0; back <= most_lines_before && back <= line; ++back) {
        std::size_t at = line - back;
        if (tells_translator(lexed.comments[at])) {
            return true;
        }
        while (at > 0 && back > 0 && is_blank(lexed.code[at]) && !is_blank(lexed.comments[at])) {
            --at;
            if (tells_translator(lexed.comments[at])) {
                return true;
            }
        }
    }
    return false;
}

} // namespace

std::vector<Breach> missing_licence_line(const SourceFile& file) {
    if (!carries_licence_line(file)) {
        return {};
    }
    const std::vector<std::string> lines = lines_of(file.text);
    for (std::size_t i = 0; i < std::min<std::size_t>(2, lines.size()); ++i) {
        if (lines[i].find("SPDX-License-Identifier: GPL-3.0-or-later") != std::string::npos) {
            return {};
        }
    }
    return {{file.path, 1, "no licence line"}};
}

std::vector<Breach> too_long(const SourceFile& file) {
    const std::size_t lines = lines_of(file.text).size();
    if ((!file.is_cpp() && !file.path.ends_with(".sql")) || lines <= longest) {
        return {};
    }
    return {{file.path, 0, std::to_string(lines) + " lines"}};
}

std::vector<Breach> opened_past_sqlite(const SourceFile& file) {
    static const std::map<std::string, std::string> known{
        {"core/book/file_header.cpp", "a workbook's first hundred bytes, before SQLite opens it"},
        {"core/book/schema.cpp", "parts of the program"},
        {"core/book/verified.cpp", "what is remembered of workbooks"},
        {"core/book/page_file.h", "a damaged workbook that nobody has open"},
        {"core/book/page_file.cpp", "a damaged workbook that nobody has open"},
        {"core/book/other_copy.cpp", "a copy that nobody has open"},
        {"core/book/restore.cpp", "a copy that nobody has open"},
        {"core/book/restore_present.cpp", "a workbook that was closed"},
        {"core/book/safe_copy_files.cpp", "safe copies and their folders"},
        {"core/book/safe_copy_place.cpp", "safe copies on their way to another place"},
        {"core/work/salvage.cpp", "tables that are written"},
        {"app/lock.cpp", "the lock beside a workbook"},
        {"app/file_place.cpp", "the list of mounts"},
        {"app/example.cpp", "a part of the program"},
        {"app/tour.cpp", "a workbook that nobody has open"},
        {"app/second_trip.cpp", "safe copies on their way to another place"},
        {"ui/parts/icons.cpp", "parts of the program"},
        {"ui/parts/drafts.cpp", "drafts"},
        {"ui/print/pdf_file.cpp", "papers that are written"},
        {"ui/papers/register_csv.cpp", "tables that are written"},
    };
    if (!(file.is_under("core") || file.is_under("ui") || file.is_under("app")) || known.count(file.path) != 0) {
        return {};
    }
    static const std::regex opens("\\bQ(Save|Temporary)?File\\s+\\w+\\s*[({;]|\\bQ(Save|Temporary)?File\\s*[({]|\\bQFile::(copy|rename|link)\\b|"
                                  "\\b[io]?fstream\\b|\\bfopen\\b|\\bQLockFile\\b|(^|[^\\w>])::(open|creat|rename|truncate)\\s*\\(|\\bfilesystem::(copy|rename|resize)");
    return code_that_matches(file, opens, "no file is opened past SQLite here; name it among those that are known, and why it is no open workbook");
}

std::vector<Breach> clock_below_the_edge(const SourceFile& file) {
    const bool is_edge = file.path.starts_with("ui/parts/desk") || file.path == "ui/parts/habits.cpp" ||
                         file.is_under("ui/shell") || file.is_under("app");
    const bool judged = (file.is_under("core") || file.is_under("ui")) && !is_edge;
    if (!judged) {
        return {};
    }
    static const std::regex clock("QDateTime::current\\w+|QDate::currentDate|QTime::currentTime|system_clock::now|utc_"
                                  "clock::now|\\btime\\s*\\(\\s*(nullptr|NULL|0)\\s*\\)|"
                                  "\\bclock_gettime\\b|\\bgettimeofday\\b|\\blocaltime\\w*\\s*\\(");
    static const std::regex clock_in_sql("'now'|\\bCURRENT_(TIMESTAMP|DATE|TIME)\\b");
    std::vector<Breach> breaches = code_that_matches(file, clock, "the clock is read at the edge only");
    if (file.path.ends_with(".sql")) {
        return text_that_matches(file, clock_in_sql, "the clock is read at the edge only");
    }
    // The triggers ask the database for the hour of an edit made by another program: nobody hands that one in.
    const bool writes_triggers = file.path == "core/book/history_triggers.cpp";
    for (const Literal& literal : file.lexed.literals) {
        if (!writes_triggers && std::regex_search(literal.text, clock_in_sql)) {
            breaches.push_back({file.path, literal.line, "the clock is read at the edge only"});
        }
    }
    return breaches;
}

std::vector<Breach> chance_in_sums_or_work(const SourceFile& file) {
    static const std::regex chance("QRandomGenerator|random_device|createUuid|\\bs?rand\\s*\\(");
    const bool judged = file.is_under("core/maths") || file.is_under("core/work");
    return judged ? code_that_matches(file, chance, "chance comes in as an argument") : std::vector<Breach>{};
}

std::vector<Breach> untold_translator(const SourceFile& file) {
    const bool judged =
        file.is_under("ui") || file.is_under("app") || file.is_under("core") || file.is_under("translations");
    if (!judged || !file.is_cpp()) {
        return {};
    }
    static const std::regex shown("\\btr\\s*\\(\\s*(\"|$)|\\btranslate\\s*\\(\\s*(\"\",\\s*(\"\"|$)|$)|\\bQT_TR("
                                  "ANSLATE)?_NOOP\\w*\\s*\\(");
    std::vector<Breach> breaches;
    for (std::size_t i = 0; i < file.lexed.code.size(); ++i) {
        if (std::regex_search(file.lexed.code[i], shown) && !translator_told(file.lexed, i)) {
            breaches.push_back({file.path, i + 1, "no comment for the translator"});
        }
    }
    return breaches;
}

std::vector<Breach> unfit_words(const SourceFile& file) {
    // Put together from halves, so that this file does not hold the words itself.
    static const std::string unfinished = std::string("\\b(TO") + "DO|FIX" + "ME|X" + "XX)\\b";
    static const std::string machine =
        std::string("(^|[^\\w.}/])/wo") + "rk/|/tmp/ba" + "sh_jobs|/ho" + "me/\\w+|(^|[^\\w.}/])/ro" + "ot/";
    static const std::regex unfit(unfinished + "|" + machine);
    return text_that_matches(file, unfit, "no place in the tree");
}

} // namespace soakbook::house
