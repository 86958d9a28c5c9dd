// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/yards/hive_form.h"

#include "core/work/yards_view.h"
#include "ui/parts/choice_field.h"
#include "ui/parts/day_field.h"
#include "ui/parts/desk.h"
#include "ui/parts/form_dialog.h"
#include "ui/parts/reason_field.h"
#include "ui/parts/text_field.h"
#include "ui/yards/named_field.h"
#include "ui/yards/yard_draft.h"
#include "ui/yards/yard_words.h"

#include <algorithm>

namespace soakbook::ui {

namespace {

using work::StateOfHive;

class HiveForm : public FormDialog {
    Q_DECLARE_TR_FUNCTIONS(HiveForm)

public:
    HiveForm(Desk& desk, const work::HiveEntry& hive, QWidget* parent);
    static void open_move(QWidget* parent, Desk& desk, const std::vector<work::HiveId>& hives);

private:
    void make_fields();
    void fill(const work::HiveEntry& hive);
    void show_state_day();
    bool wants_reason() const;
    work::HiveEntry entry() const;

    Desk& m_desk;
    work::HiveEntry m_before;
    TextField* m_name;
    CountField* m_hives;
    CountField* m_boxes;
    CountField* m_frames;
    YesNoField* m_supers;
    YesNoField* m_untreated;
    ChoiceField* m_state;
    DayField* m_state_on;
    NoteField* m_note;
    TextField* m_reason;
    bool m_treated = false; ///< the register names it
};

HiveForm::HiveForm(Desk& desk, const work::HiveEntry& hive, QWidget* parent)
    //: Title of a form; %1 a hive
    : FormDialog(desk, tr("The hive %1").arg(YardWords::hive(hive.name, hive.hives)), parent), m_desk(desk), m_before(hive) {
    setObjectName(QStringLiteral("hive_form"));
    make_fields();
    fill(hive);
    //: Filled button of a form
    form()->set_primary(tr("Save the hive"));
    form()->set_commit([this](const work::Confirmed&) -> std::optional<work::Refusal> {
        if (wants_reason() && m_reason->is_empty()) {
            return work::Refusal{work::Why::reason_missing, QStringLiteral("reason"), {}, false};
        }
        return refusal_of(work::save_hive(m_desk.workbook(), entry(), m_desk.doing(wants_reason() ? m_reason->value() : QString())));
    });
    // What the register shows is put right with a reason; what happens to a hive is entered without one.
    connect(form(), &FormFrame::edited, this, [this] { form()->set_shown(QStringLiteral("reason"), wants_reason()); });
    QObject::connect(m_state, &ChoiceField::edited, this, [this] { show_state_day(); });
    form()->set_draft(yard_draft(QStringLiteral("hive"), QStringLiteral("hive"), {hive.id.value}, QStringLiteral("story_edit")));
}

void HiveForm::make_fields() {
    FormFrame* f = form();
    //: Field: what a hive is called
    m_name = named(f->add(tr("Name or number"), new TextField(f), QStringLiteral("name")), "hive_name");
    //: Field: how many hives make a group
    m_hives = named(f->add(tr("Hives in the row"), new CountField(m_desk, {}, f), QStringLiteral("hives")), "hive_hives");
    //: Field
    m_boxes = named(f->add(tr("Brood boxes"), new CountField(m_desk, {}, f), QStringLiteral("brood_boxes")), "hive_boxes");
    //: Field: how many frames are covered with bees
    m_frames = named(f->add(tr("Frames of bees"), new CountField(m_desk, {}, f), QStringLiteral("frames_of_bees")), "hive_frames");
    //: Field: whether honey supers are on
    m_supers = named(f->add(tr("Honey supers on?"), new YesNoField(YesNoField::Ways::three, f), QStringLiteral("supers_on")), "hive_supers");
    //: Field
    m_untreated = named(f->add(tr("Left untreated on purpose?"), new YesNoField(YesNoField::Ways::two, f), QStringLiteral("untreated"),
                               //: Help of a field
                               tr("To compare with: rounds plan no strips for it.")),
                        "hive_untreated");
    //: Field: alive, dead or gone
    m_state = named(f->add(tr("State"), new ChoiceField(f), QStringLiteral("state")), "hive_state");
    for (const auto state : {StateOfHive::alive, StateOfHive::dead, StateOfHive::gone}) {
        m_state->add(YardWords::word(state), static_cast<int>(state));
    }
    //: Field: the day a hive was found dead or gone
    m_state_on = named(f->add(tr("Found so on"), new DayField(m_desk, f), QStringLiteral("state_on")), "hive_state_on");
    //: Field
    m_note = named(f->add_wide(tr("Note"), new NoteField(f), QStringLiteral("note")), "hive_note");
    m_reason = named(add_reason(*f, correction_help(), naming_picks()), "hive_reason");
}

bool HiveForm::wants_reason() const {
    const bool renamed = m_treated && m_name->value() != m_before.name;
    const auto state = static_cast<StateOfHive>(m_state->value().toInt());
    const bool was_found = m_before.state != StateOfHive::alive;
    return renamed || (was_found && (state != m_before.state || m_state_on->value() != m_before.state_on));
}

void HiveForm::fill(const work::HiveEntry& hive) {
    const auto events = work::hive_events(m_desk.workbook(), hive.id);
    m_treated = std::any_of(events.begin(), events.end(), [](const work::HiveEvent& event) { return event.kind == work::HiveEvent::Kind::strips_in; });
    m_name->set_value(hive.name);
    m_hives->set_value(hive.hives);
    form()->set_shown(QStringLiteral("hives"), hive.hives > 1);
    m_boxes->set_value(as_count(hive.brood_boxes));
    m_frames->set_value(as_count(hive.frames_of_bees));
    m_supers->set_value(hive.supers_on);
    m_untreated->set_value(hive.untreated);
    m_state->set_value(static_cast<int>(hive.state));
    m_state_on->set_value(hive.state_on.value_or(m_desk.today()));
    m_note->set_value(hive.note);
    show_state_day();
    form()->set_shown(QStringLiteral("reason"), false);
}

void HiveForm::show_state_day() {
    form()->set_shown(QStringLiteral("state_on"), m_state->value().toInt() != static_cast<int>(StateOfHive::alive));
}

work::HiveEntry HiveForm::entry() const {
    work::HiveEntry entry = m_before;
    entry.name = m_name->value();
    entry.hives = as_int(m_hives->value()).value_or(0);
    entry.brood_boxes = as_int(m_boxes->value());
    entry.frames_of_bees = as_int(m_frames->value());
    entry.supers_on = m_supers->value();
    entry.untreated = m_untreated->value().value_or(false);
    entry.state = static_cast<StateOfHive>(m_state->value().toInt());
    entry.state_on = entry.state == StateOfHive::alive ? std::nullopt : m_state_on->value();
    entry.note = m_note->value();
    return entry;
}

void HiveForm::open_move(QWidget* parent, Desk& desk, const std::vector<work::HiveId>& hives) {
    QStringList names;
    work::YardId from;
    for (const work::HiveId id : hives) {
        if (const auto hive = work::hive(desk.workbook(), id)) {
            names += YardWords::hive(hive->name, hive->hives);
            from = hive->yard;
        }
    }
    //: Title of a form
    auto* dialog = new FormDialog(desk, tr("Move hives to another yard"), parent);
    dialog->setObjectName(QStringLiteral("move_form"));
    FormFrame* form = dialog->form();
    //: Under the title of a form; %1 names of hives
    form->set_intro(tr("%1 move with the strips that hang in them. The register still says where each strip was hung.").arg(names.join(QStringLiteral(", "))));
    //: Field: the yard hives go to
    auto* to = named(form->add(tr("To the yard"), new ChoiceField(form), QStringLiteral("to")), "move_to");
    for (const work::YardEntry& yard : work::yards(desk.workbook())) {
        if (yard.id != from) {
            to->add(yard.name, qint64{yard.id.value});
        }
    }
    //: Field
    auto* on = named(form->add(tr("Day"), new DayField(desk, form), QStringLiteral("on")), "move_on");
    on->set_value(desk.today());
    //: Filled button of a form
    form->set_primary(tr("Move the hives"));
    form->set_commit([=, &desk](const work::Confirmed&) -> std::optional<work::Refusal> {
        const auto yard = to->is_empty() ? std::nullopt : std::optional<work::YardId>(work::YardId{to->id()});
        return refusal_of(work::move_hives(desk.workbook(), hives, yard, on->value(), desk.doing()));
    });
    std::vector<qint64> numbers;
    for (const work::HiveId id : hives) {
        numbers.push_back(id.value);
    }
    form->set_draft(yard_draft(QStringLiteral("move_hives"), QStringLiteral("move_hives"), numbers));
    dialog->open();
}

} // namespace

void open_hive_form(QWidget* parent, Desk& desk, work::HiveId hive) {
    if (const auto entry = work::hive(desk.workbook(), hive)) {
        (new HiveForm(desk, *entry, parent))->open();
    }
}

void open_move_form(QWidget* parent, Desk& desk, const std::vector<work::HiveId>& hives) {
    HiveForm::open_move(parent, desk, hives);
}

} // namespace soakbook::ui
