// SPDX-License-Identifier: GPL-3.0-or-later
// The states of a bag, a batch, a hive: one shape, one meaning, with a word beside it, so that colour never speaks alone.
#pragma once

#include <QColor>
#include <QRectF>
#include <QWidget>

#include <optional>

class QLabel;
class QPainter;

namespace soakbook::ui {

/// Disc, tick, triangle, square, ring.
enum class State { resting, ready, near, past, gone };

/// The word the state has where the page has no better one: "resting", "ready", "near the limit", "past", "gone".
QString state_word(State state);
QColor state_colour(State state);
/// The same, nearer to ink where it takes that to be read on paper, on a card and where something is chosen.
QColor state_ink(State state);
/// Paints the state's shape into the square in the middle of `rect`, in its colour.
void paint_state(QPainter& painter, const QRectF& rect, State state);
/// The same in a colour of one's own, for print and for a chosen row.
void paint_state(QPainter& painter, const QRectF& rect, State state, const QColor& colour);

/// Shape and word in a row, read aloud as the word.
class StateMark : public QWidget {
    Q_OBJECT

public:
    explicit StateMark(State state, const QString& word = {}, QWidget* parent = nullptr);
    /// An empty `word` takes the state's own.
    void set_state(State state, const QString& word = {});
    State state() const { return m_state; }
    QString word() const;

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override { return sizeHint(); }

protected:
    void paintEvent(QPaintEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    State m_state;
    QString m_word;
};

/// Lays out shape and word within `rect`, as StateMark and the tables do.
void paint_state_and_word(QPainter& painter, const QRect& rect, State state, const QString& word, Qt::Alignment align);
/// The width that shape and word need.
int width_of_state_and_word(const QString& word);

} // namespace soakbook::ui
