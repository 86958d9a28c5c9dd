// SPDX-License-Identifier: GPL-3.0-or-later
// A number of frames of bees with one decimal: `2.5`.
#pragma once

#include "ui/parts/quantity_field.h"

namespace soakbook::ui {

class FramesField : public QuantityField {
    Q_OBJECT

public:
    explicit FramesField(const Habits& habits, QWidget* parent = nullptr);
    /// In tenths of a frame.
    std::optional<int> tenths() const;
    void set_tenths(std::optional<int> tenths);

protected:
    exchange::Read<QString> understand(const QString& text) const override;
    QString unit_sign() const override;

private:
    static exchange::Read<int> read(const QString& text);
};

} // namespace soakbook::ui
