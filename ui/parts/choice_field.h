// SPDX-License-Identifier: GPL-3.0-or-later
// Fields for one of several: a list to choose from, and yes or no.
#pragma once

#include "ui/parts/field.h"

#include <QVariant>

#include <optional>
#include <vector>

class QButtonGroup;
class QComboBox;
class QPushButton;

namespace soakbook::ui {

/// One of several records or words. The first letters choose while the list is shut; Down or F4 opens it; the wheel
/// changes nothing.
class ChoiceField : public Field {
    Q_OBJECT

public:
    struct Choice {
        QVariant id;
        QString text;
        bool can_be_chosen = true; ///< shown, but not to be chosen: `why_not` says why
        QString why_not = {};
    };

    explicit ChoiceField(QWidget* parent = nullptr);
    bool is_empty() const override { return !value().isValid(); }
    QWidget* editor() const override;
    void clear() override;
    void set_name(const QString& name) override;

    void add(const QString& text, const QVariant& id);
    /// Replaces the list; what was chosen stays chosen if it is still there.
    void set_choices(const std::vector<Choice>& choices);
    /// What stands there while nothing is chosen.
    void set_placeholder(const QString& text);
    /// A first entry that means none, as "not said".
    void set_none_text(const QString& text);
    int size() const;

    QVariant value() const;
    /// The chosen id as a record's key, 0 while nothing is chosen.
    qint64 id() const { return value().toLongLong(); }
    QString text() const;
    /// Chooses the entry with that id; an id that is not there chooses nothing.
    void set_value(const QVariant& id);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void mark_wrong(bool wrong) override;

private:
    void put(const Choice& choice);
    QComboBox* m_combo;
    bool m_has_none = false;
};

/// Yes or no, or yes, no and not said; nothing is chosen until somebody says so.
class YesNoField : public Field {
    Q_OBJECT

public:
    enum class Ways { two, three };
    explicit YesNoField(Ways ways = Ways::two, QWidget* parent = nullptr);
    bool is_empty() const override { return !value().has_value(); }
    QWidget* editor() const override;
    void clear() override;
    void set_name(const QString& name) override;
    std::optional<bool> value() const;
    /// Nothing chooses "not said", or neither of two.
    void set_value(std::optional<bool> value);

protected:
    /// The first letter of an answer chooses it.
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    QPushButton* add_way(const QString& words, int id, const char* place);
    QButtonGroup* m_group;
};

} // namespace soakbook::ui
