// SPDX-License-Identifier: GPL-3.0-or-later
// Another copy of the workbook beside this one: what stands in only one of them, and the way to take over what stands only
// there.
#pragma once

#include "core/work/apart.h"

#include <QDialog>

class QBoxLayout;
class QLabel;
class QPushButton;
class QVBoxLayout;

namespace soakbook::ui {

class Card;
class Desk;
class EntryList;
class FormFrame;
class RecordDifferences;
class TextField;

class ComparisonWindow : public QDialog {
    Q_OBJECT

public:
    ComparisonWindow(Desk& desk, const QString& path, QWidget* parent = nullptr);
    ~ComparisonWindow() override;

protected:
    void resizeEvent(QResizeEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    void build_lists();
    void build_form();
    void fill();
    void show_records(bool there);
    void mind_ticks();
    std::optional<work::Refusal> take_over();
    const work::LoneEntry* entry_there(qint64 key) const;

    Desk& m_desk;
    std::unique_ptr<work::Apart> m_apart;
    std::vector<work::RecordApart> m_records; ///< of every entry that stands only there
    QVBoxLayout* m_page = nullptr;
    QBoxLayout* m_beside = nullptr;
    QLabel* m_sentence = nullptr;
    QLabel* m_answer = nullptr;
    QWidget* m_lists = nullptr;
    Card* m_card_here = nullptr;
    Card* m_card_there = nullptr;
    EntryList* m_here = nullptr;
    EntryList* m_there = nullptr;
    RecordDifferences* m_differences = nullptr;
    FormFrame* m_form = nullptr;
    TextField* m_why = nullptr;
    QLabel* m_stands_on = nullptr;
    QPushButton* m_close = nullptr;
};

/// Opens it over `parent`. A file that cannot be compared is told in the window. It deletes itself when it closes.
void open_comparison(Desk& desk, const QString& path, QWidget* parent);

} // namespace soakbook::ui
