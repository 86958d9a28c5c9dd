// SPDX-License-Identifier: GPL-3.0-or-later
// The one filled button of a form, with its key written in it.
#pragma once

#include <QPushButton>

namespace soakbook::ui {

class PrimaryButton : public QPushButton {
    Q_OBJECT

public:
    explicit PrimaryButton(const QString& words = {}, QWidget* parent = nullptr);
    /// The key as it stands in the button; empty for none. "Ctrl+Enter" at first.
    void set_key(const QString& key);

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override { return sizeHint(); }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    int key_width() const;
    QString m_key;
};

} // namespace soakbook::ui
