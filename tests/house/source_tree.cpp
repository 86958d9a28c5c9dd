// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/house/source_tree.h"

#include <filesystem>
#include <fstream>
#include <regex>
#include <set>
#include <sstream>

namespace soakbook::house {
namespace {

namespace fs = std::filesystem;

bool ends_with_one_of(const std::string& path, std::initializer_list<const char*> endings) {
    return std::any_of(endings.begin(), endings.end(), [&path](const char* ending) { return path.ends_with(ending); });
}

bool is_picture_or_such(const std::string& path) {
    return ends_with_one_of(path, {".png", ".jpg", ".pdf", ".ico", ".ttf", ".otf", ".gz", ".qm"});
}

std::string content_of(const fs::path& path) {
    std::ifstream in(path, std::ios::binary);
    std::ostringstream content;
    content << in.rdbuf();
    return content.str();
}

std::vector<SourceFile> read_tree(const fs::path& root) {
    static const std::set<std::string> not_ours{".git", "build"};
    std::vector<SourceFile> files;
    for (auto entry = fs::recursive_directory_iterator(root); entry != fs::recursive_directory_iterator(); ++entry) {
        const std::string path = fs::relative(entry->path(), root).generic_string();
        if (entry->is_directory() && not_ours.contains(path)) {
            entry.disable_recursion_pending();
        } else if (entry->is_regular_file() && !entry->is_symlink() && !is_picture_or_such(path)) {
            files.emplace_back(path, content_of(entry->path()));
        }
    }
    std::sort(files.begin(), files.end(), [](const SourceFile& a, const SourceFile& b) { return a.path < b.path; });
    return files;
}

} // namespace

SourceFile::SourceFile(std::string path_from_root, std::string whole_text)
    : path(std::move(path_from_root)), text(std::move(whole_text)) {
    if (is_cpp()) {
        lexed = lex(text);
    }
}

bool SourceFile::is_cpp() const {
    return ends_with_one_of(path, {".h", ".cpp"});
}

std::vector<Include> includes_of(const SourceFile& file) {
    static const std::regex include(R"re(^\s*#\s*include\s*([<"])([^>"]+)[>"])re");
    std::vector<Include> includes;
    if (!file.is_cpp()) {
        return includes;
    }
    const std::vector<std::string> lines = lines_of(file.text);
    for (std::size_t i = 0; i < lines.size(); ++i) {
        std::smatch match;
        const bool is_code =
            lines[i].find('#') != std::string::npos && file.lexed.code[i].find('#') != std::string::npos;
        if (is_code && std::regex_search(lines[i], match, include)) {
            includes.push_back({match[2], match[1] == "\"", i + 1});
        }
    }
    return includes;
}

const std::vector<SourceFile>& source_tree() {
    static const std::vector<SourceFile> tree = read_tree(SOAKBOOK_SOURCE_DIR);
    return tree;
}

testing::AssertionResult none(const std::vector<Breach>& breaches) {
    if (breaches.empty()) {
        return testing::AssertionSuccess();
    }
    testing::AssertionResult result = testing::AssertionFailure();
    result << breaches.size() << " breach(es):";
    for (const Breach& breach : breaches) {
        result << "\n  " << breach.path << ':' << breach.line << ": " << breach.what;
    }
    return result;
}

} // namespace soakbook::house
