// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/due/due_words.h"

#include "ui/due/due_shed_words.h"
#include "ui/due/due_yard_words.h"

#include <QCoreApplication>

namespace soakbook::ui {

namespace {
class DueTexts {
    Q_DECLARE_TR_FUNCTIONS(Due)
};
} // namespace

QString group_words(work::DueGroup group) {
    switch (group) {
    case work::DueGroup::now:
        //: A group of things to do.
        return DueTexts::tr("Now");
    case work::DueGroup::today:
        //: A group of things to do.
        return DueTexts::tr("Today");
    case work::DueGroup::this_week:
        //: A group of things to do.
        return DueTexts::tr("This week");
    case work::DueGroup::later:
        //: A group of things to do.
        return DueTexts::tr("Later");
    }
    return {};
}

DueWords due_words(const work::DueRow& row, const Habits& habits) {
    if (auto words = due_shed_words(row, habits))
        return *words;
    if (auto words = due_yard_words(row, habits))
        return *words;
    if (auto words = due_window_words(row, habits))
        return *words;
    return due_store_words(row, habits);
}

} // namespace soakbook::ui
