// SPDX-License-Identifier: GPL-3.0-or-later
// Labels before they are printed: the sheet, where to begin, the wording, and the pages as they will come out.
#pragma once

#include "ui/print/label_content.h"
#include "ui/print/label_printer.h"

#include <QDialog>
#include <QLocale>

#include <functional>
#include <memory>
#include <vector>

class QComboBox;
class QLabel;
class QPushButton;
class QSpinBox;
class QTimer;

namespace soakbook::ui {

class PreviewPane;
class SheetChoice;
class SheetPicture;

class LabelDialog : public QDialog {
    Q_OBJECT

public:
    /// `printed` is called each time the labels were printed or saved; words it gives back are shown in place of ours.
    using Printed = std::function<QString()>;
    LabelDialog(std::vector<LabelContent> labels, const QLocale& locale, Printed printed, QWidget* parent = nullptr);
    ~LabelDialog() override;

    PreviewPane* pane() const { return m_pane; }
    /// What is left out, or why nothing can be printed.
    QString message() const;

private:
    QWidget* make_side();
    QWidget* make_foot();
    void set_start(int start);
    void lay_out();
    void say(const QString& words, bool wrong);
    void print();
    void save();
    void print_test_page();
    void save_test_page();
    void finish(bool done, const QString& words);
    QString suggested_name() const;

    std::vector<LabelContent> m_labels;
    QLocale m_locale;
    Printed m_printed;
    std::shared_ptr<const LabelRun> m_run; ///< null: nothing can be printed
    SheetChoice* m_choice;
    SheetPicture* m_picture;
    QSpinBox* m_start;
    QWidget* m_start_row;
    QComboBox* m_statements;
    QLabel* m_message;
    QLabel* m_done;
    PreviewPane* m_pane;
    QPushButton* m_print;
    QPushButton* m_save;
    QTimer* m_settle;
};

} // namespace soakbook::ui
