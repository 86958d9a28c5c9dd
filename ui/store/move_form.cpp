// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/store/move_form.h"

#include "core/work/leftovers.h"
#include "core/work/stock.h"
#include "core/work/store_view.h"
#include "ui/parts/form_dialog.h"
#include "ui/parts/text_field.h"
#include "ui/store/store_draft.h"

#include <QCoreApplication>

#include <functional>

namespace soakbook::ui {

namespace {

struct MoveFormWords {
    Q_DECLARE_TR_FUNCTIONS(MoveForm)
};

/// Every place named so far, once each.
QStringList places(const Desk& desk) {
    QStringList names;
    for (const work::BagLine& bag : work::bags(desk.workbook(), desk.today(), work::BagFilter::all))
        names << bag.stands;
    for (const work::PailLine& pail : work::pails(desk.workbook(), desk.today(), true))
        names << pail.stands;
    names.removeAll(QString());
    names.removeDuplicates();
    names.sort(Qt::CaseInsensitive);
    return names;
}

using Move = std::function<std::optional<work::Refusal>(const QString& stands)>;

void open_move(Desk& desk, const QString& title, const QString& stands, QWidget* parent, const DraftPlace& draft, Move move) {
    auto* dialog = new FormDialog(desk, title, parent);
    dialog->setObjectName(QStringLiteral("move_form"));
    FormFrame* form = dialog->form();
    form->set_columns(1);
    //: A field's label: where bags or pails stand from now on
    auto* where = form->add(MoveFormWords::tr("Stands"), new TextField, QStringLiteral("stands"),
                            //: Help under the field for a place
                            MoveFormWords::tr("A shelf, a box, a room: dark, dry and neither hot nor freezing."));
    where->setObjectName(QStringLiteral("move_stands"));
    where->set_suggestions(places(desk));
    where->set_value(stands);
    //: Filled button of a form
    form->set_primary(MoveFormWords::tr("Move"));
    form->set_commit([where, move = std::move(move)](const work::Confirmed&) { return move(where->value()); });
    form->set_draft(draft);
    dialog->open();
}

template <class Id> std::vector<qint64> numbers_of(const std::vector<Id>& ids) {
    std::vector<qint64> numbers;
    for (const Id id : ids)
        numbers.push_back(id.value);
    return numbers;
}

} // namespace

void open_move_bags(Desk& desk, const std::vector<work::BagId>& bags, const QString& stands, QWidget* parent) {
    //: Title of a form
    const QString title = MoveFormWords::tr("Move %n bag(s)", nullptr, static_cast<int>(bags.size()));
    const DraftPlace draft = store_draft(QStringLiteral("move_bags"), QStringLiteral("move"), numbers_of(bags));
    open_move(desk, title, stands, parent, draft, [&desk, bags](const QString& where) {
        return refusal_of(work::move_bags(desk.workbook(), bags, where, desk.doing()));
    });
}

void open_move_pails(Desk& desk, const std::vector<work::PailId>& pails, const QString& stands, QWidget* parent) {
    //: Title of a form
    const QString title = MoveFormWords::tr("Move %n pail(s)", nullptr, static_cast<int>(pails.size()));
    const DraftPlace draft = store_draft(QStringLiteral("move_pails"), QStringLiteral("pails"), numbers_of(pails), QStringLiteral("pail_move"));
    open_move(desk, title, stands, parent, draft, [&desk, pails](const QString& where) {
        return refusal_of(work::move_pails(desk.workbook(), pails, where, desk.doing()));
    });
}

} // namespace soakbook::ui
