// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/label_dialog.h"

#include "ui/parts/choice_box.h"
#include "ui/parts/theme.h"
#include "ui/print/ask_file.h"
#include "ui/print/preview_pane.h"
#include "ui/print/print_actions.h"
#include "ui/print/sheet_choice.h"
#include "ui/print/sheet_picture.h"

#include <QBoxLayout>
#include <QLabel>
#include <QMenu>
#include <QPushButton>
#include <QScreen>
#include <QScrollArea>
#include <QSettings>
#include <QSpinBox>
#include <QTimer>

#include <utility>

namespace soakbook::ui {

namespace {

constexpr int settle_ms = 60; // a dimension being typed is not set anew at every key

QString statements_key() { return QStringLiteral("labels/statements"); }

} // namespace

LabelDialog::LabelDialog(std::vector<LabelContent> labels, const QLocale& locale, Printed printed, QWidget* parent)
    : QDialog(parent), m_labels(std::move(labels)), m_locale(locale), m_printed(std::move(printed)), m_choice(new SheetChoice(this)),
      m_picture(new SheetPicture(this)), m_start(new QSpinBox(this)), m_start_row(new QWidget(this)), m_statements(new ChoiceBox(this)),
      m_message(make_label(QString(), Type::small, this, true)), m_done(make_soft_label(QString(), Type::small, this)),
      m_pane(new PreviewPane(this)), m_print(new QPushButton(this)), m_save(new QPushButton(this)), m_settle(new QTimer(this)) {
    //: title of a window
    setWindowTitle(tr("%n label(s)", nullptr, static_cast<int>(m_labels.size())));
    auto* upper = new QHBoxLayout;
    upper->setSpacing(0);
    upper->addWidget(make_side());
    upper->addWidget(m_pane, 1);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addLayout(upper, 1);
    column->addWidget(make_foot());
    m_settle->setSingleShot(true);
    m_settle->setInterval(settle_ms);
    connect(m_settle, &QTimer::timeout, this, &LabelDialog::lay_out);
    connect(m_choice, &SheetChoice::changed, this, [this] {
        m_choice->remember();
        m_settle->start();
    });
    connect(m_statements, &QComboBox::currentIndexChanged, this, [this] {
        QSettings().setValue(statements_key(), m_statements->currentData());
        lay_out();
    });
    connect(m_start, &QSpinBox::valueChanged, this, [this](int n) { set_start(n - 1); });
    connect(m_picture, &SheetPicture::start_chosen, this, &LabelDialog::set_start);
    resize(QSize(scaled(1040), scaled(720)).boundedTo(screen()->availableSize()));
    lay_out();
    m_print->setFocus();
}

LabelDialog::~LabelDialog() = default;

QWidget* LabelDialog::make_side() {
    auto* side = new QWidget(this);
    side->setAttribute(Qt::WA_StyledBackground);
    set_kind(side, "side");
    auto* column = new QVBoxLayout(side);
    column->setContentsMargins(scaled(16), scaled(16), scaled(16), scaled(16));
    column->setSpacing(scaled(10));
    column->addWidget(m_choice);

    auto* row = new QHBoxLayout(m_start_row);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(scaled(12));
    //: field: the number of the label on the first sheet that is printed first
    const QString begin = tr("Begin at label");
    m_start->setAccessibleName(begin);
    m_start->setButtonSymbols(QAbstractSpinBox::NoButtons);
    auto* beside = new QVBoxLayout;
    beside->addWidget(make_label(begin, Type::body));
    beside->addWidget(m_start);
    //: help to the field that says where to begin
    beside->addWidget(make_soft_label(tr("for a sheet that is used in part: type it, or click the first free label."), Type::small));
    beside->addStretch(1);
    row->addWidget(m_picture);
    row->addLayout(beside, 1);
    column->addWidget(m_start_row);

    //: field: which edition of the hazard statements
    const QString wording = tr("Wording of the precautions");
    //: an edition of the UN GHS
    m_statements->addItem(tr("UN GHS, edition 9 and later"), static_cast<int>(maths::StatementSet::from_rev_9));
    //: an edition of the UN GHS
    m_statements->addItem(tr("UN GHS, up to edition 8"), static_cast<int>(maths::StatementSet::up_to_rev_8));
    m_statements->setAccessibleName(wording);
    const int usual = static_cast<int>(maths::StatementSet::from_rev_9);
    m_statements->setCurrentIndex(std::max(0, m_statements->findData(QSettings().value(statements_key(), usual).toInt())));
    column->addWidget(make_label(wording, Type::body));
    column->addWidget(m_statements);
    column->addWidget(m_message);
    column->addStretch(1);
    //: beside the preview of labels
    column->addWidget(make_soft_label(tr("An aid for bags of your own use. It is no legal classification; the acid's safety data sheet and "
                                         "local rules come first."),
                                      Type::small));
    auto* scroll = new QScrollArea(this);
    scroll->setWidget(side);
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll->setFixedWidth(scaled(372));
    return scroll;
}

QWidget* LabelDialog::make_foot() {
    auto* foot = new QWidget(this);
    foot->setAttribute(Qt::WA_StyledBackground);
    set_kind(foot, "status_line");
    auto* row = new QHBoxLayout(foot);
    row->setContentsMargins(scaled(16), scaled(10), scaled(16), scaled(12));
    row->setSpacing(scaled(8));
    //: button with a menu: a page to try sheet and printer with
    auto* test = new QPushButton(tr("Test page"), foot);
    auto* menu = new QMenu(test);
    //: of the test page
    menu->addAction(tr("Print…"), this, &LabelDialog::print_test_page);
    //: of the test page
    menu->addAction(tr("Save as PDF…"), this, &LabelDialog::save_test_page);
    test->setMenu(menu);
    //: button: leaves the preview
    auto* close = new QPushButton(tr("Close"), foot);
    //: button: to a file
    m_save->setText(tr("Save as PDF…"));
    //: button: to a printer
    m_print->setText(tr("Print…"));
    set_kind(m_print, "primary");
    m_print->setDefault(true);
    for (QPushButton* button : {test, close, m_save}) {
        button->setAutoDefault(false);
    }
    connect(close, &QPushButton::clicked, this, &QDialog::reject);
    connect(m_save, &QPushButton::clicked, this, &LabelDialog::save);
    connect(m_print, &QPushButton::clicked, this, &LabelDialog::print);
    row->addWidget(test);
    row->addWidget(m_done, 1);
    row->addWidget(close);
    row->addWidget(m_save);
    row->addWidget(m_print);
    return foot;
}

void LabelDialog::set_start(int start) {
    if (m_start->value() != start + 1) {
        m_start->setValue(start + 1); // comes back here
        return;
    }
    lay_out();
}

void LabelDialog::say(const QString& words, bool wrong) {
    m_message->setText(words);
    m_message->setVisible(!words.isEmpty());
    set_kind(m_message, wrong ? "complaint" : "");
}

QString LabelDialog::message() const { return m_message->text(); }

void LabelDialog::lay_out() {
    m_settle->stop();
    m_done->clear();
    m_run.reset();
    const LabelSheet sheet = m_choice->sheet();
    const QString fault = m_choice->fault_words();
    if (fault.isEmpty()) {
        const QSignalBlocker quiet(m_start);
        m_start->setRange(1, sheet.labels_a_page());
        m_start_row->setVisible(!sheet.is_roll());
        m_picture->show_sheet(sheet, m_start->value() - 1, static_cast<int>(m_labels.size()));
        LabelStyle style;
        style.locale = m_locale;
        style.statements = static_cast<maths::StatementSet>(m_statements->currentData().toInt());
        auto run = set_labels(m_labels, sheet, m_start->value() - 1, style);
        if (run) {
            const std::vector<LabelPiece> left_out = run->left_out();
            m_run = std::make_shared<const LabelRun>(std::move(*run));
            say(left_out_words(left_out), false);
            m_pane->preview()->show_paper(paper_of(m_run));
        } else {
            const QString words = too_small_words(run.error().why, m_locale);
            say(words, true);
            m_pane->preview()->show_words(words);
        }
    } else {
        say(fault, true);
        m_pane->preview()->show_words(fault);
    }
    m_print->setEnabled(m_run != nullptr && !m_labels.empty());
    m_save->setEnabled(m_print->isEnabled());
}

QString LabelDialog::suggested_name() const {
    //: begins the name of a file with labels
    const QString name = tr("labels") + QLatin1Char(' ') + (m_labels.empty() ? QString() : m_labels.front().code);
    return plain_file_name(name, QStringLiteral("pdf"));
}

void LabelDialog::finish(bool done, const QString& words) {
    const QString noted = done && m_printed ? m_printed() : QString();
    m_done->setText(noted.isEmpty() ? words : noted);
}

void LabelDialog::print() {
    const PrintOutcome outcome = print_pages(this, paper_of(m_run));
    finish(outcome.done, outcome.words);
}

void LabelDialog::save() {
    const PrintOutcome outcome = save_pages(this, paper_of(m_run), suggested_name());
    finish(outcome.done, outcome.words);
}

void LabelDialog::print_test_page() {
    const QString fault = m_choice->fault_words();
    m_done->setText(fault.isEmpty() ? print_pages(this, test_page_of(m_choice->sheet())).words : fault);
}

void LabelDialog::save_test_page() {
    const QString fault = m_choice->fault_words();
    //: name of a file with a page to try a label sheet with
    const QString name = plain_file_name(tr("label test page"), QStringLiteral("pdf"));
    m_done->setText(fault.isEmpty() ? save_pages(this, test_page_of(m_choice->sheet()), name).words : fault);
}

} // namespace soakbook::ui
