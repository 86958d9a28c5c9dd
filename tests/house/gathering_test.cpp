// SPDX-License-Identifier: GPL-3.0-or-later
// The tool that gathers texts for translators understands every one: what it takes for another class's is never
// translated, and a comment that it drops reaches no translator.
#include "tests/house/source_tree.h"

#include <cstdio>
#include <filesystem>
#include <fstream>
#include <gtest/gtest.h>
#include <memory>
#include <unistd.h>

namespace soakbook::house {
namespace {

namespace fs = std::filesystem;

struct Gathered {
    std::vector<Breach> complaints;
    bool found_texts = false;
};

/// Runs the tool over folders under `root`; the file of texts it writes is thrown away.
Gathered gather(const fs::path& root, const std::string& folders) {
    const fs::path texts = fs::temp_directory_path() / ("soakbook_gathered_" + std::to_string(getpid()) + ".ts");
    const std::string command = "cd '" + root.string() + "' && " SOAKBOOK_LUPDATE " -locations none " + folders +
                                " -I . -ts '" + texts.string() + "' 2>&1";
    const std::unique_ptr<FILE, int (*)(FILE*)> pipe(popen(command.c_str(), "r"), &pclose);
    Gathered gathered;
    std::string said;
    for (int c = std::fgetc(pipe.get()); c != EOF; c = std::fgetc(pipe.get())) {
        said += static_cast<char>(c);
    }
    fs::remove(texts);
    for (const std::string& line : lines_of(said)) {
        if (line.find("source text(s)") != std::string::npos) {
            gathered.found_texts = line.find(" 0 source") == std::string::npos;
        } else if (line.find("lacks Q_OBJECT") != std::string::npos) {
            gathered.complaints.push_back(
                {line, 0,
                 "the text would stay English: tr() after a brace in a constructor's list of members, "
                 "or after an enum with a type, is taken for the namespace's"});
        } else if (line.find("Discarding unconsumed meta data") != std::string::npos) {
            gathered.complaints.push_back(
                {line, 0, "the comment is lost: a brace or semicolon stands between it and its text"});
        }
    }
    return gathered;
}

/// Complaints about these statements in a class that may call tr().
std::size_t gather_sample(const std::string& statements, const std::string& declares = "Q_OBJECT") {
    const fs::path folder = fs::temp_directory_path() / ("soakbook_sample_" + std::to_string(getpid()));
    fs::create_directories(folder / "ui");
    std::ofstream(folder / "ui" / "x.cpp") << "namespace a {\nclass B {\n"
                                           << declares << "\npublic: void g(); };\nvoid B::g() {\n"
                                           << statements << "\n}\n}\n";
    const Gathered gathered = gather(folder, "ui");
    fs::remove_all(folder);
    EXPECT_TRUE(gathered.found_texts);
    return gathered.complaints.size();
}

TEST(Gathering, a_text_of_no_class_is_seen) {
    EXPECT_EQ(gather_sample("f(tr(\"Seal\"));", ""), 1U);
    EXPECT_EQ(gather_sample("f(tr(\"Seal\"));"), 0U);
}

TEST(Gathering, a_comment_that_is_lost_is_seen) {
    EXPECT_EQ(gather_sample("//: a button\nf(1, [](int a) { return a; }, tr(\"Seal\"));"), 1U);
    EXPECT_EQ(gather_sample("f(1, [](int a) { return a; },\n//: a button\ntr(\"Seal\"));"), 0U);
}

TEST(Gathering, every_text_is_understood) {
    const Gathered gathered = gather(SOAKBOOK_SOURCE_DIR, "ui app");
    EXPECT_TRUE(gathered.found_texts) << "the tool found no text at all";
    EXPECT_TRUE(none(gathered.complaints));
}

} // namespace
} // namespace soakbook::house
