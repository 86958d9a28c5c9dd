// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/left_draft.h"

#include "ui/parts/drafts.h"
#include "ui/parts/habits.h"
#include "ui/parts/plain_window.h"
#include "ui/parts/theme.h"

#include <QCoreApplication>
#include <QDialog>
#include <QHBoxLayout>
#include <QLabel>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include <limits>

namespace soakbook::ui {

namespace {

struct LeftDraftWords {
    Q_DECLARE_TR_FUNCTIONS(LeftDraft)
};

QString lines_of(const Draft& draft) {
    QStringList lines;
    for (const DraftPart& part : draft.parts) {
        Draft one;
        one.parts = {part};
        lines << typed_words(one, std::numeric_limits<int>::max());
    }
    lines.removeAll(QString());
    return lines.join(QLatin1Char('\n'));
}

} // namespace

void show_left_draft(const Habits& habits, Drafts& drafts, const Draft& draft, QWidget* parent) {
    auto* dialog = new QDialog(parent);
    QVBoxLayout* column = lay_out_window(dialog, QStringLiteral("left_draft"), draft.place.title);
    column->addWidget(make_label(draft.place.title, Type::heading, dialog, true));
    column->addWidget(make_label(
        //: In a window that shows what was typed into a form and not entered; %1 is a day and a time
        LeftDraftWords::tr("Typed on %1 and not entered. The form cannot be opened any more: what it was about is gone, closed or "
                           "made void since. What was typed can be copied from here.")
            .arg(habits.moment(draft.typed)),
        Type::body, dialog, true));
    auto* typed = new QPlainTextEdit(lines_of(draft), dialog);
    typed->setReadOnly(true);
    typed->setTabChangesFocus(true);
    typed->setObjectName(QStringLiteral("left_draft_text"));
    //: Read aloud: a text that was typed into a form
    typed->setAccessibleName(LeftDraftWords::tr("What was typed"));
    column->addWidget(typed, 1);
    auto* foot = new QHBoxLayout;
    foot->addStretch(1);
    //: Button: what was typed before and not entered is given up
    auto* away = new QPushButton(LeftDraftWords::tr("Throw it away"), dialog);
    away->setObjectName(QStringLiteral("left_draft_away"));
    //: Button that closes a window; what was typed stays kept
    auto* keep = new QPushButton(LeftDraftWords::tr("Keep it"), dialog);
    keep->setObjectName(QStringLiteral("left_draft_keep"));
    keep->setDefault(true);
    foot->addWidget(away);
    foot->addWidget(keep);
    column->addLayout(foot);
    QObject::connect(keep, &QPushButton::clicked, dialog, &QDialog::reject);
    QObject::connect(away, &QPushButton::clicked, dialog, [dialog, id = draft.id(), store = &drafts] {
        store->remove(id);
        dialog->accept();
    });
    dialog->resize(scaled(560), scaled(360));
    dialog->open();
    keep->setFocus(Qt::TabFocusReason);
}

} // namespace soakbook::ui
