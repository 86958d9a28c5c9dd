// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/yards/yard_form.h"

#include "core/work/register_view.h"
#include "core/work/short_questions.h"
#include "ui/parts/choice_field.h"
#include "ui/parts/day_field.h"
#include "ui/parts/desk.h"
#include "ui/parts/form_dialog.h"
#include "ui/parts/reason_field.h"
#include "ui/parts/refusal_words.h"
#include "ui/parts/text_field.h"
#include "ui/parts/theme.h"
#include "ui/yards/named_field.h"
#include "ui/yards/yard_draft.h"
#include "ui/yards/yard_words.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace soakbook::ui {

namespace {

class YardForm {
    Q_DECLARE_TR_FUNCTIONS(YardForm)

public:
    static void open(QWidget* parent, Desk& desk, const work::YardEntry& yard, std::function<void(work::YardId)> done);
    static void open_times(QWidget* parent, Desk& desk, work::YardId yard, const QString& yard_name);

private:
    static QWidget* time_line(Desk& desk, const work::YardTimeEntry& time, QLabel* complaint);
};

void YardForm::open(QWidget* parent, Desk& desk, const work::YardEntry& yard, std::function<void(work::YardId)> done) {
    //: Title of a form
    auto* dialog = new FormDialog(desk, yard.id ? tr("The yard %1").arg(yard.name) : tr("A new yard"), parent);
    dialog->setObjectName(QStringLiteral("yard_form"));
    FormFrame* form = dialog->form();
    form->set_columns(1);
    //: Field: what a yard is called
    auto* name = named(form->add(tr("Name"), new TextField(form), QStringLiteral("name")), "yard_name");
    //: Field: a yard's address or how to find it
    auto* where = named(form->add(tr("Where it is"), new TextField(form), QStringLiteral("where_it_is"),
                                  //: Help of a field
                                  tr("The way there, for whoever visits it in your place.")),
                        "yard_where");
    //: Field
    auto* note = named(form->add(tr("Note"), new NoteField(form), QStringLiteral("note")), "yard_note");
    name->set_value(yard.name);
    where->set_value(yard.where_it_is);
    note->set_value(yard.note);
    const bool hung = yard.id && work::was_anything_hung(desk.workbook(), yard.id);
    TextField* reason = hung ? named(add_reason(*form, correction_help(), naming_picks()), "yard_reason") : nullptr;
    const auto renamed = [name, was = yard.name] { return name->value() != was; };
    if (reason != nullptr) {
        // The register names the yard: another name is a correction.
        form->set_shown(QStringLiteral("reason"), false);
        QObject::connect(form, &FormFrame::edited, form, [form, renamed] { form->set_shown(QStringLiteral("reason"), renamed()); });
    }
    YesNoField* active = nullptr;
    if (yard.id) {
        //: Field: whether a yard is still used
        active = named(form->add(tr("Still in use?"), new YesNoField(YesNoField::Ways::two, form), QStringLiteral("active")), "yard_active");
        active->set_value(yard.active);
    }
    //: Filled button of a form
    form->set_primary(yard.id ? tr("Save the yard") : tr("Add the yard"));
    form->set_commit([=, &desk](const work::Confirmed&) -> std::optional<work::Refusal> {
        work::YardEntry entry = yard;
        entry.name = name->value();
        entry.where_it_is = where->value();
        entry.note = note->value();
        entry.active = active == nullptr || active->value().value_or(true);
        const bool is_correction = reason != nullptr && renamed();
        if (is_correction && reason->is_empty()) {
            return work::Refusal{work::Why::reason_missing, QStringLiteral("reason"), {}, false};
        }
        const auto saved = work::save_yard(desk.workbook(), entry, desk.doing(is_correction ? reason->value() : QString()));
        if (saved && done) {
            done(*saved);
        }
        return refusal_of(saved);
    });
    form->set_draft(yard.id ? yard_draft(QStringLiteral("yard"), QStringLiteral("edit_yard"), {yard.id.value})
                            : yard_draft(QStringLiteral("new_yard"), QStringLiteral("new_yard"), {}));
    dialog->open();
}

QWidget* YardForm::time_line(Desk& desk, const work::YardTimeEntry& time, QLabel* complaint) {
    auto* line = new QWidget;
    auto* row = new QHBoxLayout(line);
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(make_label(YardWords::time(time, desk), Type::body, line, true), 1);
    //: Quiet button that takes a time of a yard away
    auto* away = new QPushButton(tr("Take away"), line);
    away->setAutoDefault(false);
    set_kind(away, "row");
    row->addWidget(away);
    QObject::connect(away, &QPushButton::clicked, line, [&desk, line, complaint, id = time.id] {
        const auto removed = work::remove_yard_time(desk.workbook(), id, desk.doing());
        complaint->setText(removed ? QString() : refusal_words(removed.error(), desk));
        complaint->setVisible(!removed);
        line->setVisible(!removed);
    });
    return line;
}

void YardForm::open_times(QWidget* parent, Desk& desk, work::YardId yard, const QString& yard_name) {
    //: Title of a form; %1 a yard
    auto* dialog = new FormDialog(desk, tr("Times of %1").arg(yard_name), parent);
    dialog->setObjectName(QStringLiteral("yard_times_form"));
    FormFrame* form = dialog->form();
    //: Under the title of a form
    form->set_intro(tr("Flows and days when this yard is not to be opened. They are looked at when a round is planned and when strips go in."));
    auto* complaint = make_label({}, Type::body, form, true);
    complaint->setProperty("kind", QStringLiteral("complaint"));
    complaint->hide();
    for (const work::YardTimeEntry& time : work::yard_times(desk.workbook(), yard)) {
        form->add_widget(time_line(desk, time, complaint));
    }
    form->add_widget(complaint);
    //: Heading within a form
    form->add_section(tr("One more"));
    //: Field: a flow, or days when a yard stays shut
    auto* kind = named(form->add(tr("What it is"), new ChoiceField(form), QStringLiteral("kind")), "time_kind");
    //: One of two: a time when bees bring in nectar
    kind->add(tr("a flow"), static_cast<int>(work::TimeKind::flow));
    //: One of two: days when nobody opens the hives
    kind->add(tr("not to be opened"), static_cast<int>(work::TimeKind::closed));
    kind->set_value(static_cast<int>(work::TimeKind::flow));
    //: Field: the name of a flow, or why a yard stays shut
    auto* what = named(form->add(tr("Name or reason"), new TextField(form), QStringLiteral("what"),
                                 //: Help of a field: examples
                                 tr("Lime, heather; spraying next door, a show.")),
                       "time_what");
    //: Field
    auto* from = named(form->add(tr("First day"), new DayField(desk, form), QStringLiteral("from")), "time_from");
    //: Field
    auto* to = named(form->add(tr("Last day"), new DayField(desk, form), QStringLiteral("to")), "time_to");
    //: Filled button of a form
    form->set_primary(tr("Add the time"));
    form->set_commit([=, &desk](const work::Confirmed&) -> std::optional<work::Refusal> {
        work::YardTimeEntry entry;
        entry.yard = yard;
        entry.kind = static_cast<work::TimeKind>(kind->value().toInt());
        entry.what = what->value();
        entry.from = from->value();
        entry.to = to->value();
        return refusal_of(work::save_yard_time(desk.workbook(), entry, desk.doing()));
    });
    form->set_draft(yard_draft(QStringLiteral("yard_time"), QStringLiteral("show"), {yard.value}, QStringLiteral("yard_times")));
    dialog->open();
    what->take_focus();
}

} // namespace

void open_yard_form(QWidget* parent, Desk& desk, const work::YardEntry& yard, std::function<void(work::YardId)> done) {
    YardForm::open(parent, desk, yard, std::move(done));
}

void open_yard_times(QWidget* parent, Desk& desk, work::YardId yard, const QString& yard_name) {
    YardForm::open_times(parent, desk, yard, yard_name);
}

} // namespace soakbook::ui
