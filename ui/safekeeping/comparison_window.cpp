// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/safekeeping/comparison_window.h"

#include "core/work/record_history.h"
#include "ui/parts/cards.h"
#include "ui/parts/desk.h"
#include "ui/parts/form.h"
#include "ui/parts/refusal_words.h"
#include "ui/parts/text_field.h"
#include "ui/parts/plain_window.h"
#include "ui/parts/theme.h"
#include "ui/safekeeping/apart_words.h"
#include "ui/safekeeping/entry_list.h"
#include "ui/safekeeping/record_differences.h"

#include <QFileInfo>
#include <QGuiApplication>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QScreen>
#include <QScrollArea>
#include <QVBoxLayout>

#include <algorithm>

namespace soakbook::ui {

ComparisonWindow::ComparisonWindow(Desk& desk, const QString& path, QWidget* parent) : QDialog(parent), m_desk(desk) {
    //: Title of a window; %1 is a file's name.
    const QString title = tr("Compared with %1").arg(QFileInfo(path).fileName());
    QVBoxLayout* column = lay_out_window(this, QStringLiteral("comparison_window"), title);
    column->addWidget(make_label(title, Type::heading));
    // On a small screen with large letters all but the form scrolls.
    auto* scroll = new QScrollArea;
    scroll->setWidgetResizable(true);
    scroll->setFocusPolicy(Qt::NoFocus);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    auto* inside = new QWidget;
    set_kind(inside, "page");
    m_page = new QVBoxLayout(inside);
    m_page->setContentsMargins(0, 0, 0, 0);
    m_page->setSpacing(12);
    scroll->setWidget(inside);
    scroll->viewport()->setAutoFillBackground(false);
    inside->setAutoFillBackground(false);
    column->addWidget(scroll, 1);
    m_sentence = make_label({}, Type::body, nullptr, true);
    m_sentence->setObjectName(QStringLiteral("comparison_sentence"));
    m_page->addWidget(m_sentence);
    m_answer = make_label({}, Type::strong, nullptr, true);
    m_answer->setObjectName(QStringLiteral("comparison_answer"));
    m_answer->setTextInteractionFlags(Qt::TextSelectableByMouse);
    m_answer->hide();
    m_page->addWidget(m_answer);

    // It stands here while there is no form with one of its own.
    //: Button that closes a window
    m_close = new QPushButton(tr("Close"), this);
    m_close->setObjectName(QStringLiteral("comparison_close"));
    connect(m_close, &QPushButton::clicked, this, &QDialog::reject);

    QGuiApplication::setOverrideCursor(Qt::WaitCursor);
    auto opened = work::Apart::open(desk.workbook(), path);
    QGuiApplication::restoreOverrideCursor();
    if (opened) {
        m_apart = std::move(*opened);
        build_lists();
        build_form();
        fill();
    } else {
        m_sentence->setText(not_compared_words(opened.error(), path));
        m_page->addStretch(1);
    }
    column->addWidget(m_close, 0, Qt::AlignRight);
    const QRect room = screen()->availableGeometry();
    const bool tall = m_lists && !m_lists->isHidden();
    resize(std::min(scaled(1080), room.width() - 32), tall ? std::min(scaled(720), room.height() - 48) : std::max(sizeHint().height(), scaled(220)));
    if (m_form && !m_form->isHidden())
        m_there->setFocus(Qt::TabFocusReason);
    else
        m_close->setFocus(Qt::TabFocusReason);
}

ComparisonWindow::~ComparisonWindow() = default;

void ComparisonWindow::build_lists() {
    m_lists = new QWidget;
    auto* all = new QVBoxLayout(m_lists);
    all->setContentsMargins(0, 0, 0, 0);
    all->setSpacing(12);
    m_beside = new QBoxLayout(QBoxLayout::LeftToRight);
    m_beside->setSpacing(12);
    m_card_here = new Card(QStringLiteral(" "));
    m_card_there = new Card(QStringLiteral(" "));
    //: What a screen reader calls a list.
    m_here = new EntryList(tr("Entries that stand only here"), false);
    m_here->setObjectName(QStringLiteral("entries_here"));
    //: What a screen reader calls a list.
    m_there = new EntryList(tr("Entries that stand only there"), true);
    m_there->setObjectName(QStringLiteral("entries_there"));
    m_card_here->set_flush();
    m_card_there->set_flush();
    m_card_here->column()->addWidget(m_here);
    m_card_there->column()->addWidget(m_there);
    m_beside->addWidget(m_card_here, 1);
    m_beside->addWidget(m_card_there, 1);
    all->addLayout(m_beside, 3);
    //: Head of a list: what the entry that is chosen above wrote, as it stands in both copies.
    auto* card = new Card(tr("What the chosen entry wrote"));
    card->set_flush();
    m_differences = new RecordDifferences;
    m_differences->setObjectName(QStringLiteral("record_differences"));
    card->column()->addWidget(m_differences);
    all->addWidget(card, 3);
    for (QWidget* list : {static_cast<QWidget*>(m_here), static_cast<QWidget*>(m_there), static_cast<QWidget*>(m_differences)})
        list->setMinimumHeight(scaled(140));
    m_page->addWidget(m_lists, 1);
    connect(m_here, &EntryList::current_changed, this, [this] { show_records(false); });
    connect(m_there, &EntryList::current_changed, this, [this] { show_records(true); });
    connect(m_there, &EntryList::ticks_changed, this, [this] { mind_ticks(); });
}

void ComparisonWindow::build_form() {
    if (m_apart->view().only_there.empty())
        return;
    m_form = new FormFrame(m_desk, {}, this);
    m_form->setObjectName(QStringLiteral("take_over_form"));
    m_stands_on = make_label({}, Type::body, nullptr, true);
    m_stands_on->setObjectName(QStringLiteral("stands_on"));
    set_kind(m_stands_on, "complaint");
    m_stands_on->hide();
    m_page->addWidget(m_stands_on);
    //: Label of a field.
    m_why = m_form->add_wide(tr("Reason"), new TextField(m_form), QStringLiteral("reason"),
                             //: Help beneath a field for a reason.
                             tr("It is kept with what is taken over."));
    m_why->setObjectName(QStringLiteral("take_over_reason"));
    m_form->set_commit([this](const work::Confirmed&) { return take_over(); });
    //: Button that closes a window
    connect(m_form->add_secondary(tr("Close")), &QPushButton::clicked, this, &QDialog::reject);
    connect(m_form, &FormFrame::committed, this, &ComparisonWindow::mind_ticks);
    connect(m_form, &FormFrame::cancelled, this, &QDialog::reject);
    layout()->addWidget(m_form);
}

void ComparisonWindow::resizeEvent(QResizeEvent* event) {
    QDialog::resizeEvent(event);
    if (m_beside)
        m_beside->setDirection(width() < scaled(640) ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
}

// The entry is made from the lists too.
void ComparisonWindow::keyPressEvent(QKeyEvent* event) {
    const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if (enter && event->modifiers().testFlag(Qt::ControlModifier) && m_form && !m_form->isHidden())
        m_form->commit();
    else
        QDialog::keyPressEvent(event);
}

void ComparisonWindow::fill() {
    const work::ApartView& view = m_apart->view();
    m_sentence->setText(how_apart_words(view));
    //: Head of a list of entries; %n is how many.
    m_card_here->set_heading(tr("Only here: %n", nullptr, static_cast<int>(view.only_here.size())));
    //: Head of a list of entries; %n is how many.
    m_card_there->set_heading(tr("Only there: %n", nullptr, static_cast<int>(view.only_there.size())));
    std::set<qint64> all;
    for (const work::LoneEntry& entry : view.only_there)
        all.insert(entry.key);
    m_records.clear();
    if (auto records = m_apart->records(all))
        m_records = std::move(*records);
    else
        m_sentence->setText(refusal_words(records.error(), m_desk));
    m_lists->setVisible(view.how != work::HowApart::same);
    m_card_here->setVisible(!view.only_here.empty());
    m_card_there->setVisible(!view.only_there.empty());
    m_here->set_entries(m_desk, view.only_here);
    m_there->set_entries(m_desk, view.only_there);
    show_records(!view.only_there.empty());
}

void ComparisonWindow::show_records(bool there) {
    if (!there) {
        if (m_here->current() != 0)
            m_differences->show_here(m_desk, work::lines_of_entry(m_desk.workbook(), m_here->current()));
        return;
    }
    std::vector<work::RecordApart> of_entry;
    for (const work::RecordApart& record : m_records)
        if (record.entries.count(m_there->current()))
            of_entry.push_back(record);
    m_differences->show_there(m_desk, of_entry);
}

const work::LoneEntry* ComparisonWindow::entry_there(qint64 key) const {
    const auto& entries = m_apart->view().only_there;
    const auto found = std::find_if(entries.begin(), entries.end(), [key](const work::LoneEntry& entry) { return entry.key == key; });
    return found == entries.end() ? nullptr : &*found;
}

void ComparisonWindow::mind_ticks() {
    if (!m_form)
        return;
    const std::set<qint64> ticked = m_there->ticked();
    //: The button that writes entries of another copy into this one; %n is how many.
    m_form->set_primary(tr("Take over %n entries", nullptr, static_cast<int>(ticked.size())));
    QString words;
    if (const auto why = m_apart->left_out(ticked)) {
        const work::LoneEntry* entry = entry_there(why->field.section(QLatin1Char('/'), 1).toLongLong());
        const work::LoneEntry* other = entry_there(why->facts.value(1).toLongLong());
        words = entry && other ? stands_on_words(*entry, *other) : refusal_words(*why, m_desk);
    }
    m_stands_on->setText(words);
    m_stands_on->setVisible(!words.isEmpty());
    const auto& entries = m_apart->view().only_there;
    const bool something_new = std::any_of(entries.begin(), entries.end(), [](const work::LoneEntry& entry) { return entry.something_new; });
    m_close->setVisible(!something_new);
    m_form->setVisible(something_new);
    if (!something_new)
        m_close->setFocus(Qt::OtherFocusReason);
    if (m_desk.no_entries_why().isEmpty())
        m_form->primary()->setEnabled(!ticked.empty() && words.isEmpty());
}

std::optional<work::Refusal> ComparisonWindow::take_over() {
    if (m_there->ticked().empty() || !m_stands_on->text().isEmpty())
        return work::Refusal{work::Why::missing, {}, {}, false};
    QGuiApplication::setOverrideCursor(Qt::WaitCursor);
    const auto taken = m_apart->take_over({m_there->ticked(), m_differences->theirs()}, m_desk.doing(m_why->value()));
    QGuiApplication::restoreOverrideCursor();
    if (!taken) {
        if (taken.error().field.startsWith(QStringLiteral("entries/")))
            m_there->choose(taken.error().field.section(QLatin1Char('/'), 1).toLongLong());
        return taken.error();
    }
    m_answer->setText(taken_over_words(*taken));
    m_answer->show();
    m_differences->forget_choices();
    m_why->clear();
    fill();
    return std::nullopt;
}

void open_comparison(Desk& desk, const QString& path, QWidget* parent) { (new ComparisonWindow(desk, path, parent))->open(); }

} // namespace soakbook::ui
