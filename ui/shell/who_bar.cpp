// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/who_bar.h"

#include "ui/parts/flow_layout.h"
#include "ui/parts/icon_button.h"
#include "ui/parts/theme.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>

namespace soakbook::ui {

WhoBar::WhoBar(QWidget* parent) : QFrame(parent), m_row(new FlowLayout(8, 8)) {
    setAttribute(Qt::WA_StyledBackground);
    set_kind(this, "bar");
    //: Small cross: the question may wait
    auto* cross = new IconButton(QStringLiteral("close"), tr("Not now"), this);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(page_margin, 8, page_margin, 8);
    row->addLayout(m_row, 1);
    row->addWidget(cross, 0, Qt::AlignTop);
    connect(cross, &QAbstractButton::clicked, this, &QWidget::hide);
    hide();
}

void WhoBar::ask(const QStringList& people) {
    while (QLayoutItem* item = m_row->takeAt(0)) {
        delete item->widget();
        delete item;
    }
    //: Asked once a day, followed by one button a person
    m_row->addWidget(make_label(tr("Who makes entries today?"), Type::body, this));
    for (const QString& person : people) {
        auto* button = new QPushButton(person, this);
        //: Read aloud; %1 a person's name
        button->setAccessibleName(tr("Entries by %1").arg(person));
        set_kind(button, "row");
        m_row->addWidget(button);
        connect(button, &QPushButton::clicked, this, [this, person] {
            hide();
            Q_EMIT answered(person);
        });
    }
    show();
}

} // namespace soakbook::ui
