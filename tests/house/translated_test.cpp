// SPDX-License-Identifier: GPL-3.0-or-later
// Every text has its words in every language that the program offers, and they keep the places of its numbers.
// packaging/update-translations gathers what is missing.
#include <algorithm>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <regex>
#include <sstream>
#include <string>
#include <unistd.h>
#include <vector>

namespace soakbook::house {
namespace {

namespace fs = std::filesystem;

struct Message {
    std::string source;
    std::vector<std::string> words; ///< more than one: one for each number
    bool unfinished = false;
};

std::string read_whole(const fs::path& file) {
    std::ostringstream all;
    all << std::ifstream(file).rdbuf();
    return all.str();
}

/// What stands between the tags, from `at` on; `at` is moved behind it.
std::string between(const std::string& text, const std::string& open, const std::string& close, std::size_t& at) {
    const std::size_t from = text.find(open, at);
    if (from == std::string::npos) {
        at = std::string::npos;
        return {};
    }
    const std::size_t begin = text.find('>', from) + 1;
    const std::size_t end = text.find(close, begin);
    at = end + close.size();
    return text.substr(begin, end - begin);
}

std::vector<Message> messages_in(const std::string& ts) {
    std::vector<Message> messages;
    for (std::size_t at = 0; at != std::string::npos;) {
        const std::string body = between(ts, "<message", "</message>", at);
        if (at == std::string::npos) {
            break;
        }
        Message message;
        std::size_t place = 0;
        message.source = between(body, "<source", "</source>", place);
        message.unfinished = body.find("type=\"unfinished\"") != std::string::npos;
        std::size_t form = 0;
        for (std::string words = between(body, "<numerusform", "</numerusform>", form); form != std::string::npos;
             words = between(body, "<numerusform", "</numerusform>", form)) {
            message.words.push_back(words);
        }
        if (message.words.empty()) {
            place = 0;
            message.words.push_back(between(body, "<translation", "</translation>", place));
        }
        messages.push_back(message);
    }
    return messages;
}

/// The places for numbers and names, sorted: "%1", "%2".
std::vector<std::string> places_in(const std::string& text) {
    static const std::regex place("%L?[0-9]");
    std::vector<std::string> found;
    for (auto it = std::sregex_iterator(text.begin(), text.end(), place); it != std::sregex_iterator(); ++it) {
        found.push_back(it->str());
    }
    std::sort(found.begin(), found.end());
    found.erase(std::unique(found.begin(), found.end()), found.end());
    return found;
}

/// What is wrong with a file of texts: those without words, and those whose words lost a place.
std::vector<std::string> faults_in(const std::string& ts) {
    std::vector<std::string> faults;
    for (const Message& message : messages_in(ts)) {
        const bool empty =
            std::any_of(message.words.begin(), message.words.end(), [](const std::string& words) { return words.empty(); });
        if (message.unfinished || empty) {
            faults.push_back("no words: " + message.source);
            continue;
        }
        for (const std::string& words : message.words) {
            if (places_in(words) != places_in(message.source)) {
                faults.push_back("other places: " + message.source + " -> " + words);
            }
        }
    }
    return faults;
}

/// The language's file as it would be after gathering.
std::string gathered(const std::string& language) {
    const fs::path root = SOAKBOOK_SOURCE_DIR;
    const fs::path copy = fs::temp_directory_path() / ("soakbook_" + language + std::to_string(getpid()) + ".ts");
    fs::copy_file(root / "translations" / ("soakbook_" + language + ".ts"), copy, fs::copy_options::overwrite_existing);
    const std::string command = "cd '" + root.string() + "' && " SOAKBOOK_LUPDATE " -locations none -no-obsolete " +
                                (language == "en" ? "-pluralonly " : "") + "ui app -I . -ts '" + copy.string() +
                                "' >/dev/null 2>&1";
    EXPECT_EQ(std::system(command.c_str()), 0);
    const std::string all = read_whole(copy);
    fs::remove(copy);
    return all;
}

TEST(Translated, a_text_without_words_or_with_lost_places_is_seen) {
    const std::string start = "<message><source>%1 of %2</source>";
    EXPECT_THAT(faults_in(start + "<translation>%1 von %2</translation></message>"), testing::IsEmpty());
    EXPECT_THAT(faults_in(start + "<translation>%1</translation></message>"), testing::SizeIs(1));
    EXPECT_THAT(faults_in(start + "<translation type=\"unfinished\"></translation></message>"), testing::SizeIs(1));
    EXPECT_THAT(faults_in("<message numerus=\"yes\"><source>%n</source><translation><numerusform>%n</numerusform>"
                          "<numerusform></numerusform></translation></message>"),
                testing::SizeIs(1));
}

TEST(Translated, english_has_every_plural) {
    const std::string ts = gathered("en");
    EXPECT_GT(messages_in(ts).size(), 100U);
    EXPECT_THAT(faults_in(ts), testing::IsEmpty());
}

TEST(Translated, german_has_every_text) {
    const std::string ts = gathered("de");
    EXPECT_GT(messages_in(ts).size(), 2000U);
    EXPECT_THAT(faults_in(ts), testing::IsEmpty());
}

} // namespace
} // namespace soakbook::house
