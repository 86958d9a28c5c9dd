// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shed/fill_form.h"

#include "core/work/count_check.h"
#include "ui/parts/count_words.h"
#include "ui/parts/day_field.h"
#include "ui/parts/quantity_field.h"
#include "ui/parts/text_field.h"
#include "ui/parts/theme.h"
#include "ui/shed/bag_form.h"
#include "ui/shed/reserved_rows.h"
#include "ui/shed/shed_draft.h"

#include <QLabel>

#include <algorithm>

namespace soakbook::ui {

std::vector<work::BatchBag> reserved_bags(const work::BatchView& batch) {
    std::vector<work::BatchBag> bags;
    std::copy_if(batch.bags.begin(), batch.bags.end(), std::back_inserter(bags),
                 [](const work::BatchBag& bag) { return !bag.packed && !bag.made_void; });
    return bags;
}

FillForm::FillForm(Desk& desk, const work::BatchView& batch, QWidget* parent)
    : FormFrame(desk, QString(), parent), m_desk(desk), m_batch(batch.line.id),
      m_to_bag(std::max(0, batch.strips_soaked - batch.strips_bagged)),
      m_each(strips_per_bag(desk.workbook(), batch.strip_kind).value_or(0)),
      //: A unit behind a number
      m_count(new CountField(desk, tr("bags"))), m_rows(new ReservedRows(desk, reserved_bags(batch))),
      m_sealed(new DayField(desk)), m_stands(new TextField) {
    set_columns(1);
    m_count->setObjectName(QStringLiteral("fill_count"));
    m_rows->setObjectName(QStringLiteral("fill_rows"));
    m_sealed->setObjectName(QStringLiteral("fill_sealed"));
    m_stands->setObjectName(QStringLiteral("fill_stands"));
    //: Stands in an empty field
    m_sealed->set_placeholder(tr("today"));
    //: Label of a field: how many of the labelled bags are filled now
    add(tr("Filled now"), m_count, QStringLiteral("count"));
    add_wide(tr("Labelled bags"), m_rows, QStringLiteral("rows"));
    //: Under lines for labelled bags
    add_widget(make_soft_label(tr("A line left empty waits on with its label."), Type::small, this), QStringLiteral("rows"),
               [this](const QString& rest, const QString& words) { m_rows->complain_at(rest, words); });
    add(tr("Sealed on"), m_sealed, QStringLiteral("sealed_on"));
    //: Label of a field: the place on the shelf
    add(tr("Stands"), m_stands, QStringLiteral("stands"));
    const QStringList places = bag_places(desk);
    m_stands->set_suggestions(places);
    m_stands->set_value(places.isEmpty() ? QString() : places.front());
    m_count->set_value(m_rows->size());
    spread();
    //: Button that writes filled bags down
    set_primary(tr("They are sealed"));
    set_commit([this](const work::Confirmed& confirmed) {
        if (const auto count = m_count->value(); count && *count > m_rows->size()) {
            const QString labels = QStringLiteral("n:%1").arg(m_rows->size());
            return std::optional(work::Refusal{work::Why::too_large, QStringLiteral("count"), {labels}, false});
        }
        const auto made = work::fill_reserved(m_desk.workbook(), entry(), m_desk.doing(), confirmed);
        if (made)
            Q_EMIT filled(made->bags);
        return refusal_of(made);
    });
    connect(m_count, &Field::edited, this, &FillForm::spread);
    connect(this, &FormFrame::edited, this, &FillForm::count_by_weight);
    //: What a form is for, after the code of a batch
    set_draft(shed_draft(QStringLiteral("fill"), QStringLiteral("fill_reserved"), batch.line.id, batch.line.code, tr("fill labelled bags")));
}

int FillForm::labels() const { return m_rows->size(); }

void FillForm::spread() {
    const qint64 bags = m_count->value().value_or(0);
    int left = m_to_bag;
    for (int i = 0; i < m_rows->size(); ++i) {
        const int strips = m_each > 0 ? std::min(left, m_each) : 0;
        const bool filled = i < bags && strips > 0;
        m_rows->set_strips(i, filled ? std::optional(strips) : std::nullopt);
        left -= filled ? strips : 0;
    }
}

void FillForm::count_by_weight() {
    std::optional<work::Outcome<work::CountBasis>> basis;
    m_rows->say_beside([this, &basis](maths::Mass net, int strips) {
        // One for all lines, and none looked for while no line has a weight.
        if (!basis)
            basis = work::count_basis(m_desk.workbook(), m_batch, std::nullopt, m_sealed->value());
        if (!*basis)
            return QString();
        const auto check = work::count_check(**basis, net, strips);
        return check ? count_words(m_desk, *check) : QString();
    });
}

work::FillReserved FillForm::entry() const {
    return {m_batch, m_rows->rows(), m_sealed->value(), m_stands->value()};
}

} // namespace soakbook::ui
