// SPDX-License-Identifier: GPL-3.0-or-later
// What was typed and not entered survives: a killed program, a refusal, a second beginning; and never in another's place.
#include "tests/ui/parts/fixed_clock.h"
#include "ui/parts/choice_field.h"
#include "ui/parts/draft_keeper.h"
#include "ui/parts/draft_offer.h"
#include "ui/parts/drafts.h"
#include "ui/parts/form_dialog.h"
#include "ui/parts/quantity_field.h"
#include "ui/parts/text_field.h"

#include <QApplication>
#include <QDir>
#include <QElapsedTimer>
#include <QFile>
#include <QLineEdit>
#include <QProcess>
#include <QPushButton>
#include <QTemporaryDir>
#include <QTest>

#include <gtest/gtest.h>

#include <csignal>
#include <iostream>

namespace soakbook::ui {
namespace {

const QString workbook = QStringLiteral("a1b2");

/// A form about batch 7 with a field of each kind.
struct SampleForm : FormFrame {
    explicit SampleForm(const Habits& habits, qint64 record = 7) : FormFrame(habits, QStringLiteral("Weigh a sample")) {
        strips = add(QStringLiteral("Strips"), new CountField(habits), QStringLiteral("strips"));
        weight = add(QStringLiteral("Weight"), new MassField(habits, MassSize::small), QStringLiteral("weight"));
        bin = add(QStringLiteral("Out of"), new ChoiceField, QStringLiteral("bin"));
        bin->add(QStringLiteral("bin 1"), 11);
        bin->add(QStringLiteral("bin 2"), 12);
        dripped = add(QStringLiteral("Dripped off?"), new YesNoField, QStringLiteral("dripped"));
        hidden = add(QStringLiteral("Why past its limit"), new TextField, QStringLiteral("hidden"));
        note = add_wide(QStringLiteral("Note"), new NoteField, QStringLiteral("note"));
        set_shown(QStringLiteral("hidden"), false);
        strips->set_value(10); // as last time
        set_commit([this](const work::Confirmed&) { return answer; });
        about(record);
        resize(700, 500);
        show();
        QApplication::setActiveWindow(this);
    }
    void about(qint64 record) {
        set_draft({QStringLiteral("weigh"), record, {}, {PlaceName::shed, QStringLiteral("weigh"), {record}, {}}});
    }
    static void type_into(Field* field, const QString& text) {
        field->editor()->setFocus();
        QTest::keyClick(field->editor(), Qt::Key_A, Qt::ControlModifier);
        QTest::keyClicks(field->editor(), text);
    }
    void settle() {
        QApplication::processEvents();
        drafts().keep_now();
    }

    CountField* strips;
    MassField* weight;
    ChoiceField* bin;
    YesNoField* dripped;
    TextField* hidden;
    NoteField* note;
    std::optional<work::Refusal> answer;
};

class KeptDrafts : public testing::Test {
protected:
    KeptDrafts() : habits(fixed_clock), kept(new Drafts(folder.path(), workbook, &habits)) {}
    /// As after the program was started again.
    void start_again() {
        delete kept;
        kept = new Drafts(folder.path(), workbook, &habits);
    }
    QStringList files(const QString& of = workbook) const {
        return QDir(folder.filePath(of)).entryList(QDir::Files);
    }
    QString path(const QString& name) const { return folder.filePath(workbook + QLatin1Char('/') + name); }

    QTemporaryDir folder;
    Habits habits;
    Drafts* kept;
};

/// Starts this program again for one of the steps below, which a killed test does not end.
std::unique_ptr<QProcess> start(const char* step, const QString& folder) {
    auto child = std::make_unique<QProcess>();
    QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
    environment.insert(QStringLiteral("DRAFTS_FOLDER"), folder);
    child->setProcessEnvironment(environment);
    child->setProcessChannelMode(QProcess::ForwardedErrorChannel);
    child->start(QCoreApplication::applicationFilePath(),
                 {QStringLiteral("--gtest_also_run_disabled_tests"), QStringLiteral("--gtest_filter=InAnotherProcess.DISABLED_") + QLatin1String(step)});
    return child;
}

bool wait_for_word(QProcess& child, const QByteArray& word) {
    QByteArray said;
    QElapsedTimer time;
    time.start();
    while (!said.contains(word) && child.state() != QProcess::NotRunning && time.elapsed() < 60'000) {
        child.waitForReadyRead(200);
        said += child.readAllStandardOutput();
    }
    return said.contains(word);
}

} // namespace

TEST(InAnotherProcess, DISABLED_types_and_waits) {
    Habits habits(fixed_clock);
    new Drafts(qEnvironmentVariable("DRAFTS_FOLDER"), workbook, &habits);
    SampleForm form(habits);
    SampleForm::type_into(form.weight, QStringLiteral("12,5 g or so"));
    SampleForm::type_into(form.note, QStringLiteral("one was torn"));
    const QString file = qEnvironmentVariable("DRAFTS_FOLDER") + QStringLiteral("/a1b2/weigh 7 1.json");
    while (!QFile::exists(file))
        QTest::qWait(20);
    std::cout << "written" << std::endl;
    QTest::qWait(600'000);
}

TEST(InAnotherProcess, DISABLED_types_on_and_on) {
    Habits habits(fixed_clock);
    new Drafts(qEnvironmentVariable("DRAFTS_FOLDER"), workbook, &habits);
    SampleForm form(habits);
    std::cout << "typing" << std::endl;
    for (int i = 0;; ++i) {
        SampleForm::type_into(form.note, QStringLiteral("strip %1").arg(i));
        QApplication::processEvents();
        form.drafts().keep_now();
    }
}

TEST(InAnotherProcess, DISABLED_takes_it_up) {
    Habits habits(fixed_clock);
    new Drafts(qEnvironmentVariable("DRAFTS_FOLDER"), workbook, &habits);
    SampleForm form(habits);
    QApplication::processEvents();
    ASSERT_NE(form.drafts().offer(), nullptr);
    ASSERT_TRUE(form.weight->text().isEmpty()) << "not before it is asked for";
    form.drafts().offer()->take_up()->click();
    std::cout << "[" << form.weight->text().toStdString() << "|" << form.note->value().toStdString() << "|" << form.strips->text().toStdString() << "]" << std::endl;
}

TEST_F(KeptDrafts, a_half_filled_form_survives_a_killed_program) {
    const auto typing = start("types_and_waits", folder.path());
    ASSERT_TRUE(wait_for_word(*typing, "written"));
    ASSERT_EQ(::kill(static_cast<pid_t>(typing->processId()), SIGKILL), 0);
    ASSERT_TRUE(typing->waitForFinished());
    EXPECT_EQ(typing->exitStatus(), QProcess::CrashExit);
    const auto again = start("takes_it_up", folder.path());
    EXPECT_TRUE(wait_for_word(*again, "[12,5 g or so|one was torn|10]"));
    again->waitForFinished();
}

TEST_F(KeptDrafts, a_program_killed_while_it_writes_leaves_a_whole_draft) {
    int found = 0;
    for (int kill = 0; kill < 12; ++kill) {
        const auto typing = start("types_on_and_on", folder.path());
        ASSERT_TRUE(wait_for_word(*typing, "typing"));
        QTest::qWait(20 + 17 * kill);
        ASSERT_EQ(::kill(static_cast<pid_t>(typing->processId()), SIGKILL), 0);
        ASSERT_TRUE(typing->waitForFinished());
        start_again();
        for (const Draft& draft : kept->all()) {
            ++found;
            EXPECT_TRUE(draft.parts.back().says.startsWith(QStringLiteral("strip "))) << draft.parts.back().says.toStdString();
        }
        EXPECT_TRUE(files().filter(QLatin1String(Drafts::put_aside_ending)).isEmpty()) << "a draft was damaged";
    }
    EXPECT_GT(found, 0) << "no kill came after the first draft";
}

TEST_F(KeptDrafts, texts_come_back_as_they_were_typed) {
    const QStringList odd{QStringLiteral("12,5"), QStringLiteral("nonsense"), QStringLiteral("  blanks  "), QStringLiteral("\u202e\u05d0 12"),
                          QString(QChar(0xd800)) + QStringLiteral("half a pair"), QStringLiteral("a\u0001b"), QString(1'000'000, QLatin1Char('7'))};
    for (const QString& text : odd) {
        Draft draft{{QStringLiteral("weigh"), 7, QStringLiteral("Weigh"), {}}, 1, fixed_clock(), {{DraftPart::Kind::text, QStringLiteral("x"), text, {}, {}}}};
        ASSERT_TRUE(kept->keep(draft));
        start_again();
        ASSERT_EQ(kept->all().size(), 1U);
        EXPECT_TRUE(kept->all().front().parts.front().says == text) << text.left(20).toStdString();
    }
}

TEST_F(KeptDrafts, choices_ticks_and_hidden_fields_come_back) {
    {
        SampleForm form(habits);
        form.bin->editor()->setFocus();
        QTest::keyClick(form.bin->editor(), Qt::Key_End);
        form.dripped->findChildren<QPushButton*>().at(1)->click();
        auto* hidden = qobject_cast<QLineEdit*>(form.hidden->editor());
        hidden->setText(QStringLiteral("none other"));
        Q_EMIT hidden->textEdited(hidden->text());
        form.settle();
    }
    SampleForm form(habits);
    ASSERT_NE(form.drafts().offer(), nullptr);
    EXPECT_TRUE(form.bin->is_empty());
    form.drafts().offer()->take_up()->click();
    EXPECT_EQ(form.bin->id(), 12);
    EXPECT_EQ(form.dripped->value(), std::optional(false));
    EXPECT_EQ(form.hidden->value(), QStringLiteral("none other"));
    EXPECT_TRUE(form.is_edited());
}

TEST_F(KeptDrafts, what_the_program_filled_in_is_none) {
    {
        SampleForm form(habits);
        form.strips->set_value(12);
        form.settle();
    }
    EXPECT_TRUE(kept->all().empty());
    {
        SampleForm form(habits);
        SampleForm::type_into(form.weight, QStringLiteral("339"));
        form.settle();
    }
    ASSERT_EQ(kept->all().size(), 1U);
    ASSERT_EQ(kept->all().front().parts.size(), 1U) << "the strips were filled in from last time";
    EXPECT_EQ(kept->all().front().parts.front().says, QStringLiteral("339"));
    EXPECT_EQ(kept->all().front().parts.front().label, QStringLiteral("Weight"));
}

TEST_F(KeptDrafts, an_entry_that_is_refused_keeps_what_was_typed) {
    using work::Why;
    SampleForm form(habits);
    SampleForm::type_into(form.weight, QStringLiteral("339"));
    form.settle();
    for (const Why why : {Why::disk_full, Why::read_only, Why::being_checked, Why::looking_only, Why::changed_outside, Why::other_workbook, Why::busy}) {
        form.answer = work::Refusal{why, {}, {}, false};
        form.commit();
        QApplication::processEvents();
        EXPECT_EQ(files().size(), 1) << static_cast<int>(why);
        EXPECT_EQ(form.weight->text(), QStringLiteral("339"));
    }
    form.answer.reset();
    // The workbook that was busy is tried again by itself.
    EXPECT_TRUE(QTest::qWaitFor([this] { return files().isEmpty(); }, 5000));
}

TEST_F(KeptDrafts, leaving_the_form_gives_it_up_only_when_it_was_said_twice) {
    SampleForm form(habits);
    SampleForm::type_into(form.weight, QStringLiteral("339"));
    form.settle();
    form.cancel();
    EXPECT_EQ(files().size(), 1);
    form.cancel();
    EXPECT_TRUE(files().isEmpty());
    EXPECT_TRUE(kept->all().empty());
}

TEST_F(KeptDrafts, a_second_beginning_waits_beside_the_first) {
    {
        SampleForm form(habits);
        SampleForm::type_into(form.weight, QStringLiteral("339"));
    }
    {
        SampleForm form(habits);
        SampleForm::type_into(form.weight, QStringLiteral("412"));
    }
    ASSERT_EQ(kept->all().size(), 2U);
    EXPECT_EQ(files().size(), 2);
    SampleForm form(habits);
    form.drafts().offer()->take_up()->click();
    const QString first = form.weight->text();
    ASSERT_NE(form.drafts().offer(), nullptr) << "the other one is offered next";
    form.drafts().offer()->take_up()->click();
    EXPECT_NE(form.weight->text(), first);
    EXPECT_EQ(kept->all().size(), 2U);
}

TEST_F(KeptDrafts, a_form_that_turns_to_another_batch_leaves_the_draft_with_its_own) {
    SampleForm form(habits);
    SampleForm::type_into(form.weight, QStringLiteral("339"));
    QApplication::processEvents();
    form.about(8);
    form.weight->clear();
    form.start_again();
    EXPECT_EQ(form.drafts().offer(), nullptr);
    ASSERT_EQ(kept->all().size(), 1U);
    EXPECT_EQ(kept->all().front().place.record, 7);
    form.about(7);
    ASSERT_NE(form.drafts().offer(), nullptr);
    form.drafts().offer()->take_up()->click();
    EXPECT_EQ(form.weight->text(), QStringLiteral("339"));
}

TEST_F(KeptDrafts, keys_alone_take_it_up_or_throw_it_away) {
    {
        SampleForm form(habits);
        SampleForm::type_into(form.weight, QStringLiteral("339"));
    }
    SampleForm form(habits);
    form.take_focus();
    ASSERT_EQ(QApplication::focusWidget(), form.drafts().offer()->take_up());
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    EXPECT_EQ(form.weight->text(), QStringLiteral("339"));
    form.start_again();
    form.take_focus();
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
    ASSERT_EQ(QApplication::focusWidget(), form.drafts().offer()->throw_away());
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    EXPECT_TRUE(kept->all().empty());
    EXPECT_EQ(form.drafts().offer(), nullptr);
}

TEST_F(KeptDrafts, those_of_another_workbook_are_not_shown) {
    {
        SampleForm form(habits);
        SampleForm::type_into(form.weight, QStringLiteral("339"));
    }
    delete kept;
    kept = new Drafts(folder.path(), QStringLiteral("c3d4"), &habits);
    EXPECT_TRUE(kept->all().empty());
    const SampleForm form(habits);
    EXPECT_EQ(form.drafts().offer(), nullptr);
    EXPECT_EQ(files().size(), 1) << "it waits for its own workbook";
}

TEST_F(KeptDrafts, a_damaged_file_is_put_aside_without_a_word) {
    {
        SampleForm form(habits);
        SampleForm::type_into(form.weight, QStringLiteral("339"));
    }
    QFile good(path(QStringLiteral("weigh 7 1.json")));
    ASSERT_TRUE(good.open(QIODevice::ReadOnly));
    const QByteArray text = good.readAll();
    good.close();
    const std::vector<QByteArray> damaged{{}, "no JSON", "[]", "{}", text.left(text.size() / 2), QByteArray(text).replace("a1b2", "ffff"), QByteArray(text).replace("\"weigh\"", "\"../../etc\""),
                                          QByteArray(text).replace("\"shed\"", "\"cellar\""), QByteArray(text).replace("\"nth\": 1", "\"nth\": -1"), QByteArray(1000, '\0'), QByteArray(100'000, '[')};
    for (const QByteArray& bytes : damaged) {
        QFile file(path(QStringLiteral("weigh 7 1.json")));
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(bytes);
        file.close();
        start_again();
        EXPECT_TRUE(kept->all().empty()) << bytes.left(60).toStdString();
        EXPECT_EQ(files(), QStringList{QStringLiteral("weigh 7 1.json.put-aside")});
    }
}

TEST_F(KeptDrafts, every_damaged_byte_is_read_or_put_aside) {
    {
        SampleForm form(habits);
        SampleForm::type_into(form.note, QStringLiteral("one was torn"));
    }
    QFile good(path(QStringLiteral("weigh 7 1.json")));
    ASSERT_TRUE(good.open(QIODevice::ReadOnly));
    const QByteArray text = good.readAll();
    int read = 0;
    for (qsizetype at = 0; at < text.size(); ++at) {
        for (const char flip : {'\x01', '\x04', '\x20', '\x40'}) {
            QByteArray bytes = text;
            bytes[at] = static_cast<char>(bytes[at] ^ flip);
            read += read_draft(bytes, workbook) ? 1 : 0;
        }
    }
    EXPECT_GT(read, 0) << "a changed letter of a text is not damage that JSON shows";
    EXPECT_LT(read, 4 * text.size());
}

TEST_F(KeptDrafts, a_folder_that_takes_nothing_disturbs_nobody) {
    QFile in_the_way(folder.filePath(workbook));
    ASSERT_TRUE(in_the_way.open(QIODevice::WriteOnly));
    in_the_way.close();
    SampleForm form(habits);
    SampleForm::type_into(form.weight, QStringLiteral("339"));
    form.settle();
    EXPECT_EQ(form.weight->text(), QStringLiteral("339"));
    EXPECT_EQ(kept->all().size(), 1U) << "it is remembered all the same";
    form.cancel();
    form.cancel();
    EXPECT_TRUE(kept->all().empty());
}

TEST_F(KeptDrafts, a_second_button_that_makes_the_entry_ends_the_draft_too) {
    auto* dialog = new FormDialog(habits, QStringLiteral("Correct a weighing"), nullptr);
    auto* total = dialog->form()->add(QStringLiteral("Weight"), new MassField(habits, MassSize::small), QStringLiteral("total"));
    dialog->form()->set_draft({QStringLiteral("correct_weighing"), 3, {}, {}});
    dialog->show();
    SampleForm::type_into(total, QStringLiteral("339"));
    QApplication::processEvents();
    dialog->form()->drafts().keep_now();
    ASSERT_EQ(kept->all().size(), 1U);
    EXPECT_EQ(kept->all().front().place.title, QStringLiteral("Correct a weighing"));
    dialog->accept();
    EXPECT_TRUE(kept->all().empty());
}

} // namespace soakbook::ui
