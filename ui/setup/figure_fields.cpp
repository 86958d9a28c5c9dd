// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/setup/figure_fields.h"

#include "ui/parts/choice_field.h"
#include "ui/parts/quantity_field.h"

#include <QCoreApplication>

namespace soakbook::ui {

namespace {
class FigureFieldsWords {
    Q_DECLARE_TR_FUNCTIONS(FigureFields)
};

QString unit_words(work::FigureUnit unit) {
    switch (unit) {
    case work::FigureUnit::months:
        //: Unit behind a number.
        return FigureFieldsWords::tr("months");
    case work::FigureUnit::days:
        //: Unit behind a number.
        return FigureFieldsWords::tr("days");
    case work::FigureUnit::hours:
        //: Unit behind a number.
        return FigureFieldsWords::tr("hours");
    case work::FigureUnit::minutes:
        //: Unit behind a number.
        return FigureFieldsWords::tr("minutes");
    case work::FigureUnit::strips:
        //: Unit behind a number.
        return FigureFieldsWords::tr("strips");
    case work::FigureUnit::percent:
    case work::FigureUnit::temperature:
    case work::FigureUnit::choice:
        break;
    }
    return {};
}
} // namespace

Field* make_figure_field(work::Figure figure, const Habits& habits) {
    const work::FigureInfo& info = work::info(figure);
    Field* field = nullptr;
    switch (info.unit) {
    case work::FigureUnit::percent:
        field = new PercentField(habits);
        break;
    case work::FigureUnit::temperature:
        field = new TemperatureField(habits);
        break;
    case work::FigureUnit::choice: {
        auto* choice = new ChoiceField;
        if (figure == work::Figure::pails_whole) {
            //: A choice for leftover pails: each goes into a mix whole, by itself.
            choice->add(FigureFieldsWords::tr("each pail whole"), 1);
            //: A choice for leftover pails: stricter, all pails poured at one time go in together.
            choice->add(FigureFieldsWords::tr("all pails of one pour together"), 2);
        } else {
            //: A choice: nothing said.
            choice->set_none_text(FigureFieldsWords::tr("not said"));
            //: A choice for strips that still rest.
            choice->add(FigureFieldsWords::tr("asked about"), 0);
            //: A choice for strips that still rest.
            choice->add(FigureFieldsWords::tr("refused"), 1);
        }
        field = choice;
        break;
    }
    default:
        field = new CountField(habits, unit_words(info.unit));
    }
    field->setObjectName(QStringLiteral("figure_") + QLatin1String(info.key));
    return field;
}

std::optional<qint64> figure_value(const Field* field, work::Figure figure) {
    const auto count_of = [](const auto& value) { return value ? std::optional<qint64>(value->count) : std::nullopt; };
    switch (work::info(figure).unit) {
    case work::FigureUnit::percent:
        return count_of(static_cast<const PercentField*>(field)->value());
    case work::FigureUnit::temperature:
        return count_of(static_cast<const TemperatureField*>(field)->value());
    case work::FigureUnit::choice: {
        const QVariant value = static_cast<const ChoiceField*>(field)->value();
        return value.isValid() ? std::optional<qint64>(value.toLongLong()) : std::nullopt;
    }
    default:
        return static_cast<const CountField*>(field)->value();
    }
}

void set_figure_value(Field* field, work::Figure figure, std::optional<qint64> value) {
    switch (work::info(figure).unit) {
    case work::FigureUnit::percent:
        static_cast<PercentField*>(field)->set_value(value ? std::optional(maths::Fraction{*value}) : std::nullopt);
        break;
    case work::FigureUnit::temperature:
        static_cast<TemperatureField*>(field)->set_value(value ? std::optional(maths::Temperature{*value})
                                                               : std::nullopt);
        break;
    case work::FigureUnit::choice:
        static_cast<ChoiceField*>(field)->set_value(value ? QVariant(static_cast<int>(*value)) : QVariant());
        break;
    default:
        static_cast<CountField*>(field)->set_value(value);
    }
}

} // namespace soakbook::ui
