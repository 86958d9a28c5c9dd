// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/yards/hives_form.h"

#include "core/exchange/quantity_text.h"
#include "ui/parts/choice_field.h"
#include "ui/parts/desk.h"
#include "ui/parts/quantity_field.h"
#include "ui/parts/result_card.h"
#include "ui/parts/text_field.h"
#include "ui/yards/named_field.h"
#include "ui/yards/yard_draft.h"
#include "ui/yards/yard_words.h"

namespace soakbook::ui {

HivesForm::HivesForm(Desk& desk, work::YardId yard, const QString& yard_name, QWidget* parent)
    //: Title of a form; %1 a yard
    : FormDialog(desk, tr("Hives for %1").arg(yard_name), parent), m_desk(desk), m_yard(yard) {
    setObjectName(QStringLiteral("hives_form"));
    make_fields();
    suggest_numbers();
    show_manner();
    //: Filled button of a form
    form()->set_primary(tr("Add the hives"));
    form()->set_commit([this](const work::Confirmed&) { return enter(); });
    connect(m_manner, &ChoiceField::edited, this, &HivesForm::show_manner);
    connect(m_name, &TextField::edited, this, [this] { m_name_typed = !m_name->is_empty(); });
    connect(form(), &FormFrame::edited, this, &HivesForm::show_result);
    form()->set_draft(yard_draft(QStringLiteral("new_hives"), QStringLiteral("show"), {m_yard.value}, QStringLiteral("yard_add_hives")));
}

void HivesForm::make_fields() {
    FormFrame* f = form();
    //: Field: numbered hives or a group
    m_manner = named(f->add_wide(tr("What stands there"), new ChoiceField(f), QStringLiteral("manner")), "hives_manner");
    //: One of two
    m_manner->add(tr("numbered hives"), static_cast<int>(Manner::numbered));
    //: One of two: hives without numbers that are treated as one
    m_manner->add(tr("a row of hives without numbers"), static_cast<int>(Manner::group));
    m_manner->set_value(static_cast<int>(Manner::numbered));
    //: Field: the letters before a hive's number
    m_prefix = named(f->add(tr("Letters before the number"), new TextField(f), QStringLiteral("prefix")), "hives_prefix");
    //: Field: the number of the first hive
    m_first = named(f->add(tr("First number"), new TextField(f), QStringLiteral("first"),
                           //: Help of a field
                           tr("01 gives 01, 02 … 10.")),
                    "hives_first");
    //: Field; the words at its right are "hives"
    m_count = named(f->add(tr("How many"), new CountField(m_desk, tr("hives"), f), QStringLiteral("count")), "hives_count");
    //: Field: how many make a group; the words at its right are "hives"
    m_hives = named(f->add(tr("How many"), new CountField(m_desk, tr("hives"), f), QStringLiteral("hives")), "hives_in_row");
    //: Field: what a group is called
    m_name = named(f->add(tr("Name of the row"), new TextField(f), QStringLiteral("name")), "hives_name");
    //: Field
    m_boxes = named(f->add(tr("Brood boxes"), new CountField(m_desk, {}, f), QStringLiteral("brood_boxes"),
                           //: Help of a field
                           tr("The dose may go by it.")), "hives_boxes");
    //: Field: how many frames are covered with bees
    m_frames = named(f->add(tr("Frames of bees"), new CountField(m_desk, {}, f), QStringLiteral("frames_of_bees"),
                            //: Help of a field
                            tr("Frames covered with bees; the dose may go by it.")), "hives_frames");
}

void HivesForm::suggest_numbers() {
    // The next number after the last hive of this yard, with its letters.
    for (const work::HiveEntry& hive : work::hives(m_desk.workbook(), m_yard, true)) {
        qsizetype digits = 0;
        while (digits < hive.name.size() && hive.name[hive.name.size() - 1 - digits].isDigit()) {
            ++digits;
        }
        if (hive.hives == 1 && digits > 0 && digits < 7) {
            const QString number = hive.name.right(digits);
            m_prefix->set_value(hive.name.chopped(digits));
            m_first->set_value(QStringLiteral("%1").arg(number.toInt() + 1, static_cast<int>(digits), 10, QLatin1Char('0')));
        }
    }
    if (m_first->is_empty()) {
        m_first->set_value(QStringLiteral("1"));
    }
}

HivesForm::Manner HivesForm::manner() const {
    return static_cast<Manner>(m_manner->value().toInt());
}

void HivesForm::show_manner() {
    const bool group = manner() == Manner::group;
    for (const char* key : {"prefix", "first", "count"}) {
        form()->set_shown(QLatin1String(key), !group);
    }
    for (const char* key : {"hives", "name"}) {
        form()->set_shown(QLatin1String(key), group);
    }
    //: At the right of a field
    const QString of_what = group ? tr("in the whole row") : tr("each");
    m_boxes->set_of_what(of_what);
    m_frames->set_of_what(of_what);
    show_result();
}

void HivesForm::show_result() {
    if (manner() == Manner::group) {
        const auto hives = as_int(m_hives->value());
        if (!m_name_typed && hives && *hives > 1) {
            m_name->set_value(YardWords::hive({}, *hives));
        }
        //: What follows from a form; %n hives
        form()->result()->set_text(hives && *hives > 1 ? tr("One line for %n hives: strips and counts are kept for the whole row.", nullptr, *hives)
                                                       : QString());
        return;
    }
    const work::HiveRow row = numbered();
    if (!row.first || !row.count || *row.count < 1 || *row.count > 1000) {
        form()->result()->clear();
        return;
    }
    const auto name = [&row](int number) {
        return QString(row.prefix + QStringLiteral("%1").arg(number, row.digits, 10, QLatin1Char('0')));
    };
    //: What follows from a form; rich text; %1 and %2 names of hives, %n hives
    form()->result()->set_text(*row.count == 1 ? name(*row.first).toHtmlEscaped()
                                               : tr("<b>%1</b> to <b>%2</b>, %n hives", nullptr, *row.count)
                                                     .arg(name(*row.first).toHtmlEscaped(), name(*row.first + *row.count - 1).toHtmlEscaped()));
}

work::HiveRow HivesForm::numbered() const {
    work::HiveRow row;
    row.yard = m_yard;
    row.prefix = m_prefix->value();
    const QString first = m_first->value();
    const auto read = exchange::read_count(first);
    row.first = read ? as_int(*read) : std::nullopt;
    row.digits = static_cast<int>(std::clamp<qsizetype>(first.size(), 1, 6));
    row.count = as_int(m_count->value());
    row.brood_boxes = as_int(m_boxes->value());
    row.frames_of_bees = as_int(m_frames->value());
    return row;
}

work::HiveEntry HivesForm::group() const {
    work::HiveEntry entry;
    entry.yard = m_yard;
    entry.name = m_name->value();
    entry.hives = as_int(m_hives->value()).value_or(0);
    entry.brood_boxes = as_int(m_boxes->value());
    entry.frames_of_bees = as_int(m_frames->value());
    return entry;
}

std::optional<work::Refusal> HivesForm::enter() {
    if (manner() == Manner::group) {
        if (m_hives->is_empty()) {
            return work::Refusal{work::Why::missing, QStringLiteral("hives"), {}, false};
        }
        return refusal_of(work::save_hive(m_desk.workbook(), group(), m_desk.doing()));
    }
    const work::HiveRow row = numbered();
    if (!row.first && !m_first->is_empty()) {
        return work::Refusal{work::Why::unreadable, QStringLiteral("first"), {}, false};
    }
    return refusal_of(work::add_hives(m_desk.workbook(), row, m_desk.doing()));
}

} // namespace soakbook::ui
