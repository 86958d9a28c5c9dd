// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shed/soak_step.h"

#include "core/work/soak.h"
#include "ui/papers/history_dialog.h"
#include "ui/parts/cards.h"
#include "ui/parts/day_field.h"
#include "ui/parts/quantity_field.h"
#include "ui/parts/record_table.h"
#include "ui/parts/theme.h"
#include "ui/shed/beside.h"
#include "ui/shed/bin_rows.h"
#include "ui/shed/correction_dialog.h"
#include "ui/shed/shed_cautions.h"
#include "ui/shed/shed_draft.h"
#include "ui/shed/shed_words.h"
#include "ui/shed/soak_form.h"
#include "ui/shed/step_names.h"

#include <QLabel>
#include <QVBoxLayout>

namespace soakbook::ui {

namespace {

using Soak = work::SoakLine;

std::vector<Column<Soak>> soak_columns(const Desk& desk) {
    std::vector<Column<Soak>> columns;
    //: Header of a column
    columns.push_back({.header = SoakStep::tr("Bin"), .text = [](const Soak& row) { return row.bin_name; }});
    //: Header of a column: strips in a bin
    columns.push_back({.header = SoakStep::tr("Strips"),
                       .text = [&desk](const Soak& row) { return desk.count(row.strips); },
                       .align = Qt::AlignRight,
                       .type = CellType::strong});
    //: Header of a column: when the liquid was let in
    columns.push_back({.header = SoakStep::tr("Flooded"), .text = [&desk](const Soak& row) { return desk.moment(row.started); }});
    //: Header of a column: when the strips were taken out
    columns.push_back({.header = SoakStep::tr("Taken out"),
                       .text =
                           [&desk](const Soak& row) {
                               //: The strips of a bin are not taken out yet; %1 how long they have soaked
                               return row.ended ? desk.moment(*row.ended)
                                                : SoakStep::tr("soaks, %1 in")
                                                      .arg(how_long(maths::hours_between(row.started, desk.now())));
                           },
                       .state = [](const Soak& row) {
                           return row.ended ? std::nullopt : std::optional<State>(State::resting);
                       }});
    return columns;
}

} // namespace

SoakStep::SoakStep(Desk& desk, QWidget* parent)
    : StepBody(parent), m_desk(desk), m_beside(new Beside(Beside::caution_width, this)),
      //: Stands where the bins of a batch will be listed
      m_teach(make_soft_label(tr("The bins of this batch will stand here: how many strips, since when, and how long they have "
                                 "soaked. A bin that is flooded later gets its own line."),
                              Type::body)),
      //: Read aloud: the name of a table
      m_table(new RecordTable(QStringLiteral("shed/soaks"), tr("Bins"))),
      //: Under a table whose rows can be put right
      m_hint(make_soft_label(tr("Enter on a row puts its strips or its start right, with a reason."), Type::small)),
      m_model(new RowsModel<Soak>(soak_columns(desk), [](const Soak& row) { return row.id.value; }, this)) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(m_beside);
    m_table->set_rows_model(m_model);
    m_table->set_full_height(true);
    m_table->set_start_widths({140, 90, 160, 160});
    m_beside->right()->addWidget(m_teach);
    m_beside->below()->addWidget(m_table);
    m_beside->below()->addWidget(m_hint);
    m_beside->right()->addWidget(new Caution(liquid_caution()));
    connect(m_table, &RecordTable::opened, this, &SoakStep::correct);
    give_history(m_desk, m_table, [this] { return history_of(m_desk, {}, QStringLiteral("soak"), m_table->current_id()); });
}

void SoakStep::show_batch(const work::BatchView& batch) {
    const bool fresh = m_batch != batch.line.id || m_soaks != batch.soaks.size();
    m_batch = batch.line.id;
    m_soaks = batch.soaks.size();
    m_can_correct = is_open(batch);
    m_model->set_rows(batch.soaks);
    m_table->setVisible(m_soaks > 0);
    m_hint->setVisible(m_soaks > 0 && m_can_correct);
    m_teach->setVisible(m_soaks == 0);
    const bool wanted = is_open(batch) && batch.clear_at;
    m_beside->set_left_shown(wanted);
    m_beside->set_right_shown(wanted);
    std::vector<work::VesselId> free;
    for (const work::VesselEntry& bin : free_bins(m_desk))
        free.push_back(bin.id);
    const bool other_bins = free != m_free && !has_typed();
    if (fresh || other_bins || (m_form != nullptr) != wanted) {
        m_free = free;
        show_form(batch);
    }
}

void SoakStep::show_form(const work::BatchView& batch) {
    const bool had_focus = m_form != nullptr && m_form->isAncestorOf(focusWidget());
    if (m_form != nullptr) {
        m_form->hide();
        m_form->deleteLater();
        m_form = nullptr;
    }
    if (!m_beside->is_right_shown())
        return;
    m_form = new SoakForm(m_desk, batch);
    if (m_soaks > 0) {
        //: Title of a form: strips into another bin of a batch that soaks already
        m_form->set_title(tr("Flood another bin"));
    }
    m_beside->left()->addWidget(m_form);
    connect(m_form, &FormFrame::committed, this, &StepBody::entry_made);
    // Given up: the next one begins as the first did.
    connect(m_form, &FormFrame::cancelled, this, [this] { m_batch = {}; });
    if (had_focus)
        take_focus();
}

void SoakStep::take_focus() {
    if (m_form != nullptr && m_form->has_bins())
        m_form->field(QStringLiteral("bins"))->take_focus();
    else
        m_table->setFocus();
}

bool SoakStep::has_typed() const { return m_form != nullptr && m_form->is_edited(); }

void SoakStep::correct(qint64 id) {
    const Soak* soak = m_model->find(id);
    if (soak == nullptr || !m_can_correct)
        return;
    //: Title of a dialog; %1 the name of a bin
    auto* dialog = new CorrectionDialog(m_desk, tr("Correct the soak in %1").arg(soak->bin_name),
                                        //: What an entry says now; %n strips, %1 day and time
                                        tr("%n strips stand since %1.", nullptr, soak->strips).arg(m_desk.moment(soak->started)),
                                        this);
    auto* strips = dialog->form()->add(tr("Strips in the bin"), new CountField(m_desk), QStringLiteral("strips"));
    //: Label of a field
    auto* when = dialog->form()->add(tr("Flooded when"), new WhenField(m_desk), QStringLiteral("at"));
    strips->setObjectName(QStringLiteral("correct_strips"));
    strips->set_value(soak->strips);
    when->set_value(soak->started);
    const Soak before = *soak;
    dialog->set_correct([this, strips, when, before](const QString& why, const work::Confirmed&) {
        std::optional<int> count;
        if (const auto n = strips->value(); n && *n != before.strips)
            count = static_cast<int>(*n);
        std::optional<maths::Instant> started = corrected_moment(when->value(), before.started);
        if (started && *started == before.started)
            started.reset();
        return refusal_of(work::correct_soak(m_desk.workbook(), before.id, count, started, m_desk.doing(why)));
    });
    connect(dialog, &QDialog::accepted, this, &StepBody::entry_made);
    dialog->form()->set_draft(row_draft(QStringLiteral("correct_soak"), QStringLiteral("soak"), m_batch, QStringLiteral("shed/soaks"), id));
    dialog->open();
}

} // namespace soakbook::ui
