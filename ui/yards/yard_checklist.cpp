// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/yards/yard_checklist.h"

#include "ui/parts/theme.h"

#include <QCheckBox>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>

#include <algorithm>

namespace soakbook::ui {

YardChecklist::YardChecklist(const std::vector<Yard>& yards, QWidget* parent)
    : Field(parent), m_list(new QWidget(this)), m_grid(new QGridLayout(m_list)) {
    m_grid->setContentsMargins(0, 0, 0, 0);
    m_grid->setHorizontalSpacing(24);
    m_grid->setVerticalSpacing(0);
    row()->addWidget(m_list, 1);
    set_yards(yards);
}

void YardChecklist::set_yards(const std::vector<Yard>& yards) {
    for (QWidget* shown : m_list->findChildren<QWidget*>(QString(), Qt::FindDirectChildrenOnly)) {
        m_grid->removeWidget(shown);
        shown->hide();
        // One of them may have the word just now.
        shown->deleteLater();
    }
    m_boxes.clear();
    m_ids.clear();
    m_first = nullptr;
    int at = 0;
    for (const Yard& yard : yards) {
        //: A yard to tick; %1 its name, %2 what is said of it softly, such as "20 hives"
        auto* box = new QCheckBox(yard.beside.isEmpty() ? yard.name : tr("%1, %2").arg(yard.name, yard.beside), m_list);
        box->setMinimumHeight(scaled(control_height));
        box->setObjectName(QStringLiteral("round_yard_%1").arg(yard.id.value));
        connect(box, &QCheckBox::clicked, this, &YardChecklist::note_edit);
        m_grid->addWidget(box, at / 2, at % 2);
        ++at;
        m_boxes.push_back(box);
        m_ids.push_back(yard.id);
    }
    m_grid->setColumnStretch(1, yards.empty() ? 1 : 0);
    if (yards.empty()) {
        //: In place of a list of yards, before a button that adds one
        m_grid->addWidget(make_soft_label(tr("No yard yet."), Type::body, m_list, false), 0, 0);
        //: Button in place of a list of yards
        m_first = new QPushButton(tr("Add the first yard"), m_list);
        m_first->setObjectName(QStringLiteral("round_first_yard"));
        m_first->setAutoDefault(false);
        connect(m_first, &QPushButton::clicked, this, &YardChecklist::wants_first);
        m_grid->addWidget(m_first, 0, 1, Qt::AlignLeft);
    }
}

QWidget* YardChecklist::editor() const {
    return m_boxes.empty() ? static_cast<QWidget*>(m_first) : m_boxes.front();
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
