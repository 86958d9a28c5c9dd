// SPDX-License-Identifier: GPL-3.0-or-later
#include "room.h"

#include "ui/parts/rows_model.h"
#include "ui/yards/yards_place.h"

#include <QAbstractItemModelTester>
#include <QDialog>
#include <QLineEdit>

namespace soakbook::tests {

YardsRoom::YardsRoom() {
    bench.bagged_batch(0);
    desk = std::make_unique<ui::Desk>(bench.book(), [this] { return moment(m_day, 12); });
    desk->set_who(QStringLiteral("Ada"));
    open_place();
}

YardsRoom::~YardsRoom() {
    place.reset();
}

void YardsRoom::open_place() {
    place.reset(ui::make_yards_place(*desk));
    place->resize(1240, 800);
    place->show();
    QApplication::setActiveWindow(place.get());
    QObject::connect(desk.get(), &ui::Desk::work_done, place.get(), &ui::Place::refresh);
    for (QTableView* table : place->findChildren<QTableView*>()) {
        new QAbstractItemModelTester(table->model(), QAbstractItemModelTester::FailureReportingMode::Fatal, table);
    }
    place->take_focus();
    settle();
}

void YardsRoom::on(int n) {
    m_day = n;
    place->refresh();
    settle();
}

void YardsRoom::settle() const {
    for (int i = 0; i < 4; ++i) {
        QCoreApplication::processEvents();
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    }
}

bool YardsRoom::is_seen(const char* name) const {
    settle();
    for (QWidget* top : QApplication::topLevelWidgets()) {
        for (const QWidget* found : top->findChildren<QWidget*>(QLatin1String(name))) {
            if (found->isVisible()) {
                return true;
            }
        }
        if (top->objectName() == QLatin1String(name) && top->isVisible()) {
            return true;
        }
    }
    return false;
}

QDialog* YardsRoom::dialog() const {
    for (QDialog* found : place->findChildren<QDialog*>()) {
        if (found->isVisible()) {
            return found;
        }
    }
    return nullptr;
}

void YardsRoom::press(const char* button) {
    auto* found = find<QPushButton>(button);
    found->setFocus();
    QTest::keyClick(found, Qt::Key_Space);
    settle();
    if (QDialog* opened = dialog()) {
        QApplication::setActiveWindow(opened);
        settle();
    }
}

void YardsRoom::type_into(const char* field, const QString& text) {
    auto* line = find<QLineEdit>(field);
    line->setFocus();
    line->selectAll();
    QTest::keyClicks(line, text);
    settle();
}

void YardsRoom::keys(const QString& text) {
    for (const QChar letter : text) {
        QTest::keyClick(QApplication::focusWidget(), letter.toLatin1());
    }
    settle();
}

void YardsRoom::key(Qt::Key which, Qt::KeyboardModifiers with) {
    ASSERT_NE(QApplication::focusWidget(), nullptr);
    QTest::keyClick(QApplication::focusWidget(), which, with);
    settle();
}

void YardsRoom::ctrl_enter() {
    key(Qt::Key_Return, Qt::ControlModifier);
    QApplication::setActiveWindow(dialog() != nullptr ? static_cast<QWidget*>(dialog()) : place.get());
    settle();
}

int YardsRoom::line_of(const char* grid, const QString& hive) const {
    const QAbstractItemModel* model = find<QTableView>(grid)->model();
    for (int line = 0; line < model->rowCount(); ++line) {
        for (int column = 0; column < 2; ++column) {
            if (model->index(line, column).data().toString() == hive) {
                return line;
            }
        }
    }
    ADD_FAILURE() << "no line for " << hive.toStdString();
    throw std::runtime_error("no such line");
}

void YardsRoom::type_cell(const char* grid, const QString& hive, int column, const QString& text) {
    auto* table = find<QTableView>(grid);
    table->setFocus();
    table->setCurrentIndex(table->model()->index(line_of(grid, hive), column));
    keys(text);
    key(Qt::Key_Return);
}

QString YardsRoom::cell(const char* grid, const QString& hive, int column) const {
    return find<QTableView>(grid)->model()->index(line_of(grid, hive), column).data().toString();
}

QString YardsRoom::words(const char* name) const {
    settle();
    QStringList said;
    const auto* widget = find<QWidget>(name);
    if (const auto* label = qobject_cast<const QLabel*>(widget)) {
        return label->text();
    }
    for (const QLabel* label : widget->findChildren<QLabel*>()) {
        if (label->isVisible()) {
            said += label->text();
        }
    }
    return said.join(QLatin1Char('\n'));
}

work::YardId YardsRoom::made_yard(int hives, int frames) {
    work::YardEntry yard;
    yard.name = QStringLiteral("Sallow Carr");
    const work::YardId id = must(work::save_yard(bench.book(), yard, on_day(-5)));
    work::HiveRow row;
    row.yard = id;
    row.prefix = QStringLiteral("SC-");
    row.first = 1;
    row.count = hives;
    row.digits = 2;
    row.frames_of_bees = frames;
    must(work::add_hives(bench.book(), row, on_day(-5)));
    settle();
    return id;
}

void YardsRoom::say(work::Figure figure, qint64 value) {
    must(work::set_figures(bench.book(), {{figure, value, {}}}, on_day(-6)));
}

work::RoundId YardsRoom::made_round(work::YardId yard, int n) {
    say(work::Figure::pull_from_days, 42);
    say(work::Figure::pull_by_days, 56);
    say(work::Figure::withdrawal_days, 14);
    work::RoundEntry round;
    round.name = QStringLiteral("Late summer");
    round.planned_on = maths::days_after(first_day, n);
    round.yards = {yard};
    const work::RoundId id = must(work::plan_round(bench.book(), round, on_day(3)));
    settle();
    return id;
}

} // namespace soakbook::tests
