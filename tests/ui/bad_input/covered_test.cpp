// SPDX-License-Identifier: GPL-3.0-or-later
// No form of the program is left out of the sweep: the sources are read for classes that are forms and for forms that are
// put together on the spot.
#include "tests/ui/bad_input/form_case.h"

#include <QDirIterator>
#include <QFile>
#include <QRegularExpression>

#include <gtest/gtest.h>

#include <map>
#include <set>

namespace soakbook::tests {

namespace {

/// What a form is derived from or put into; each is no form by itself.
const std::set<QString> grounds{QStringLiteral("FormFrame"), QStringLiteral("FormDialog"), QStringLiteral("CorrectionDialog"),
                                QStringLiteral("GridPage")};

std::map<QString, QString> sources() {
    std::map<QString, QString> texts;
    const QString root = QStringLiteral(SOAKBOOK_SOURCE_DIR) + QStringLiteral("/ui");
    QDirIterator files(root, {QStringLiteral("*.h"), QStringLiteral("*.cpp")}, QDir::Files, QDirIterator::Subdirectories);
    while (files.hasNext()) {
        QFile file(files.next());
        if (file.open(QIODevice::ReadOnly))
            texts[QStringLiteral("ui/") + file.fileName().mid(root.size() + 1)] = QString::fromUtf8(file.readAll());
    }
    return texts;
}

std::set<QString> form_classes(const std::map<QString, QString>& texts) {
    static const QRegularExpression derived(QStringLiteral("class\\s+(\\w+)[^;{]*:[^;{]*public\\s+(\\w+)"));
    std::set<QString> known = grounds;
    for (std::size_t before = 0; before != known.size();) {
        before = known.size();
        for (const auto& [path, text] : texts) {
            for (auto found = derived.globalMatch(text); found.hasNext();) {
                const auto match = found.next();
                if (known.count(match.captured(2)) > 0)
                    known.insert(match.captured(1));
            }
        }
    }
    for (const QString& ground : grounds)
        known.erase(ground);
    return known;
}

/// How many forms a source puts together without a class for them.
qsizetype forms_made_in(const QString& text) {
    static const QRegularExpression made(QStringLiteral("new (FormDialog|FormFrame|CorrectionDialog)\\b|= ask_reason\\(|^\\s+ask_reason\\("),
                                         QRegularExpression::MultilineOption);
    qsizetype count = 0;
    for (auto found = made.globalMatch(text); found.hasNext(); found.next())
        ++count;
    return count;
}

bool holds_a_ground(const QString& path) {
    return path == QLatin1String("ui/parts/form_dialog.cpp") || path == QLatin1String("ui/yards/grid_page.cpp");
}

} // namespace

TEST(Forms, each_class_of_form_is_swept) {
    std::set<QString> swept;
    for (const FormCase& form : all_forms())
        swept.insert(QLatin1String(form.made_in));
    const std::set<QString> classes = form_classes(sources());
    EXPECT_GE(classes.size(), 20U) << "the sources were not read";
    for (const QString& name : classes)
        EXPECT_EQ(swept.count(name), 1U) << name.toStdString() << " is a form that the sweep does not open";
}

TEST(Forms, each_form_that_is_put_together_on_the_spot_is_swept) {
    std::map<QString, std::set<std::string>> swept;
    for (const FormCase& form : all_forms())
        swept[QLatin1String(form.made_in)].insert(form.name);
    qsizetype made = 0;
    for (const auto& [path, text] : sources()) {
        const qsizetype here = holds_a_ground(path) ? 0 : forms_made_in(text);
        made += here;
        EXPECT_GE(static_cast<qsizetype>(swept[path].size()), here) << path.toStdString() << " makes forms that the sweep does not open";
    }
    EXPECT_GE(made, 25) << "the sources were not read";
}

TEST(Forms, what_the_sweep_names_is_there) {
    const auto texts = sources();
    const auto classes = form_classes(texts);
    for (const FormCase& form : all_forms()) {
        const QString made_in = QLatin1String(form.made_in);
        EXPECT_TRUE(classes.count(made_in) > 0 || texts.count(made_in) > 0) << form.made_in;
    }
}

} // namespace soakbook::tests
