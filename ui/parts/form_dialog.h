// SPDX-License-Identifier: GPL-3.0-or-later
// A form in a window of its own: scrolls when it is tall, is never larger than the screen, and closes when the entry is
// made or left.
#pragma once

#include "ui/parts/form.h"

#include <QDialog>
#include <QStringList>

class QScrollArea;

namespace soakbook::ui {

class FormDialog : public QDialog {
    Q_OBJECT

public:
    /// Make it with new, add the fields to form(), call open(): it deletes itself when it closes.
    FormDialog(const Habits& habits, const QString& title, QWidget* parent);
    FormFrame* form() const { return m_form; }
    /// The width the dialog wants at 100 % text; 640 at first.
    void set_wanted_width(int width) { m_wanted_width = width; }
    void reject() override;

protected:
    void showEvent(QShowEvent* event) override;
    void closeEvent(QCloseEvent* event) override;

private:
    void fit();
    FormFrame* m_form;
    QScrollArea* m_scroll;
    int m_wanted_width = 640;
};

/// Opens a small form that asks for the reason of a correction or a void and hands it to `with`; a refusal that `with`
/// gives back stands in the form. `picks` are usual reasons, a button each.
FormDialog* ask_reason(const Habits& habits, QWidget* parent, const QString& title, const QString& what_happens,
                       const QString& button, std::function<std::optional<work::Refusal>(const QString& reason)> with, const QStringList& picks = {});

} // namespace soakbook::ui
