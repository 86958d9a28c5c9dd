// SPDX-License-Identifier: GPL-3.0-or-later
// Fields for days and hours. A day is typed (`3 oct`, `3/10`, `-2`) or picked from a calendar (F4 or Down).
#pragma once

#include "ui/parts/quantity_field.h"

class QToolButton;

namespace soakbook::ui {

class DayField : public QuantityField {
    Q_OBJECT

public:
    explicit DayField(const Habits& habits, QWidget* parent = nullptr);
    std::optional<maths::Day> value() const;
    void set_value(std::optional<maths::Day> value);
    void set_name(const QString& name) override;
    /// Opens the calendar under the field.
    void open_calendar();

protected:
    exchange::Read<QString> understand(const QString& text) const override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    QToolButton* m_button;
};

/// A time of day, as minutes since midnight: `14:30`, `1430`, `2 pm`.
class TimeField : public QuantityField {
    Q_OBJECT

public:
    explicit TimeField(const Habits& habits, QWidget* parent = nullptr);
    std::optional<int> value() const;
    void set_value(std::optional<int> minutes);

protected:
    exchange::Read<QString> understand(const QString& text) const override;
};

/// A moment: a day and a time. Left empty it is now, at the moment of asking; a day other than today wants its time.
class WhenField : public Field {
    Q_OBJECT

public:
    explicit WhenField(const Habits& habits, QWidget* parent = nullptr);
    /// Both parts are empty, which means now.
    bool is_empty() const override;
    QString problem() const override;
    QWidget* editor() const override;
    void clear() override;
    void set_name(const QString& name) override;
    /// The moment meant; now while the field is empty; nothing where it does not read.
    std::optional<maths::Instant> value() const;
    /// Nothing puts it back to now.
    void set_value(std::optional<maths::Instant> value);
    DayField* day() const { return m_day; }
    TimeField* time() const { return m_time; }

protected:
    QString understood_beneath() const override;
    void mark_wrong(bool wrong) override;

private:
    const Habits& m_habits;
    DayField* m_day;
    TimeField* m_time;
};

} // namespace soakbook::ui
