// SPDX-License-Identifier: GPL-3.0-or-later
// A draft whose form cannot be opened any more: what was typed can still be read and copied.
#pragma once

class QWidget;

namespace soakbook::ui {

class Drafts;
class Habits;
struct Draft;

void show_left_draft(const Habits& habits, Drafts& drafts, const Draft& draft, QWidget* parent);

} // namespace soakbook::ui
