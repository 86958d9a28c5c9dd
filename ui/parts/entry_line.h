// SPDX-License-Identifier: GPL-3.0-or-later
// A line of text that shows at its right end, softly, how the text was understood.
#pragma once

#include <QLineEdit>

namespace soakbook::ui {

class EntryLine : public QLineEdit {
    Q_OBJECT

public:
    explicit EntryLine(QWidget* parent = nullptr);

    void set_aside(const QString& text);
    const QString& aside() const { return m_aside; }
    /// Whether text and aside stand beside each other at the present width.
    bool aside_fits() const;

Q_SIGNALS:
    /// The aside fits now and did not before, or the other way round.
    void fit_changed();

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    int aside_width() const;
    void make_room();

    QString m_aside;
    bool m_fitted = true;
};

} // namespace soakbook::ui
