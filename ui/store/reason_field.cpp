// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/store/reason_field.h"

#include "ui/parts/flow_layout.h"
#include "ui/parts/form.h"
#include "ui/parts/text_field.h"
#include "ui/parts/theme.h"

#include <QCoreApplication>
#include <QPushButton>

namespace soakbook::ui {

namespace {

struct ReasonFieldWords {
    Q_DECLARE_TR_FUNCTIONS(ReasonField)
};

} // namespace

TextField* add_reason(FormFrame& form, const QString& help, const QStringList& picks) {
    //: Label of a field
    auto* reason = form.add_wide(ReasonFieldWords::tr("Reason"), new TextField, QStringLiteral("reason"), help);
    reason->setObjectName(QStringLiteral("reason"));
    reason->set_suggestions(picks);
    if (picks.isEmpty())
        return reason;
    auto* row = new QWidget;
    auto* flow = new FlowLayout(8, 8, row);
    for (const QString& pick : picks) {
        auto* button = new QPushButton(pick, row);
        button->setAutoDefault(false);
        set_kind(button, "row");
        //: Read aloud for a button that fills in a reason; %1 the reason
        button->setAccessibleName(ReasonFieldWords::tr("Reason: %1").arg(pick));
        QObject::connect(button, &QPushButton::clicked, reason, [reason, pick] {
            reason->set_value(pick);
            reason->take_focus();
            Q_EMIT reason->edited();
        });
        flow->addWidget(button);
    }
    form.add_widget(row);
    return reason;
}

QString correction_help() {
    //: Help under the reason of a correction
    return ReasonFieldWords::tr("It stands beside the entry for good, with what it said before.");
}

QStringList correction_picks() {
    return {
        //: A usual reason of a correction
        ReasonFieldWords::tr("misread"),
        //: A usual reason of a correction
        ReasonFieldWords::tr("mistyped"),
        //: A usual reason of a correction
        ReasonFieldWords::tr("weighed again"),
        //: A usual reason of a correction
        ReasonFieldWords::tr("wrong bag"),
    };
}

} // namespace soakbook::ui
