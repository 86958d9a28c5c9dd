// SPDX-License-Identifier: GPL-3.0-or-later
// Puts one entry right, or makes it void: what it says, the new value, and the reason with a few to pick from. What stood
// there stays in the history.
#pragma once

#include "ui/parts/form_dialog.h"

#include <functional>
#include <optional>

namespace soakbook::ui {

class TextField;

class CorrectionDialog : public FormDialog {
    Q_OBJECT

public:
    /// `what_stands` tells what the entry says now. Add the value's fields to form(), then call one or both below, then open().
    CorrectionDialog(const Habits& habits, const QString& title, const QString& what_stands, QWidget* parent);

    using Correct = std::function<std::optional<work::Refusal>(const QString& why, const work::Confirmed& confirmed)>;
    void set_correct(Correct correct);
    using MakeVoid = std::function<std::optional<work::Refusal>(const QString& why)>;
    /// A quiet button beside the filled one; the only button where nothing can be corrected.
    void set_make_void(const QString& button, MakeVoid make_void);

private:
    void add_reason();

    TextField* m_reason = nullptr;
    bool m_can_correct = false;
};

} // namespace soakbook::ui
