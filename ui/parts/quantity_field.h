// SPDX-License-Identifier: GPL-3.0-or-later
// Fields for quantities, typed as people write them; each shows at once how it understood the text.
#pragma once

#include "ui/parts/entry_line.h"
#include "ui/parts/field.h"
#include "ui/parts/habits.h"

#include <optional>

namespace soakbook::ui {

/// A field over one line of text that stands for a value.
class QuantityField : public Field {
    Q_OBJECT

public:
    bool is_empty() const override { return m_line->text().trimmed().isEmpty(); }
    QString problem() const override;
    QWidget* editor() const override { return m_line; }
    void clear() override;
    /// The text as it stands, for tests and for keeping what was typed.
    QString text() const { return m_line->text(); }
    /// Puts text there as if it had been set, not typed; edited() stays silent.
    void set_text(const QString& text);
    void set_placeholder(const QString& text) { m_line->setPlaceholderText(text); }
    void set_read_only(bool read_only) { m_line->setReadOnly(read_only); }

protected:
    QuantityField(const Habits& habits, QWidget* parent);

    /// How `text` reads: in words for the user, or why not. Never called with an empty text.
    virtual exchange::Read<QString> understand(const QString& text) const = 0;
    /// What the field shows at its right while it is empty: its unit.
    virtual QString unit_sign() const { return {}; }
    QString understood_beneath() const override;
    void mark_wrong(bool wrong) override;
    /// Asks understand() again and shows the answer.
    void refresh_aside();
    const Habits& habits() const { return m_habits; }
    EntryLine* line() const { return m_line; }

private:
    const Habits& m_habits;
    EntryLine* m_line;
};

enum class MassSize { large, small };

/// A mass: `large` in the user's unit for cans and pails, `small` in the one for strips.
class MassField : public QuantityField {
    Q_OBJECT

public:
    MassField(const Habits& habits, MassSize size, QWidget* parent = nullptr);
    std::optional<maths::Mass> value() const;
    void set_value(std::optional<maths::Mass> value);

protected:
    exchange::Read<QString> understand(const QString& text) const override;
    QString unit_sign() const override;

private:
    exchange::MassUnit unit() const;
    MassSize m_size;
};

class TemperatureField : public QuantityField {
    Q_OBJECT

public:
    explicit TemperatureField(const Habits& habits, QWidget* parent = nullptr);
    std::optional<maths::Temperature> value() const;
    void set_value(std::optional<maths::Temperature> value);

protected:
    exchange::Read<QString> understand(const QString& text) const override;
    QString unit_sign() const override;
};

class PercentField : public QuantityField {
    Q_OBJECT

public:
    explicit PercentField(const Habits& habits, QWidget* parent = nullptr);
    std::optional<maths::Fraction> value() const;
    void set_value(std::optional<maths::Fraction> value);

protected:
    exchange::Read<QString> understand(const QString& text) const override;
    QString unit_sign() const override;
};

/// A whole number; `of_what` ("strips", "days") stands softly at its right.
class CountField : public QuantityField {
    Q_OBJECT

public:
    explicit CountField(const Habits& habits, const QString& of_what = {}, QWidget* parent = nullptr);
    std::optional<qint64> value() const;
    void set_value(std::optional<qint64> value);
    void set_of_what(const QString& words);

protected:
    exchange::Read<QString> understand(const QString& text) const override;
    QString unit_sign() const override { return m_of_what; }

private:
    QString m_of_what;
};

/// An amount of money; `currency` is the sign of the user's currency, or nothing.
class MoneyField : public QuantityField {
    Q_OBJECT

public:
    explicit MoneyField(const Habits& habits, const QString& currency = {}, QWidget* parent = nullptr);
    std::optional<maths::Money> value() const;
    void set_value(std::optional<maths::Money> value);

protected:
    exchange::Read<QString> understand(const QString& text) const override;
    QString unit_sign() const override { return m_currency; }

private:
    QString m_currency;
};

} // namespace soakbook::ui
