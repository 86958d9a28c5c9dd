// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/find_answers.h"

#include "core/work/find.h"
#include "ui/parts/desk.h"

#include <QCoreApplication>

namespace soakbook::ui {

namespace {

using work::Found;
using work::FoundKind;

class FindWords {
    Q_DECLARE_TR_FUNCTIONS(FindWords)

public:
    static QString of(const Found& found, const Desk& desk) {
        switch (found.kind) {
        case FoundKind::batch:
            //: What was found
            return tr("batch");
        case FoundKind::bag:
            //: What was found; %1 a batch
            return found.where.isEmpty() ? tr("bag") : tr("bag of batch %1").arg(found.where);
        case FoundKind::pail:
            //: What was found; %1 a batch
            return found.where.isEmpty() ? tr("pail") : tr("pail of batch %1").arg(found.where);
        case FoundKind::hive:
            //: What was found; %1 a yard
            return found.where.isEmpty() ? tr("hive") : tr("hive in %1").arg(found.where);
        case FoundKind::yard:
            //: What was found
            return tr("yard");
        case FoundKind::round:
            //: What was found: a round of treatment
            return tr("round");
        case FoundKind::lot:
            //: What was found: a lot of material
            return tr("lot");
        case FoundKind::given_but_undone:
            break;
        }
        //: What was found: a code whose entry was undone; %1 a day and time
        return found.given ? tr("given out %1, undone").arg(desk.moment(*found.given)) : tr("given out and undone");
    }

    static QString of(work::NotFound why) {
        switch (why) {
        case work::NotFound::empty:
            return {};
        case work::NotFound::wrong_check_character:
            //: In the list under Find
            return tr("The last character does not fit this code: a slip of the pen. Read the label again.");
        case work::NotFound::no_such_code:
            //: In the list under Find
            return tr("This code was never given out in this workbook.");
        case work::NotFound::no_such_name:
            break;
        }
        //: In the list under Find
        return tr("Nothing has this code or name.");
    }
};

std::optional<Intent> intent_of(const Found& found) {
    const auto to = [&found](PlaceName place, const QString& task) { return Intent{place, task, {found.id}, {}}; };
    switch (found.kind) {
    case FoundKind::batch:
        return to(PlaceName::shed, QStringLiteral("batch"));
    case FoundKind::bag:
        return to(PlaceName::store, QStringLiteral("bag"));
    case FoundKind::pail:
        return to(PlaceName::store, QStringLiteral("pail"));
    case FoundKind::lot:
        return to(PlaceName::store, QStringLiteral("lot"));
    case FoundKind::hive:
        return to(PlaceName::yards, QStringLiteral("hive"));
    case FoundKind::yard:
        return to(PlaceName::yards, QStringLiteral("yard"));
    case FoundKind::round:
        return to(PlaceName::yards, QStringLiteral("round"));
    case FoundKind::given_but_undone:
        break;
    }
    return std::nullopt;
}

} // namespace

Find find_at(const Desk& desk) {
    return [&desk](const QString& text) {
        const work::FindResult result = work::find(desk.workbook(), text);
        FindAnswer answer;
        for (const Found& found : result.found) {
            answer.hits.push_back({found.code, FindWords::of(found, desk), intent_of(found)});
        }
        answer.why_none = answer.hits.empty() ? FindWords::of(result.why_not) : QString();
        return answer;
    };
}

} // namespace soakbook::ui
