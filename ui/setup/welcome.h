// SPDX-License-Identifier: GPL-3.0-or-later
// The first start: makes a workbook in a short form, or opens the worked example or a workbook that is there already.
#pragma once

#include "core/work/setup.h"
#include "ui/parts/habits.h"

#include <QWidget>

#include <functional>
#include <memory>

namespace soakbook::ui {

class ChoiceField;
class FormFrame;
class StripKindFields;
class PathField;
class TextField;
class NoteField;
class NoticeBar;
class VesselFields;

/// All that the welcome asks.
struct WelcomeAnswer {
    QString path; ///< of the new workbook
    work::FirstSetUp set_up;
};

class Welcome : public QWidget {
    Q_OBJECT

public:
    /// Makes the workbook; a refusal stands in the form, with "path" as its field where the file cannot be made.
    using Make = std::function<std::optional<work::Refusal>(const WelcomeAnswer& answer)>;
    ~Welcome() override;
    /// `suggested_path` is where a workbook would lie if nobody says otherwise.
    Welcome(Habits& habits, const QString& suggested_path, Make make, QWidget* parent = nullptr);
    /// Says at the top why a file that was asked for is not open.
    void say(const QString& words);
    /// Words of the edge beside the field for the file.
    void refuse_path(const QString& words);

protected:
    void showEvent(QShowEvent* event) override;

Q_SIGNALS:
    /// The workbook was made; the welcome has done its work.
    void made();
    void example_wanted();
    void other_wanted();

private:
    void add_units();
    WelcomeAnswer answer() const;

    Habits& m_habits;
    FormFrame* m_form;
    TextField* m_name;
    NoteField* m_maker;
    TextField* m_person;
    PathField* m_path;
    ChoiceField* m_units;
    std::unique_ptr<StripKindFields> m_kind;
    std::unique_ptr<VesselFields> m_tank;
    std::unique_ptr<VesselFields> m_bin;
    NoticeBar* m_notice;
};

} // namespace soakbook::ui
