// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/reason_field.h"

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
    add_picks(form, picks, [reason](const QString& pick) {
        reason->set_value(pick);
        reason->take_focus();
        Q_EMIT reason->edited();
    });
    return reason;
}

void add_picks(FormFrame& form, const QStringList& picks, const std::function<void(const QString& pick)>& picked) {
    if (picks.isEmpty())
        return;
    auto* row = new QWidget;
    auto* flow = new FlowLayout(8, 8, row);
    for (const QString& pick : picks) {
        auto* button = new QPushButton(pick, row);
        button->setAutoDefault(false);
        set_kind(button, "row");
        //: Read aloud for a button that fills in a reason; %1 the reason
        button->setAccessibleName(ReasonFieldWords::tr("Reason: %1").arg(pick));
        QObject::connect(button, &QPushButton::clicked, row, [picked, pick] { picked(pick); });
        flow->addWidget(button);
    }
    form.add_widget(row);
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

QStringList strips_picks() {
    return {
        //: A usual reason why strips in or out of a hive are put right
        ReasonFieldWords::tr("miscounted"),
        //: A usual reason why strips in or out of a hive are put right
        ReasonFieldWords::tr("wrong hive"),
        //: A usual reason why strips in or out of a hive are put right
        ReasonFieldWords::tr("wrong day"),
        //: A usual reason why strips in or out of a hive are put right
        ReasonFieldWords::tr("mistyped"),
    };
}

QStringList naming_picks() {
    return {
        //: A usual reason why a name is changed
        ReasonFieldWords::tr("mistyped"),
        //: A usual reason why a name is changed
        ReasonFieldWords::tr("renumbered"),
        //: A usual reason why the day or state of a hive is put right
        ReasonFieldWords::tr("wrong day"),
    };
}

} // namespace soakbook::ui
