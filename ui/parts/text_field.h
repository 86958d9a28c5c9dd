// SPDX-License-Identifier: GPL-3.0-or-later
// Fields for words: a name, a code as it stands on a label, a note of several lines.
#pragma once

#include "ui/parts/field.h"

class QLineEdit;
class QPlainTextEdit;

namespace soakbook::ui {

class TextField : public Field {
    Q_OBJECT

public:
    explicit TextField(QWidget* parent = nullptr);
    bool is_empty() const override { return value().isEmpty(); }
    QWidget* editor() const override;
    void clear() override;
    /// What was typed, without blanks at its ends.
    virtual QString value() const;
    void set_value(const QString& text);
    void set_placeholder(const QString& text);
    void set_read_only(bool read_only);
    /// Words to choose from while typing; anything else may be typed too.
    void set_suggestions(const QStringList& words);

protected:
    QLineEdit* line() const { return m_line; }

private:
    QLineEdit* m_line;
};

/// A code typed or scanned: shown in the code type, given back in capitals without blanks.
class CodeField : public TextField {
    Q_OBJECT

public:
    explicit CodeField(QWidget* parent = nullptr);
    QString value() const override;
};

/// Several lines; Enter goes on to the next field, Shift+Enter begins a new line.
class NoteField : public Field {
    Q_OBJECT

public:
    explicit NoteField(QWidget* parent = nullptr);
    bool is_empty() const override { return value().isEmpty(); }
    QWidget* editor() const override;
    void clear() override;
    QString value() const;
    void set_value(const QString& text);
    void set_placeholder(const QString& text);

protected:
    void changeEvent(QEvent* event) override;

private:
    void set_height();
    QPlainTextEdit* m_text;
};

} // namespace soakbook::ui
