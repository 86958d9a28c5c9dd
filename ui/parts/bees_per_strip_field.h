// SPDX-License-Identifier: GPL-3.0-or-later
// How many frames of bees one strip is hung for, such as 2.5.
#pragma once

#include "ui/parts/quantity_field.h"

namespace soakbook::ui {

class BeesPerStripField : public QuantityField {
    Q_OBJECT

public:
    explicit BeesPerStripField(const Habits& habits, QWidget* parent = nullptr);
    /// In tenths of a frame: 25 is 2.5 frames.
    std::optional<int> tenths() const;
    void set_tenths(std::optional<int> tenths);

protected:
    exchange::Read<QString> understand(const QString& text) const override;
    QString unit_sign() const override;
};

/// A round's dose rule in words: "one strip for every 2.5 frames of bees".
QString frames_text(int tenths, const QLocale& locale);

} // namespace soakbook::ui
