// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shed/leftovers_step.h"

#include "core/work/batch_cost.h"
#include "core/work/how_keeping.h"
#include "core/work/leftovers.h"
#include "ui/charts/chart_frame.h"
#include "ui/charts/mass_flow_chart.h"
#include "ui/papers/pail_labels.h"
#include "ui/parts/cards.h"
#include "ui/parts/how_button.h"
#include "ui/parts/state.h"
#include "ui/parts/theme.h"
#include "ui/shed/account_charts.h"
#include "ui/shed/batch_comparison.h"
#include "ui/shed/beside.h"
#include "ui/shed/close_form.h"
#include "ui/shed/correction_dialog.h"
#include "ui/shed/cost_words.h"
#include "ui/shed/form_switch.h"
#include "ui/shed/loss_form.h"
#include "ui/shed/losses_table.h"
#include "ui/shed/pails_table.h"
#include "ui/shed/pour_form.h"
#include "ui/shed/shed_cautions.h"
#include "ui/shed/step_names.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace soakbook::ui {

namespace {

constexpr int flow_height = 340;

} // namespace

LeftoversStep::LeftoversStep(Desk& desk, QWidget* parent)
    : StepBody(parent), m_desk(desk), m_beside(new Beside(Beside::form_width, this)), m_flow(new MassFlowChart),
      m_frame(new ChartFrame(m_flow)), m_standing(new StateMark(State::ready)), m_usual(make_label({}, Type::body, nullptr, true)), m_how_balance(new HowButton),
      m_cost(make_label({}, Type::body, nullptr, true)), m_how_cost(new HowButton), m_comparison(new BatchComparison(desk)),
      m_table(new PailsTable(desk)), m_losses(new LossesTable(desk)),
      //: Under a table whose rows can be put right
      m_hint(make_soft_label(tr("Enter on a row puts a pail's mass right, with a reason."), Type::small)),
      //: Button
      m_print(new QPushButton(tr("Pail labels"))),
      //: Button: a closed batch can take entries again
      m_open_again(new QPushButton(tr("Open it again"))), m_forms(new FormSwitch), m_pour(new PourForm(desk)),
      m_loss(new LossForm(desk)), m_close(new CloseForm(desk)),
      //: Turns to the form for pails
      m_pour_way(m_forms->add(tr("Pour"), m_pour, QStringLiteral("leftovers_pour"))),
      //: Turns to the form for a loss that has a name
      m_loss_way(m_forms->add(tr("Name a loss"), m_loss, QStringLiteral("leftovers_loss"))),
      //: Turns to the end of a batch
      m_close_way(m_forms->add(tr("Close"), m_close, QStringLiteral("leftovers_close"))) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(m_beside);
    m_frame->setFixedHeight(scaled(flow_height));
    m_beside->left()->addWidget(m_frame);
    auto* standing = new QHBoxLayout;
    standing->setSpacing(8);
    standing->addWidget(m_standing, 0, Qt::AlignTop);
    standing->addWidget(m_usual, 1);
    m_beside->left()->addLayout(standing);
    m_beside->left()->addWidget(m_how_balance, 0, Qt::AlignLeft);
    m_beside->below()->addWidget(m_table);
    m_beside->below()->addWidget(m_hint);
    m_beside->below()->addWidget(m_losses);
    auto* buttons = new QHBoxLayout;
    buttons->setSpacing(8);
    buttons->addWidget(m_print);
    buttons->addWidget(m_open_again);
    buttons->addStretch(1);
    m_beside->below()->addLayout(buttons);
    m_cost->setObjectName(QStringLiteral("strip_cost"));
    m_how_cost->setObjectName(QStringLiteral("strip_cost_how"));
    m_beside->below()->addWidget(m_cost);
    m_beside->below()->addWidget(m_how_cost, 0, Qt::AlignLeft);
    m_beside->below()->addWidget(m_comparison);
    m_beside->right()->addWidget(m_forms);
    m_beside->right()->addWidget(new Caution(pail_caution()));
    m_print->setObjectName(QStringLiteral("print_pail_labels"));
    m_open_again->setObjectName(QStringLiteral("open_again"));
    for (FormFrame* form : {static_cast<FormFrame*>(m_pour), static_cast<FormFrame*>(m_loss), static_cast<FormFrame*>(m_close)})
        connect(form, &FormFrame::committed, this, &StepBody::entry_made);
    connect(m_pour, &PourForm::poured, this, &LeftoversStep::print_labels);
    connect(m_table, &PailsTable::corrected, this, &StepBody::entry_made);
    connect(m_losses, &LossesTable::corrected, this, &StepBody::entry_made);
    connect(m_print, &QPushButton::clicked, this, [this] { print_labels(m_pails); });
    connect(m_open_again, &QPushButton::clicked, this, &LeftoversStep::open_again);
}

void LeftoversStep::show_batch(const work::BatchView& batch) {
    const std::size_t entries = batch.pails.size() + batch.losses.size() + batch.bags.size();
    const bool news = m_batch != batch.line.id || m_entries != entries;
    m_entries = entries;
    m_batch = batch.line.id;
    m_code = batch.line.code;
    m_pails.clear();
    for (const work::BatchPail& pail : batch.pails)
        m_pails.push_back(pail.id);
    show_flow(batch);
    show_cost(batch);
    m_comparison->show_batch(batch);
    m_table->show_batch(batch);
    m_losses->show_batch(batch);
    m_pour->show_batch(batch);
    m_loss->show_batch(batch.line.id, batch.line.code);
    m_close->show_batch(batch);
    m_hint->setVisible(!batch.pails.empty());
    m_print->setVisible(!batch.pails.empty());
    m_open_again->setVisible(batch.closed.has_value());
    m_beside->set_right_shown(is_open(batch));
    if (news && !has_typed())
        choose_way(batch);
}

void LeftoversStep::show_flow(const work::BatchView& batch) {
    m_flow->set_data(mass_flow(m_desk, batch));
    m_frame->refresh();
    const bool judged = batch.balance && batch.balance->limit && !too_early_to_explain(batch);
    m_standing->setVisible(judged);
    m_usual->setVisible(judged);
    if (judged) {
        const QString usual = m_desk.percent(*batch.balance->limit);
        m_standing->set_state(batch.balance->beyond_limit ? State::near : State::ready,
                              batch.balance->beyond_limit
                                  //: How the unexplained part of a batch stands
                                  ? tr("More than usual")
                                  //: How the unexplained part of a batch stands
                                  : tr("As usual"));
        //: After "As usual" or "More than usual"; %1 a share of what went in
        m_usual->setText(tr("up to %1 unexplained is usual here.").arg(m_desk.percent(*batch.balance->limit)));
    }
    m_how_balance->set_hows(batch.balance ? std::vector<work::How>{work::how_balance(*batch.balance)} : std::vector<work::How>{},
                            m_desk);
}

void LeftoversStep::show_cost(const work::BatchView& batch) {
    const auto cost = work::batch_cost(m_desk.workbook(), batch.line.id);
    const QString words = cost ? cost_words(m_desk, *cost) : QString();
    m_cost->setText(words);
    m_cost->setVisible(!words.isEmpty());
    m_how_cost->set_hows(cost && cost->each ? std::vector<work::How>{work::how_strip_cost(*cost)} : std::vector<work::How>{},
                         m_desk);
}

void LeftoversStep::choose_way(const work::BatchView& batch) {
    // Pour what is left; once pails stand there and all is bagged, close.
    const bool poured = !batch.pails.empty() || !batch.losses.empty();
    const bool explained = batch.balance && batch.balance->limit && !batch.balance->beyond_limit;
    const bool all_bagged = all_taken_out(batch) && batch.strips_bagged >= batch.strips_soaked;
    m_forms->show_way(all_bagged && (poured || explained) ? m_close_way : m_pour_way);
}

void LeftoversStep::take_focus() {
    if (!m_beside->is_right_shown())
        m_frame->setFocus();
    else if (m_forms->way() == m_pour_way)
        m_pour->field(QStringLiteral("pails"))->take_focus();
    else if (m_forms->way() == m_close_way)
        m_close->primary()->setFocus(Qt::OtherFocusReason);
    else
        m_loss->take_focus();
}

bool LeftoversStep::has_typed() const { return m_pour->is_edited() || m_loss->is_edited(); }

void LeftoversStep::print_labels(const std::vector<work::PailId>& pails) {
    // After the form has closed its own books: the dialog stands over what it made.
    QMetaObject::invokeMethod(this, [this, pails] { offer_pail_labels(m_desk, pails, window()); }, Qt::QueuedConnection);
}

void LeftoversStep::open_again() {
    //: Title of a dialog; %1 the code of a batch
    auto* dialog = new CorrectionDialog(m_desk, tr("Open batch %1 again").arg(m_code),
                                        //: What becomes of a batch that is opened again
                                        tr("It takes entries again, and is closed again when they are made."), this);
    //: Button of a dialog
    dialog->set_make_void(tr("Open it again"), [this](const QString& why) {
        return refusal_of(work::reopen_batch(m_desk.workbook(), m_batch, m_desk.doing(why)));
    });
    connect(dialog, &QDialog::accepted, this, &StepBody::entry_made);
    dialog->open();
}

} // namespace soakbook::ui
