// SPDX-License-Identifier: GPL-3.0-or-later
// The tool that gathers texts for translators understands every one: what it complains of is never translated.
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
        } else if (line.starts_with("/") && line.find(": ") != std::string::npos) {
            gathered.complaints.push_back({line, 0, "would not be translated"});
        }
    }
    return gathered;
}

TEST(Gathering, complaints_of_the_tool_are_seen) {
    const fs::path folder = fs::temp_directory_path() / ("soakbook_sample_" + std::to_string(getpid()));
    fs::create_directories(folder / "ui");
    std::ofstream(folder / "ui" / "x.cpp")
        << "namespace a { class B { public: void f(); }; void B::f() { tr(\"Seal\"); } }\n";
    const Gathered gathered = gather(folder, "ui");
    fs::remove_all(folder);
    EXPECT_EQ(gathered.complaints.size(), 1U);
}

TEST(Gathering, every_text_is_understood) {
    const Gathered gathered = gather(SOAKBOOK_SOURCE_DIR, "ui app");
    EXPECT_TRUE(gathered.found_texts) << "the tool found no text at all";
    EXPECT_TRUE(none(gathered.complaints));
}

} // namespace
} // namespace soakbook::house
