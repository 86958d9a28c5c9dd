// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/sheet_choice.h"

#include "ui/parts/choice_box.h"
#include "ui/parts/theme.h"

#include <QDoubleSpinBox>
#include <QFormLayout>
#include <QLabel>
#include <QSettings>
#include <QSpinBox>

namespace soakbook::ui {

namespace {

QString key(const char* name) { return QStringLiteral("labels/") + QLatin1String(name); }

} // namespace

SheetChoice::SheetChoice(QWidget* parent) : QWidget(parent), m_kind(new ChoiceBox(this)), m_form(new QFormLayout(this)), m_dots(new ChoiceBox(this)) {
    m_form->setContentsMargins(0, 0, 0, 0);
    m_form->setVerticalSpacing(scaled(6));
    m_form->setHorizontalSpacing(scaled(10));
    m_form->setFieldGrowthPolicy(QFormLayout::AllNonFixedFieldsGrow);
    int index = 0;
    for (const LabelSheet& sheet : stock_sheets()) {
        m_kind->addItem(sheet_name(sheet), index++);
    }
    //: kind of label paper, in a list
    m_kind->addItem(tr("Roll"), roll);
    //: kind of label paper, in a list: all its dimensions are entered
    m_kind->addItem(tr("Another sheet"), own);
    //: field: which label sheet
    const QString labels = tr("Labels");
    m_kind->setAccessibleName(labels);
    m_form->addRow(labels, m_kind);
    //: field: width of a label
    m_width = add_length(tr("Label width"), 63.5, 1000, 5);
    //: field: height of a label
    m_height = add_length(tr("Label height"), 38.1, 1000, 5);
    //: field: width of the sheet
    m_page_width = add_length(tr("Sheet width"), 210, 2000, 10);
    //: field: height of the sheet
    m_page_height = add_length(tr("Sheet height"), 297, 2000, 10);
    //: field: how many labels stand beside each other
    add_whole(m_columns, tr("Beside each other"), 3, 100);
    //: field: how many labels stand under each other
    add_whole(m_rows, tr("Under each other"), 7, 200);
    //: field: from the left edge of the sheet to the first label
    m_left = add_length(tr("Left margin"), 7.25, 500);
    //: field: from the upper edge of the sheet to the first label
    m_top = add_length(tr("Top margin"), 15.15, 500);
    //: field: from the left edge of a label to that of the next
    m_pitch_x = add_length(tr("Step across"), 66, 1000);
    //: field: from the upper edge of a label to that of the next
    m_pitch_y = add_length(tr("Step down"), 38.1, 1000);
    //: field: how far the printer is off, to the right
    m_right = add_length(tr("Offset right"), 0, 20, -20);
    //: field: how far the printer is off, downward
    m_down = add_length(tr("Offset down"), 0, 20, -20);
    for (const int dots : {203, 300, 600}) {
        //: how fine a label printer is; %1 is a number of dots
        m_dots->addItem(tr("%1 dots an inch").arg(dots), dots);
    }
    m_dots->setCurrentIndex(1);
    //: field: how fine the label printer is
    const QString printer = tr("Printer");
    m_dots->setAccessibleName(printer);
    m_form->addRow(printer, m_dots);
    recall();
    show_fields();
    connect(m_kind, &QComboBox::currentIndexChanged, this, [this] {
        show_fields();
        Q_EMIT changed();
    });
    connect(m_dots, &QComboBox::currentIndexChanged, this, &SheetChoice::changed);
}

QDoubleSpinBox* SheetChoice::add_length(const QString& label, double value, double most, double least) {
    auto* box = new QDoubleSpinBox(this);
    box->setDecimals(2);
    box->setRange(least, most);
    box->setSingleStep(0.5);
    //: unit behind a length in a field
    box->setSuffix(QChar(0x202F) + tr("mm"));
    box->setValue(value);
    box->setAccessibleName(label);
    box->setButtonSymbols(QAbstractSpinBox::NoButtons);
    m_form->addRow(label, box);
    connect(box, &QDoubleSpinBox::valueChanged, this, &SheetChoice::changed);
    return box;
}

void SheetChoice::add_whole(QSpinBox*& box, const QString& label, int value, int most) {
    box = new QSpinBox(this);
    box->setRange(1, most);
    box->setValue(value);
    box->setAccessibleName(label);
    box->setButtonSymbols(QAbstractSpinBox::NoButtons);
    m_form->addRow(label, box);
    connect(box, &QSpinBox::valueChanged, this, &SheetChoice::changed);
}

int SheetChoice::kind() const { return m_kind->currentData().toInt(); }

void SheetChoice::show_fields() {
    const bool free_size = kind() < 0;
    const bool whole_sheet = kind() == own;
    for (QWidget* field : {static_cast<QWidget*>(m_width), static_cast<QWidget*>(m_height)}) {
        m_form->setRowVisible(field, free_size);
    }
    for (QWidget* field : std::initializer_list<QWidget*>{m_page_width, m_page_height, m_columns, m_rows, m_left, m_top, m_pitch_x, m_pitch_y}) {
        m_form->setRowVisible(field, whole_sheet);
    }
    m_form->setRowVisible(m_dots, kind() == roll);
}

LabelSheet SheetChoice::sheet() const {
    LabelSheet sheet;
    if (kind() >= 0) {
        sheet = stock_sheets()[static_cast<std::size_t>(kind())];
    } else if (kind() == roll) {
        sheet = roll_label({m_width->value(), m_height->value()});
        sheet.dots_per_inch = m_dots->currentData().toInt();
    } else {
        sheet.page = {m_page_width->value(), m_page_height->value()};
        sheet.label = {m_width->value(), m_height->value()};
        sheet.columns = m_columns->value();
        sheet.rows = m_rows->value();
        sheet.left = m_left->value();
        sheet.top = m_top->value();
        sheet.pitch_x = m_pitch_x->value();
        sheet.pitch_y = m_pitch_y->value();
    }
    sheet.offset_x = m_right->value();
    sheet.offset_y = m_down->value();
    return sheet;
}

QString SheetChoice::fault_words() const {
    const auto fault = fault_of(sheet());
    return fault ? sheet_fault_words(*fault) : QString();
}

void SheetChoice::remember() const {
    QSettings settings;
    settings.setValue(key("kind"), kind());
    const LabelSheet now = sheet();
    settings.setValue(key("offset_x"), now.offset_x);
    settings.setValue(key("offset_y"), now.offset_y);
    if (kind() < 0) {
        settings.setValue(key("width"), now.label.width());
        settings.setValue(key("height"), now.label.height());
        settings.setValue(key("dots"), m_dots->currentData());
    }
    if (kind() == own) {
        settings.setValue(key("page_width"), now.page.width());
        settings.setValue(key("page_height"), now.page.height());
        settings.setValue(key("columns"), now.columns);
        settings.setValue(key("rows"), now.rows);
        settings.setValue(key("left"), now.left);
        settings.setValue(key("top"), now.top);
        settings.setValue(key("pitch_x"), now.pitch_x);
        settings.setValue(key("pitch_y"), now.pitch_y);
    }
}

void SheetChoice::recall() {
    const QSettings settings;
    const auto length = [&](QDoubleSpinBox* box, const char* name) { box->setValue(settings.value(key(name), box->value()).toDouble()); };
    // Whoever never chose gets the Letter sheet where Letter is the paper.
    const int usual = QLocale().measurementSystem() == QLocale::ImperialUSSystem ? 3 : 0;
    m_kind->setCurrentIndex(std::max(0, m_kind->findData(settings.value(key("kind"), usual).toInt())));
    length(m_width, "width");
    length(m_height, "height");
    length(m_page_width, "page_width");
    length(m_page_height, "page_height");
    length(m_left, "left");
    length(m_top, "top");
    length(m_pitch_x, "pitch_x");
    length(m_pitch_y, "pitch_y");
    length(m_right, "offset_x");
    length(m_down, "offset_y");
    m_columns->setValue(settings.value(key("columns"), m_columns->value()).toInt());
    m_rows->setValue(settings.value(key("rows"), m_rows->value()).toInt());
    m_dots->setCurrentIndex(std::max(0, m_dots->findData(settings.value(key("dots"), 300).toInt())));
}

} // namespace soakbook::ui
