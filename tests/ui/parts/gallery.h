// SPDX-License-Identifier: GPL-3.0-or-later
// One window with every shared piece in it, to be looked at and to be measured.
#pragma once

#include <QWidget>

#include <memory>

namespace soakbook::ui {

class Habits;

/// A page of cards with all fields, the live result, a table, a course, cautions and a sentence of figures.
std::unique_ptr<QWidget> make_gallery(const Habits& habits);
/// An empty page and a list at the side.
std::unique_ptr<QWidget> make_side_gallery();
/// Labels and buttons under `top` whose text does not fit into them, by their text.
QStringList clipped_texts(const QWidget* top);

} // namespace soakbook::ui
