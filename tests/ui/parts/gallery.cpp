// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/parts/gallery.h"

#include "ui/parts/cards.h"
#include "ui/parts/choice_field.h"
#include "ui/parts/course.h"
#include "ui/parts/day_field.h"
#include "ui/parts/form.h"
#include "ui/parts/page_scroll.h"
#include "ui/parts/record_table.h"
#include "ui/parts/rows_model.h"
#include "ui/parts/side_list.h"
#include "ui/parts/text_field.h"
#include "ui/parts/theme.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QTextDocument>

namespace soakbook::ui {

namespace {

struct BagRow {
    qint64 id;
    QString code;
    QString where;
    int strips;
    State state;
    QString word;
};

QWidget* make_table() {
    auto* card = new Card(QStringLiteral("Bags"));
    card->add_head_button(QStringLiteral("Labels"));
    auto* table = new RecordTable(QStringLiteral("gallery"), QStringLiteral("Bags"));
    auto* model = new RowsModel<BagRow>(
        {{.header = QStringLiteral("Bag"), .text = [](const BagRow& r) { return r.code; }, .type = CellType::code},
         {.header = QStringLiteral("Strips left"),
          .text = [](const BagRow& r) { return QString::number(r.strips); },
          .align = Qt::AlignRight,
          .type = CellType::strong,
          .sort_key = [](const BagRow& r) { return QVariant(r.strips); }},
         {.header = QStringLiteral("State"),
          .text = [](const BagRow& r) { return r.word; },
          .state = [](const BagRow& r) { return std::optional<State>(r.state); }},
         {.header = QStringLiteral("Where it stands"), .text = [](const BagRow& r) { return r.where; }, .type = CellType::soft}},
        [](const BagRow& r) { return r.id; }, table);
    table->set_rows_model(model);
    table->set_start_widths({110, 120, 220, 160});
    table->set_full_height(true);
    model->set_rows({{1, QStringLiteral("S4T2"), QStringLiteral("shelf 1"), 41, State::ready, QStringLiteral("ready")},
                     {2, QStringLiteral("S52E"), QStringLiteral("shelf 2"), 60, State::resting, QStringLiteral("rests until 25 Nov")},
                     {3, QStringLiteral("S3KA"), QStringLiteral("shelf 2"), 12, State::near, QStringLiteral("9 days left")},
                     {4, QStringLiteral("S2VB"), QStringLiteral("box by the door"), 3, State::past, QStringLiteral("past since 3 Oct")},
                     {5, QStringLiteral("S11C"), QString(), 0, State::gone, QStringLiteral("used up")}});
    table->choose(3);
    card->set_flush();
    card->column()->addWidget(table);
    return card;
}

QWidget* make_form(const Habits& habits) {
    auto* card = new Card;
    auto* form = new FormFrame(habits, QStringLiteral("Weigh a sample"));
    form->set_intro(QStringLiteral("Let the strips drip, count out ten, and weigh them together."));
    form->add_caution(QStringLiteral("Corrosive to eyes. Goggles and acid-proof gloves; rinsing water beside you; air the "
                                     "room. Follow the acid's safety data sheet."));
    form->add(QStringLiteral("Bin"), [] {
        auto* bin = new ChoiceField;
        bin->add(QStringLiteral("Bin 1, 480 strips"), 1);
        bin->add(QStringLiteral("Bin 2, 480 strips"), 2);
        bin->set_value(1);
        return bin;
    }(), QStringLiteral("bin"));
    auto* count = form->add(QStringLiteral("Strips on the scale"), new CountField(habits, QStringLiteral("strips")),
                            QStringLiteral("strips"));
    count->set_value(10);
    auto* mass = form->add(QStringLiteral("Weight together"), new MassField(habits, MassSize::small), QStringLiteral("weight"),
                           QStringLiteral("Without the tray: tare the scale first."));
    mass->set_text(QStringLiteral("12 oz"));
    auto* room = form->add(QStringLiteral("Room"), new TemperatureField(habits), QStringLiteral("room"));
    room->set_text(QStringLiteral("abc"));
    room->show_problem();
    form->add(QStringLiteral("When"), new WhenField(habits), QStringLiteral("at"));
    auto* day = form->add(QStringLiteral("Day of the label"), new DayField(habits), QStringLiteral("day"));
    day->set_text(QStringLiteral("-2"));
    auto* clear = form->add(QStringLiteral("Warm and clear?"), new YesNoField(YesNoField::Ways::three), QStringLiteral("clear"));
    clear->set_value(true);
    auto* part = form->add(QStringLiteral("Strength"), new PercentField(habits), QStringLiteral("strength"));
    part->set_text(QStringLiteral("40"));
    auto* code = form->add(QStringLiteral("Code"), new CodeField, QStringLiteral("code"));
    code->set_value(QStringLiteral("S52E"));
    auto* price = form->add(QStringLiteral("Price"), new MoneyField(habits, QStringLiteral("EUR")), QStringLiteral("price"));
    price->set_text(QStringLiteral("12.5"));
    form->add_wide(QStringLiteral("Note"), new NoteField, QStringLiteral("note"), QStringLiteral("Anything odd; it stands on the batch sheet."));
    form->result()->set_text(QStringLiteral("25.0 g each, <b>16.0 g taken up</b>, 6.7 g acid a strip."));
    form->result()->set_verdict(State::near, QStringLiteral("Light by 1.0 g"), QStringLiteral("under the band of 26 to 28 g."));
    form->result()->set_next(QStringLiteral("Soak on and weigh again about 14:30."));
    form->result()->set_how(QStringLiteral("Mean of 10 strips less the dry weight of 9.0 g."));
    form->set_primary(QStringLiteral("Log the sample"));
    form->add_secondary(QStringLiteral("One by one"));
    form->set_cancel_shown(true);
    card->column()->addWidget(form);
    return card;
}

QWidget* make_course() {
    auto* course = new StepCourse;
    const auto step = [course](const char* name, const char* summary, Step::Stage stage) {
        Step* made = course->add_step(QLatin1String(name));
        made->set_summary(QLatin1String(summary));
        made->set_stage(stage);
        made->set_body(make_label(QStringLiteral("What stands in the step while it is open."), Type::body, nullptr, true));
        return made;
    };
    step("Mix", "30.0 kg at 42.0 %, pail P3F whole (11.4 kg) + 7.8 kg acid + 10.8 kg glycerine", Step::Stage::done);
    step("Heat and clear", "clear at 08:05 after 5 stirs, highest 56 C", Step::Stage::done);
    step("Soak", "2 bins, 540 strips, since yesterday 15:30", Step::Stage::going_on)->set_open(true, true);
    step("Weigh", "not yet", Step::Stage::to_come);
    return course;
}

} // namespace

std::unique_ptr<QWidget> make_gallery(const Habits& habits) {
    auto window = std::make_unique<QWidget>();
    auto* page = new PageScroll;
    auto* whole = new QHBoxLayout(window.get());
    whole->setContentsMargins(0, 0, 0, 0);
    whole->addWidget(page);
    auto* sentence = new Sentence;
    sentence->add(QStringLiteral("<b>1486</b> strips ready"));
    sentence->add(QStringLiteral("<b>62</b> hives carry strips"));
    sentence->add(State::past, QStringLiteral("14 past their pull date"));
    sentence->add(State::near, QStringLiteral("228 strips near the limit"));
    sentence->set_remark(QStringLiteral("above: in date"));
    auto* figures = new Card;
    figures->column()->addWidget(sentence);
    page->column()->addWidget(figures);
    page->column()->addWidget(make_form(habits));
    page->column()->addWidget(make_table());
    page->column()->addWidget(make_course());
    auto* notice = new NoticeBar(QStringLiteral("Who makes entries today?"));
    notice->add_button(QStringLiteral("Ida"), true);
    notice->add_button(QStringLiteral("Jon"));
    notice->set_can_be_closed(true);
    page->column()->addWidget(notice);
    page->column()->addStretch(1);
    return window;
}

std::unique_ptr<QWidget> make_side_gallery() {
    auto* list = new SideList(QStringLiteral("Batches"));
    list->set_items({{.id = 1, .code = QStringLiteral("B7K"), .head = QStringLiteral("24 Nov"), .below = QStringLiteral("Tank 2, 2 bins"),
                      .state = State::resting, .state_word = QStringLiteral("Soaking")},
                     {.id = 2, .code = QStringLiteral("B6H"), .head = QStringLiteral("11 Nov"), .below = QStringLiteral("540 strips, 9 bags"),
                      .state = State::ready, .state_word = QStringLiteral("Bagged")},
                     {.id = 3, .code = QStringLiteral("B5D"), .head = QStringLiteral("2 Sep"), .below = QStringLiteral("600 strips"),
                      .state = State::gone, .state_word = QStringLiteral("Closed")}});
    list->choose(1);
    auto page = std::make_unique<SplitPage>(
        QStringLiteral("Batches"), QStringLiteral("New batch"), list,
        new EmptyPage(QStringLiteral("tank"), QStringLiteral("No batch yet"),
                      QStringLiteral("Here each batch stands as its course, from the mix to the leftovers. Begin with what goes into the tank."),
                      QStringLiteral("Start a batch")));
    return page;
}

QStringList clipped_texts(const QWidget* top) {
    QStringList clipped;
    for (const QLabel* label : top->findChildren<QLabel*>()) {
        if (!label->isVisibleTo(top) || label->text().isEmpty()) {
            continue;
        }
        const int needed = label->wordWrap() ? label->heightForWidth(label->width()) : label->sizeHint().height();
        const bool too_wide = !label->wordWrap() && label->sizeHint().width() > label->width();
        if (needed > label->height() || too_wide) {
            clipped << label->text();
        }
    }
    for (const QPushButton* button : top->findChildren<QPushButton*>()) {
        if (button->isVisibleTo(top) && (button->width() < button->sizeHint().width() || button->height() < button->minimumSizeHint().height())) {
            clipped << button->text();
        }
    }
    return clipped;
}

} // namespace soakbook::ui
