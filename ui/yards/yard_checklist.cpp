// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/yards/yard_checklist.h"

#include "ui/parts/theme.h"

#include <QCheckBox>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>

#include <algorithm>

namespace soakbook::ui {

YardChecklist::YardChecklist(const std::vector<Yard>& yards, QWidget* parent) : Field(parent), m_list(new QWidget(this)) {
    auto* grid = new QGridLayout(m_list);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setHorizontalSpacing(24);
    grid->setVerticalSpacing(0);
    int at = 0;
    for (const Yard& yard : yards) {
        //: A yard to tick; %1 its name, %2 what is said of it softly, such as "20 hives"
        auto* box = new QCheckBox(yard.beside.isEmpty() ? yard.name : tr("%1, %2").arg(yard.name, yard.beside), m_list);
        box->setMinimumHeight(scaled(control_height));
        box->setObjectName(QStringLiteral("round_yard_%1").arg(yard.id.value));
        connect(box, &QCheckBox::clicked, this, &YardChecklist::note_edit);
        grid->addWidget(box, at / 2, at % 2);
        ++at;
        m_boxes.push_back(box);
        m_ids.push_back(yard.id);
    }
    if (yards.empty()) {
        //: In place of a list of yards
        grid->addWidget(make_soft_label(tr("No yard yet: add one first."), Type::body, m_list), 0, 0);
    }
    row()->addWidget(m_list, 1);
}

QWidget* YardChecklist::editor() const {
    return m_boxes.empty() ? m_list : m_boxes.front();
}

void YardChecklist::set_name(const QString& name) {
    m_list->setAccessibleName(name);
}

std::vector<work::YardId> YardChecklist::value() const {
    std::vector<work::YardId> chosen;
    for (std::size_t i = 0; i < m_boxes.size(); ++i) {
        if (m_boxes[i]->isChecked()) {
            chosen.push_back(m_ids[i]);
        }
    }
    return chosen;
}

void YardChecklist::set_value(const std::vector<work::YardId>& yards) {
    for (std::size_t i = 0; i < m_boxes.size(); ++i) {
        m_boxes[i]->setChecked(std::find(yards.begin(), yards.end(), m_ids[i]) != yards.end());
    }
}

} // namespace soakbook::ui
