// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/example.h"

#include "ui/parts/habits.h"
#include "app/open_words.h"
#include "core/book/workbook.h"
#include "core/work/example/player.h"
#include "resources/resources.h"

#include <QFile>

#include <stdexcept>

namespace soakbook::app {

tl::expected<void, QString> write_example(const QString& path, maths::Instant now) {
    open_resources();
    QFile recipe(QStringLiteral(":/soakbook/example/recipe.json"));
    if (!recipe.open(QIODevice::ReadOnly))
        throw std::runtime_error("the example's recipe is not in the program");
    auto workbook = book::Workbook::create(path, {now, {}, {}, false});
    if (!workbook)
        return tl::unexpected(words_for(workbook.error(), path));
    try {
        work::ExamplePlayer(**workbook, now, ui::wall_instant).play(recipe.readAll());
    } catch (...) {
        workbook->reset();
        QFile::remove(path);
        throw;
    }
    return {};
}

} // namespace soakbook::app
