// SPDX-License-Identifier: GPL-3.0-or-later
// Plays the recipe of the worked example: one line, one piece of work, done through the same functions as a person's entry.
#pragma once

#include "core/book/doing.h"
#include "core/work/ids.h"
#include "core/work/outcome.h"

#include <QHash>
#include <QJsonObject>

#include <functional>
#include <vector>

namespace soakbook::work {

/// The moment at so many minutes after midnight of a day, on the wall where the user lives.
using WallClock = std::function<maths::Instant(maths::Day day, int minutes)>;

/// What the player has made so far, by the names the recipe uses.
struct ExampleNames {
    QHash<QString, BatchId> batches;
    QHash<QString, std::vector<SoakId>> soaks;
    QHash<QString, std::vector<BagId>> bags;   ///< of a batch, in the order filled
    QHash<QString, std::vector<PailId>> pails; ///< of a batch
    QHash<QString, RoundId> rounds;
};

class ExamplePlayer {
public:
    ExamplePlayer(book::Workbook& workbook, maths::Instant now, WallClock wall);
    /// Plays every line of the recipe (a JSON array of steps). Throws std::runtime_error naming the line that is refused.
    void play(const QByteArray& recipe);

private:
    using Step = QJsonObject;
    void play_step(const Step& step);
    bool play_set_up(const QString& what, const Step& step);
    bool play_shed(const QString& what, const Step& step);
    bool play_bags(const QString& what, const Step& step);
    bool play_yards(const QString& what, const Step& step);
    bool play_hives(const QString& what, const Step& step);

    book::Doing doing(const Step& step) const;
    maths::Instant moment(const Step& step) const;
    /// The day so many days from today; the key holds the number.
    std::optional<maths::Day> day_at(const Step& step, const QString& key) const;
    LotId lot(const QString& name) const;
    VesselId vessel(const QString& name) const;
    YardId yard(const QString& name) const;
    HiveId hive(YardId yard, const QString& name) const;
    std::vector<BagId> bags_named(const Step& step) const;
    BatchId batch(const Step& step) const;

    /// Does it; what is asked is answered with yes where the step says "yes".
    template <class F> auto must(const Step& step, F&& f);

    book::Workbook& m_workbook;
    maths::Instant m_now;
    WallClock m_wall;
    ExampleNames m_names;
    QString m_who;
};

template <class F> auto ExamplePlayer::must(const Step& step, F&& f) {
    Confirmed confirmed;
    for (;;) {
        auto outcome = f(confirmed);
        if (outcome)
            return *outcome;
        const Refusal& refusal = outcome.error();
        if (refusal.can_confirm && step[QStringLiteral("yes")].toBool() && confirmed.insert(refusal.why).second)
            continue;
        throw std::runtime_error("refused for reason " + std::to_string(static_cast<int>(refusal.why)) + " at field '" +
                                 refusal.field.toStdString() + "' with " + refusal.facts.join(QStringLiteral(", ")).toStdString());
    }
}

} // namespace soakbook::work
