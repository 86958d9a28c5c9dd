// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shed/correction_dialog.h"

#include "ui/parts/text_field.h"
#include "ui/parts/theme.h"

#include <QHBoxLayout>
#include <QPushButton>

namespace soakbook::ui {

CorrectionDialog::CorrectionDialog(const Habits& habits, const QString& title, const QString& what_stands, QWidget* parent)
    : FormDialog(habits, title, parent) {
    setObjectName(QStringLiteral("correction"));
    set_wanted_width(560);
    form()->set_intro(what_stands);
    form()->set_columns(1);
}

void CorrectionDialog::add_reason() {
    if (m_reason != nullptr)
        return;
    //: Label of the reason of a correction
    m_reason = form()->add_wide(tr("Why"), new TextField, QStringLiteral("reason"),
                                //: Help under the reason of a correction
                                tr("It stands beside the entry for good, with what it said before."));
    m_reason->editor()->setObjectName(QStringLiteral("correct_reason"));
    auto* picks = new QWidget(form());
    auto* row = new QHBoxLayout(picks);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(scaled(8));
    const QStringList reasons{
        //: A reason of a correction to pick
        tr("misread"),
        //: A reason of a correction to pick
        tr("mistyped"),
        //: A reason of a correction to pick
        tr("weighed again"),
        //: A reason of a correction to pick
        tr("wrong line"),
    };
    for (const QString& reason : reasons) {
        auto* pick = new QPushButton(reason, picks);
        pick->setAutoDefault(false);
        set_kind(pick, "row");
        connect(pick, &QPushButton::clicked, this, [this, reason] {
            m_reason->set_value(reason);
            m_reason->take_focus();
            Q_EMIT m_reason->edited();
        });
        row->addWidget(pick);
    }
    row->addStretch(1);
    form()->add_widget(picks);
}

void CorrectionDialog::set_correct(Correct correct) {
    m_can_correct = true;
    add_reason();
    //: Button of a dialog that puts an entry right
    form()->set_primary(tr("Correct it"));
    form()->set_commit(
        [this, correct](const work::Confirmed& confirmed) { return correct(m_reason->value(), confirmed); });
}

void CorrectionDialog::set_make_void(const QString& button, MakeVoid make_void) {
    add_reason();
    if (!m_can_correct) {
        form()->set_primary(button);
        form()->set_commit([this, make_void](const work::Confirmed&) { return make_void(m_reason->value()); });
        return;
    }
    QPushButton* secondary = form()->add_secondary(button);
    secondary->setObjectName(QStringLiteral("make_void"));
    connect(secondary, &QPushButton::clicked, this, [this, make_void] {
        if (const auto refusal = make_void(m_reason->value()))
            form()->show_refusal(*refusal);
        else
            accept();
    });
}

} // namespace soakbook::ui
