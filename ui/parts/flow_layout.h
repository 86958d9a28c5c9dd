// SPDX-License-Identifier: GPL-3.0-or-later
// Widgets in a row that goes on in the next line where the width ends.
#pragma once

#include <QLayout>

#include <vector>

namespace soakbook::ui {

class FlowLayout : public QLayout {
    Q_OBJECT

public:
    FlowLayout(int gap_across, int gap_down, QWidget* parent = nullptr);
    ~FlowLayout() override;

    void addItem(QLayoutItem* item) override;
    int count() const override;
    QLayoutItem* itemAt(int index) const override;
    QLayoutItem* takeAt(int index) override;
    Qt::Orientations expandingDirections() const override { return {}; }
    bool hasHeightForWidth() const override { return true; }
    int heightForWidth(int width) const override;
    QSize minimumSize() const override;
    QSize sizeHint() const override;
    void setGeometry(const QRect& rect) override;

private:
    int flow(const QRect& rect, bool place) const;

    std::vector<QLayoutItem*> m_items;
    int m_gap_across;
    int m_gap_down;
};

} // namespace soakbook::ui
