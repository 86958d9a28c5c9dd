// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shed/bag_step.h"

#include "ui/papers/bag_labels.h"
#include "ui/parts/cards.h"
#include "ui/parts/theme.h"
#include "ui/shed/bag_form.h"
#include "ui/shed/bags_table.h"
#include "ui/shed/beside.h"
#include "ui/shed/fill_form.h"
#include "ui/shed/form_switch.h"
#include "ui/shed/reserve_form.h"
#include "ui/shed/shed_cautions.h"
#include "ui/shed/step_names.h"

#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace soakbook::ui {

BagStep::BagStep(Desk& desk, QWidget* parent)
    : StepBody(parent), m_desk(desk), m_beside(new Beside(Beside::caution_width, this)),
      //: Stands where the bags of a batch will be listed
      m_teach(make_soft_label(tr("The bags of this batch will stand here with their codes and dates. Strips that dripped off go "
                                 "in a stack at a time; seal, then print the labels."),
                              Type::body)),
      m_table(new BagsTable(desk)),
      //: Under a table whose rows can be put right
      m_hint(make_soft_label(tr("Enter on a row puts a bag right or makes it void, with a reason."), Type::small)),
      m_print(new QPushButton), m_forms(new FormSwitch), m_bag(new BagForm(desk)), m_reserve(new ReserveForm(desk)),
      m_fill(new FillForm(desk, work::BatchView())),
      //: Turns to the form for filled bags
      m_bag_way(m_forms->add(tr("Fill bags"), m_bag, QStringLiteral("bag_fill"))),
      //: Turns to the form that gives out codes for bags to be filled later
      m_reserve_way(m_forms->add(tr("Labels first"), m_reserve, QStringLiteral("bag_reserve"))),
      //: Turns to the form that fills bags whose labels were printed before
      m_fill_way(m_forms->add(tr("Labelled bags"), m_fill, QStringLiteral("bag_fill_reserved"))) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(m_beside);
    m_print->setObjectName(QStringLiteral("print_labels"));
    m_beside->left()->addWidget(m_forms);
    m_beside->below()->addWidget(m_table);
    m_beside->below()->addWidget(m_hint);
    m_beside->below()->addWidget(m_print, 0, Qt::AlignLeft);
    m_beside->right()->addWidget(m_teach);
    m_beside->right()->addWidget(new Caution(bag_caution()));
    connect(m_bag, &BagForm::filled, this, &BagStep::print);
    connect(m_reserve, &ReserveForm::reserved, this, &BagStep::print);
    for (FormFrame* form : {static_cast<FormFrame*>(m_bag), static_cast<FormFrame*>(m_reserve)})
        connect(form, &FormFrame::committed, this, &StepBody::entry_made);
    connect(m_table, &BagsTable::corrected, this, &StepBody::entry_made);
    connect(m_print, &QPushButton::clicked, this, &BagStep::print_all);
}

void BagStep::show_batch(const work::BatchView& batch) {
    const bool other = m_batch != batch.line.id;
    m_batch = batch.line.id;
    m_bag->show_batch(batch);
    m_reserve->show_batch(batch);
    m_table->show_batch(batch);
    m_teach->setVisible(batch.bags.empty());
    m_hint->setVisible(!batch.bags.empty());
    m_to_print.clear();
    for (const work::BatchBag& bag : batch.bags) {
        if (!bag.made_void && bag.label != QLatin1String("printed"))
            m_to_print.push_back(bag.id);
    }
    m_print->setVisible(!batch.bags.empty());
    m_print->setText(m_to_print.empty()
                         //: Button: prints the labels of all bags of a batch once more
                         ? tr("Print all labels again")
                         //: Button: prints the labels of bags that have none
                         : tr("Print %n labels", nullptr, static_cast<int>(m_to_print.size())));
    const bool can = is_open(batch) && !batch.soaks.empty();
    m_beside->set_left_shown(can);
    m_beside->set_right_shown(can);
    std::vector<work::BagId> reserved;
    for (const work::BatchBag& bag : reserved_bags(batch))
        reserved.push_back(bag.id);
    if (other || reserved != m_reserved) {
        m_reserved = reserved;
        show_fill_form(batch);
    }
    m_forms->set_reachable(m_fill_way, !reserved.empty());
    if (other)
        m_forms->show_way(reserved.empty() ? m_bag_way : m_fill_way);
}

void BagStep::show_fill_form(const work::BatchView& batch) {
    m_fill = new FillForm(m_desk, batch);
    m_forms->put(m_fill_way, m_fill);
    connect(m_fill, &FormFrame::committed, this, &StepBody::entry_made);
}

void BagStep::take_focus() {
    if (!m_beside->is_right_shown()) {
        m_table->setFocus();
        return;
    }
    const char* first = m_forms->way() == m_bag_way ? "bags" : m_forms->way() == m_reserve_way ? "labels" : "rows";
    m_forms->form()->field(QLatin1String(first))->take_focus();
}

void BagStep::turn_to(const Intent& intent) {
    if (intent.task == QLatin1String("fill_reserved"))
        m_forms->show_way(m_fill_way);
    else if (intent.task == QLatin1String("bag"))
        m_forms->show_way(m_bag_way);
}

bool BagStep::has_typed() const { return m_bag->is_edited() || m_reserve->is_edited() || m_fill->is_edited(); }

void BagStep::print(const std::vector<work::BagId>& bags) {
    // After the form has closed its own books: the dialog stands over what it made.
    QMetaObject::invokeMethod(this, [this, bags] { offer_bag_labels(m_desk, bags, window()); }, Qt::QueuedConnection);
}

void BagStep::print_all() {
    std::vector<work::BagId> bags = m_to_print;
    if (bags.empty()) {
        if (const auto batch = work::batch_view(m_desk.workbook(), m_batch, m_desk.today())) {
            for (const work::BatchBag& bag : batch->bags) {
                if (!bag.made_void)
                    bags.push_back(bag.id);
            }
        }
    }
    print(bags);
}

} // namespace soakbook::ui
