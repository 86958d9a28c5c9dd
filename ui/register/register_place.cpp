// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/register/register_place.h"

#include "core/work/record_history.h"
#include "core/work/short_questions.h"
#include "core/work/watch.h"
#include "ui/papers/history_dialog.h"
#include "ui/papers/paper_head.h"
#include "ui/papers/record_words.h"
#include "ui/papers/register_paper.h"
#include "ui/parts/cards.h"
#include "ui/parts/desk.h"
#include "ui/parts/looked_at.h"
#include "ui/parts/page_scroll.h"
#include "ui/parts/side_list.h"
#include "ui/parts/theme.h"
#include "ui/register/register_filter_bar.h"
#include "ui/register/register_tables.h"

#include <QCheckBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QStackedWidget>
#include <QVBoxLayout>

namespace soakbook::ui {

namespace {

constexpr int journal_most = 2000;
constexpr std::size_t most_lines_shown = 8;

class RegisterPlace : public Place {
    Q_OBJECT

public:
    explicit RegisterPlace(Desk& desk) : m_desk(desk) {
        //: Name of the list of the Register's pages, read aloud.
        m_list = new SideList(tr("Pages of the Register"));
        m_list->setObjectName(QStringLiteral("register_pages"));
        m_list->set_items({
            {1, {},
             //: A page of the Register, and what it holds.
             tr("Treatments"), tr("what went where, and when"), {}, {}},
            {2, {},
             //: A page of the Register, and what it holds.
             tr("Corrections"), tr("what it said before, and why"), {}, {}},
            {3, {},
             //: A page of the Register, and what it holds.
             tr("Hives without strips"), tr("dead, gone, left out"), {}, {}},
            {4, {},
             //: A page of the Register, and what it holds.
             tr("Journal"), tr("every entry, newest first"), {}, {}},
        });
        auto* page = new QWidget;
        auto* column = new QVBoxLayout(page);
        column->setContentsMargins(scaled(page_margin), scaled(16), scaled(page_margin), scaled(16));
        column->setSpacing(scaled(12));
        m_filter = new RegisterFilterBar(desk);
        column->addWidget(m_filter);
        m_sentence = new Sentence;
        column->addWidget(m_sentence);
        //: Over the journal, to be ticked: entries of other programs alone are shown
        m_outside = new QCheckBox(tr("Made outside Soakbook"));
        m_outside->setObjectName(QStringLiteral("register_outside"));
        column->addWidget(m_outside);
        m_about_outside = make_soft_label(
            //: Over the journal, while entries of other programs are shown
            tr("Another program changed these records in the file. They are kept and shown as they were found; nobody's name and no reason stand with them. "
               "Compare them with your papers, and put right what is wrong where the record stands."),
            Type::small);
        column->addWidget(m_about_outside);
        m_stack = new QStackedWidget;
        m_treatments = make_treatments_model(desk, this);
        m_corrections = make_corrections_model(desk, this);
        m_hives = make_hive_states_model(desk, this);
        m_journal = make_journal_model(desk, this);
        //: Names of tables, read aloud, and what stands in them while they are empty.
        add_table(QStringLiteral("register_treatments"), tr("Treatments"), m_treatments, {104, 110, 90, 90, 120, 70, 130, 84}, tr("No strips were hung in these days."));
        //: The same.
        add_table(QStringLiteral("register_corrections"), tr("Corrections"), m_corrections, {130, 130, 240, 180, 110}, tr("Nothing was corrected in these days, and nothing behind these treatments."));
        //: The same.
        add_table(QStringLiteral("register_hives"), tr("Hives without strips"), m_hives, {130, 160, 150, 150, 280}, tr("No hive was left without strips."));
        //: The same.
        add_table(QStringLiteral("register_journal"), tr("Journal"), m_journal, {80, 130, 280, 90, 120, 120}, tr("Nothing was entered yet."));
        m_detail = make_label({}, Type::body, nullptr, true);
        m_detail->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
        m_detail->setObjectName(QStringLiteral("register_detail"));
        column->addWidget(m_stack, 1);
        make_empty(column);
        auto* foot = new QHBoxLayout;
        foot->setSpacing(16);
        foot->addWidget(m_detail, 1);
        m_history = make_history_button(desk, this, [this] { return history(); }, QStringLiteral("register_history"));
        foot->addWidget(m_history, 0, Qt::AlignTop | Qt::AlignRight);
        column->addLayout(foot);
        //: Under the register: what it is, and what it is not.
        column->addWidget(make_soft_label(tr("Kept with the fields that veterinary registers usually ask for. Home-made strips are no authorised product: whether and how they may be "
                                             "used and recorded is for your authority to say. Records are commonly kept five years or longer."),
                                          Type::small));
        m_seal = make_soft_label({}, Type::small);
        m_seal->setObjectName(QStringLiteral("register_seal"));
        m_seal->setTextInteractionFlags(Qt::TextSelectableByMouse);
        column->addWidget(m_seal);
        auto* layout = new QVBoxLayout(this);
        layout->setContentsMargins(0, 0, 0, 0);
        layout->addWidget(new SplitPage(name(), {}, m_list, page));
        m_list->choose(1);
        make_actions();
        connect(m_list, &SideList::chosen, this, [this](qint64 id) { show_page(static_cast<int>(id) - 1); });
        connect(m_list, &SideList::entered_page, this, [this] { m_stack->currentWidget()->setFocus(); });
        connect(m_filter, &RegisterFilterBar::changed, this, [this] { fill(); });
        connect(m_outside, &QCheckBox::toggled, this, [this] { fill(); });
    }

    PlaceName place() const override { return PlaceName::register_; }
    //: A place in the navigation: the record of treatments.
    QString name() const override { return tr("Register"); }
    QString title() const override { return m_stack->currentWidget()->accessibleName(); }
    QList<QAction*> head_actions() override { return {m_print, m_csv}; }
    void take_focus() override {
        if (m_stack->isVisibleTo(this))
            m_stack->currentWidget()->setFocus();
        else
            m_empty->button()->setFocus();
    }

    void open(const Intent& intent) override {
        m_filter->set_batch({intent.task == QStringLiteral("batch") && !intent.ids.empty() ? intent.ids.front() : 0});
        const bool outside = intent.task == QStringLiteral("outside");
        const int page = intent.task == QStringLiteral("corrections") ? 1 : intent.task == QStringLiteral("hives") ? 2 : intent.task == QStringLiteral("journal") || outside ? 3 : 0;
        m_outside->setChecked(outside);
        m_list->choose(page + 1);
        show_page(page);
    }

    void refresh() override {
        m_filter->refresh();
        fill();
    }

private:
    void add_table(const QString& object, const QString& spoken, RowsModelBase* model, const std::vector<int>& widths, const QString& empty) {
        auto* table = new RecordTable(object, spoken);
        table->setObjectName(object);
        table->set_rows_model(model);
        table->set_start_widths(widths);
        table->set_empty_text(empty);
        table->set_two_lines(m_stack->count() == 0);
        if (m_stack->count() == 1)
            table->set_stretched_column(2);
        m_stack->addWidget(table);
        connect(table, &RecordTable::current_changed, this, [this] { show_detail(); });
    }

    void make_empty(QVBoxLayout* column) {
        m_empty = new EmptyPage(QStringLiteral("register"),
                                //: Head of an empty page.
                                tr("No treatment yet"),
                                //: On an empty page: what will stand there.
                                tr("Every strip hung in a hive stands here by itself: which bag and batch it came from, its acid, when it went in and "
                                   "came out, and who did it. Strips are hung and pulled in Yards."),
                                //: A button on an empty page.
                                tr("Go to Yards"));
        m_empty->button()->setObjectName(QStringLiteral("register_start"));
        connect(m_empty, &EmptyPage::started, this, [this] { Q_EMIT wishes({PlaceName::yards, {}, {}, {}}); });
        column->addWidget(m_empty, 1);
    }

    void make_actions() {
        //: A button: print the register.
        m_print = new QAction(tr("Print or PDF"), this);
        m_print->setObjectName(QStringLiteral("register_print"));
        connect(m_print, &QAction::triggered, this, [this] { offer_register(m_desk, m_filter->filter(), this); });
        //: A button: save the register for a spreadsheet.
        m_csv = new QAction(tr("For a spreadsheet"), this);
        m_csv->setObjectName(QStringLiteral("register_csv"));
        connect(m_csv, &QAction::triggered, this, [this] {
            const QString said = save_register_csv(m_desk, m_filter->filter(), this);
            if (!said.isEmpty()) {
                m_detail->setText(said);
                m_detail->show();
            }
        });
    }

    void show_page(int page) {
        m_stack->setCurrentIndex(page);
        fill();
        Q_EMIT title_changed();
    }

    void fill() {
        const QString told = entry_and_seal(m_desk) + QStringLiteral(". ") + seal_words();
        m_seal->setText(told);
        const work::RegisterFilter filter = m_filter->filter();
        std::vector<work::RegisterLine> lines = work::treatments(m_desk.workbook(), filter);
        const bool none = m_stack->currentIndex() == 0 && lines.empty() && !work::was_anything_hung(m_desk.workbook());
        m_empty->setVisible(none);
        m_stack->setVisible(!none);
        m_filter->setVisible(!none && m_stack->currentIndex() != 3);
        if (m_stack->currentIndex() == 0)
            show_sentence(lines);
        else
            m_sentence->clear();
        m_outside->setVisible(m_stack->currentIndex() == 3);
        m_about_outside->setVisible(m_outside->isVisibleTo(this) && m_outside->isChecked());
        m_sentence->setVisible(!none && (m_stack->currentIndex() == 0 || m_stack->currentIndex() == 3));
        m_treatments->set_rows(std::move(lines));
        std::vector<NumberedCorrection> corrections;
        for (work::CorrectionLine& line : shown_corrections(m_desk, filter))
            corrections.push_back({static_cast<qint64>(corrections.size()) + 1, std::move(line)});
        m_corrections->set_rows(std::move(corrections));
        std::vector<NumberedHiveState> hives;
        for (work::HiveStateLine& line : work::hive_states(m_desk.workbook(), filter))
            hives.push_back({static_cast<qint64>(hives.size()) + 1, std::move(line)});
        m_hives->set_rows(std::move(hives));
        if (m_stack->currentIndex() == 3)
            show_journal();
        show_detail();
    }

    void show_journal() {
        const bool outside = m_outside->isChecked();
        std::vector<work::JournalLine> entries = outside ? work::outside_journal(m_desk.workbook(), journal_most) : work::journal(m_desk.workbook(), journal_most);
        if (outside) {
            const work::OutsideNews all = work::outside_news(m_desk.workbook(), 0);
            //: In a sentence of figures, over the journal: changes that another program made.
            m_sentence->add(tr("<b>%n</b> change(s) made outside Soakbook", nullptr, all.count));
            // Shown is looked at: Due says nothing more of them.
            if (isVisible() && all.count > 0)
                set_outside_looked_at(work::workbook_uid(m_desk.workbook()), all.newest_seq);
        } else if (!entries.empty())
            //: In a sentence of figures, over the journal; %1 and %2 are numbers of entries.
            m_sentence->add(tr("entries <b>%1</b> to <b>%2</b>").arg(m_desk.count(entries.back().seq), m_desk.count(entries.front().seq)));
        m_journal->set_rows(std::move(entries));
    }

    void show_sentence(const std::vector<work::RegisterLine>& lines) {
        int strips = 0;
        int hanging = 0;
        int made_void = 0;
        maths::Mass acid{};
        for (const work::RegisterLine& line : lines) {
            if (!line.void_reason.isEmpty()) {
                ++made_void;
                continue;
            }
            strips += line.strips;
            acid += line.acid.value_or(maths::Mass{});
            hanging += line.pulled_on ? 0 : 1;
        }
        m_sentence->clear();
        //: In a sentence of figures.
        m_sentence->add(tr("<b>%n</b> treatment(s)", nullptr, static_cast<int>(lines.size()) - made_void));
        //: In a sentence of figures.
        m_sentence->add(tr("<b>%n</b> strip(s)", nullptr, strips));
        //: In a sentence of figures; %1 is a mass.
        m_sentence->add(tr("<b>%1</b> oxalic acid dihydrate").arg(m_desk.large(acid, 2)));
        if (hanging > 0)
            //: In a sentence of figures; treatments whose strips still hang.
            m_sentence->add(State::resting, tr("<b>%n</b> still hanging", nullptr, hanging));
        if (made_void > 0)
            //: In a sentence of figures; treatments made void.
            m_sentence->add(State::gone, tr("<b>%n</b> void, still shown", nullptr, made_void));
    }

    /// The row with the keyboard in full, since a note may be longer than its column.
    void show_detail() {
        auto* table = qobject_cast<RecordTable*>(m_stack->currentWidget());
        const qint64 id = table ? table->current_id() : 0;
        QString words;
        if (m_stack->currentIndex() == 0) {
            if (const work::RegisterLine* line = m_treatments->find(id))
                words = treatment_notes(*line, m_desk);
        } else if (m_stack->currentIndex() == 1) {
            if (const NumberedCorrection* c = m_corrections->find(id))
                words = c->line.record + QStringLiteral(": ") + correction_words(c->line, m_desk);
        } else if (m_stack->currentIndex() == 3 && id != 0) {
            words = entry_words(id);
        }
        m_history->setVisible(id != 0 && m_stack->currentIndex() != 2 && m_stack->isVisibleTo(this));
        m_detail->setText(words);
        m_detail->setVisible(!words.isEmpty());
    }

    /// What an entry of the journal changed, a line each.
    QString entry_words(qint64 seq) const {
        QStringList words;
        const std::vector<work::CorrectionLine> lines = work::lines_of_entry(m_desk.workbook(), seq);
        for (const work::CorrectionLine& line : lines) {
            if (words.size() == static_cast<qsizetype>(most_lines_shown))
                break;
            //: What an entry changed: %1 the kind of record, %2 its name or code, %3 what was changed
            words << tr("%1 %2: %3").arg(record_kind_words(line.table), line.record, correction_words(line, m_desk));
        }
        if (lines.size() > most_lines_shown)
            //: Under some lines that say what an entry changed; %n more lines are not shown
            words << tr("and %n more; History shows all", nullptr, static_cast<int>(lines.size() - most_lines_shown));
        return words.join(QLatin1Char('\n'));
    }

    /// Of the row with the keyboard; for an entry of the journal, of all records it touched.
    HistoryOf history() const {
        auto* table = qobject_cast<RecordTable*>(m_stack->currentWidget());
        const qint64 id = table ? table->current_id() : 0;
        if (id == 0)
            return {};
        if (m_stack->currentIndex() == 0)
            return history_of(m_desk, {}, QStringLiteral("placement"), id);
        if (m_stack->currentIndex() == 1) {
            const NumberedCorrection* c = m_corrections->find(id);
            return c == nullptr ? HistoryOf{} : history_of(m_desk, {}, c->line.table, c->line.row);
        }
        const std::vector<work::RecordRef> records = work::records_of_entry(m_desk.workbook(), id);
        if (m_stack->currentIndex() != 3 || records.empty())
            return {};
        //: Title of a window with the history of all records that an entry touched; %1 the number of the entry
        return {records.size() == 1 ? QString() : tr("the records of entry %1").arg(m_desk.count(id)), records, {}};
    }

    Desk& m_desk;
    SideList* m_list;
    RegisterFilterBar* m_filter;
    Sentence* m_sentence;
    QStackedWidget* m_stack;
    EmptyPage* m_empty = nullptr;
    RowsModel<work::RegisterLine>* m_treatments;
    RowsModel<NumberedCorrection>* m_corrections;
    RowsModel<NumberedHiveState>* m_hives;
    RowsModel<work::JournalLine>* m_journal;
    QLabel* m_detail;
    QPushButton* m_history;
    QCheckBox* m_outside;
    QLabel* m_about_outside;
    QLabel* m_seal;
    QAction* m_print = nullptr;
    QAction* m_csv = nullptr;
};

} // namespace

Place* make_register_place(Desk& desk) { return new RegisterPlace(desk); }

} // namespace soakbook::ui

#include "register_place.moc"
