// SPDX-License-Identifier: GPL-3.0-or-later
// What every field has: an editor, a line beneath it that says how the text was understood, what is wrong with it, or what
// it is for, and one signal. Typed text is never thrown away.
#pragma once

#include <QWidget>

class QHBoxLayout;
class QLabel;
class QVBoxLayout;

namespace soakbook::ui {

class Field : public QWidget {
    Q_OBJECT

public:
    explicit Field(QWidget* parent = nullptr);

    /// Nothing was typed or chosen.
    virtual bool is_empty() const = 0;
    /// What is wrong with the text by itself ("31 February is no day"); empty where it reads well or is empty.
    virtual QString problem() const { return {}; }
    /// The widget that takes the keyboard.
    virtual QWidget* editor() const = 0;
    /// Puts the keyboard there and selects what stands there.
    virtual void take_focus();
    virtual void clear() = 0;

    /// The field's name as a screen reader says it; the form hands on its label.
    virtual void set_name(const QString& name);
    /// A sentence of help beneath the editor, while there is nothing more urgent to say.
    void set_help(const QString& help);
    /// Words of a refusal; they stand until the next key.
    void set_complaint(const QString& words);
    QString complaint() const { return m_complaint; }
    /// Says what is wrong with the text now, rather than when the keyboard leaves the field.
    void show_problem();
    /// What stands beneath the editor now.
    QString line_text() const;

Q_SIGNALS:
    /// The user changed it; set_value() is silent.
    void edited();

protected:
    /// The row the editor goes into.
    QHBoxLayout* row() const { return m_row; }
    /// Called by the field after each change by the user: drops the complaint, refreshes the line, emits edited().
    void note_edit();
    /// Asks the field again what stands beneath.
    void refresh_line();
    /// How the text was understood where the editor itself has no room to say so.
    virtual QString understood_beneath() const { return {}; }
    /// Whether the editor is drawn as wrong.
    virtual void mark_wrong(bool wrong);
    bool eventFilter(QObject* watched, QEvent* event) override;
    /// Hands the keyboard on to the editor.
    void focusInEvent(QFocusEvent* event) override;
    /// Watches an editor's focus, so that a problem is named when the keyboard leaves.
    void watch(QWidget* editor);

private:
    QHBoxLayout* m_row;
    QLabel* m_line;
    QString m_help;
    QString m_complaint;
    bool m_problem_shown = false;
};

} // namespace soakbook::ui
