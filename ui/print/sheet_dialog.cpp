// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/sheet_dialog.h"

#include "ui/parts/theme.h"
#include "ui/print/ask_file.h"
#include "ui/print/preview_pane.h"
#include "ui/print/print_actions.h"
#include "ui/print/sheet_pages.h"

#include <QBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QScreen>

#include <utility>

namespace soakbook::ui {

SheetDialog::SheetDialog(const PaperSheet& sheet, const QString& file, Printed printed, QWidget* parent)
    : QDialog(parent), m_paper(paper_of(sheet)), m_file(plain_file_name(file, QStringLiteral("pdf"))), m_printed(std::move(printed)),
      m_pane(new PreviewPane(this)), m_words(make_soft_label(QString(), Type::small, this)) {
    setWindowTitle(sheet.subtitle.isEmpty() ? sheet.title : sheet.title + QStringLiteral(" · ") + sheet.subtitle);
    //: button: to a printer
    auto* print_button = new QPushButton(tr("Print…"), this);
    //: button: to a file
    auto* save_button = new QPushButton(tr("Save as PDF…"), this);
    //: button: leaves the preview
    auto* close_button = new QPushButton(tr("Close"), this);
    set_kind(print_button, "primary");
    print_button->setDefault(true);
    for (QPushButton* button : {save_button, close_button}) {
        button->setAutoDefault(false);
    }
    connect(print_button, &QPushButton::clicked, this, &SheetDialog::print);
    connect(save_button, &QPushButton::clicked, this, &SheetDialog::save);
    connect(close_button, &QPushButton::clicked, this, &QDialog::reject);
    auto* bar = new QWidget(this);
    bar->setAttribute(Qt::WA_StyledBackground);
    set_kind(bar, "status_line");
    auto* foot = new QHBoxLayout(bar);
    foot->setContentsMargins(scaled(16), scaled(10), scaled(16), scaled(12));
    foot->setSpacing(scaled(8));
    foot->addWidget(m_words, 1);
    foot->addWidget(close_button);
    foot->addWidget(save_button);
    foot->addWidget(print_button);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(m_pane, 1);
    column->addWidget(bar);
    resize(QSize(scaled(sheet.page.landscape ? 980 : 760), scaled(720)).boundedTo(screen()->availableSize()));
    m_pane->preview()->show_paper(m_paper);
    m_pane->preview()->setFocus();
}

void SheetDialog::print() {
    const PrintOutcome outcome = print_pages(this, m_paper);
    finish(outcome.done, outcome.words);
}

void SheetDialog::save() {
    const PrintOutcome outcome = save_pages(this, m_paper, m_file);
    finish(outcome.done, outcome.words);
}

void SheetDialog::finish(bool done, const QString& words) {
    const QString noted = done && m_printed ? m_printed() : QString();
    m_words->setText(noted.isEmpty() ? words : noted);
}

} // namespace soakbook::ui
