// SPDX-License-Identifier: GPL-3.0-or-later
// Where every kilogram of a batch went: what went in, and each part that left, one under the other, each beginning
// where the one before ends.
#pragma once

#include "core/exchange/quantity_text.h"
#include "ui/charts/plot.h"

#include <QLocale>

namespace soakbook::ui {

enum class FlowKind {
    went_in,
    went_out,
    still_here,  ///< in tank and bins, not poured yet
    unexplained, ///< with a sign: below nought more came out than went in
};

struct MassFlowPart {
    QString name; ///< "in pails"
    maths::Mass mass;
    FlowKind kind = FlowKind::went_out;
    bool beyond_limit = false;
};

struct MassFlow {
    std::vector<MassFlowPart> parts; ///< what went in first
    exchange::MassUnit unit = exchange::MassUnit::kilogram;
    QLocale locale;
};

class MassFlowChart : public Plot {
    Q_OBJECT

public:
    using Plot::Plot;
    void set_data(const MassFlow& shown);

    QString name() const override;
    bool is_empty() const override;
    QString empty_sentence() const override;
    ChartTable table() const override;
    std::unique_ptr<Plot> twin() const override;

protected:
    void fill() override;

private:
    QString text(maths::Mass mass) const;
    maths::Mass went_in() const;
    QString share_of(maths::Mass mass) const;
    MassFlow m_data;
};

} // namespace soakbook::ui
