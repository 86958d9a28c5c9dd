// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/how_words.h"

#include "ui/parts/habits.h"
#include "ui/parts/how_table.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>
#include <optional>

namespace soakbook::ui {

namespace {

const HowEntry* entry_of(work::HowKind kind) {
    for (const auto& room : {liquid_hows(), strip_hows(), keeping_hows(), yard_hows()}) {
        for (const HowEntry& entry : room) {
            if (entry.kind == kind) {
                return &entry;
            }
        }
    }
    return nullptr;
}

QString said(const char* text) {
    return text == nullptr ? QString() : QCoreApplication::translate("How", text);
}

bool holds(const HowCondition& condition, const QStringList& facts) {
    const QString fact = condition.fact > 0 ? facts.value(condition.fact - 1) : QString();
    const bool is_zero = fact.size() > 2 && fact.mid(2).toDouble() == 0.0;
    switch (condition.when) {
    case HowWhen::always:
        return true;
    case HowWhen::unknown:
        return fact.isEmpty();
    case HowWhen::zero:
        return is_zero;
    case HowWhen::not_zero:
        return !fact.isEmpty() && !is_zero;
    }
    return true;
}

/// Nothing when a fact that it names is not known.
std::optional<QString> with_facts(const HowLine& line, const HowEntry& entry, const QStringList& facts,
                                  const Habits& habits) {
    const QString text = said(line.text);
    QString words;
    for (qsizetype at = 0; at < text.size(); ++at) {
        const int n = text[at] == QLatin1Char('%') && at + 1 < text.size() ? text[at + 1].digitValue() : -1;
        if (n < 1) {
            words += text[at];
            continue;
        }
        const QString fact = facts.value(n - 1);
        if (fact.isEmpty()) {
            return std::nullopt;
        }
        const bool apart = std::find(entry.differences.begin(), entry.differences.end(), n) != entry.differences.end();
        words += apart ? how_difference_words(fact, habits) : how_fact_words(fact, habits);
        ++at;
    }
    return words;
}

QString source_line(const QString& source) {
    //: Under a formula; %1 where it comes from, such as a journal
    return QCoreApplication::translate("How", "Source: %1").arg(source);
}

} // namespace

HowText how_words(const work::How& how, const Habits& habits) {
    const HowEntry* entry = entry_of(how.kind);
    if (entry == nullptr) {
        return {};
    }
    QStringList lines;
    for (const HowLine& line : entry->lines) {
        if (line.text == nullptr || !holds(line.first, how.facts) || !holds(line.second, how.facts)) {
            continue;
        }
        if (const auto words = with_facts(line, *entry, how.facts, habits)) {
            lines << *words;
        }
    }
    return {said(entry->name), said(entry->formula), lines.join(QLatin1Char('\n')), said(entry->source)};
}

namespace {

/// Sums of one kind, one after another, under one name and formula.

} // namespace

std::vector<HowText> how_texts(const std::vector<work::How>& hows, const Habits& habits) {
    std::vector<HowText> found;
    for (std::size_t i = 0; i < hows.size(); ++i) {
        HowText text = how_words(hows[i], habits);
        if (i > 0 && hows[i].kind == hows[i - 1].kind && !found.empty()) {
            found.back().numbers += (found.back().numbers.isEmpty() ? QString() : QStringLiteral("\n")) + text.numbers;
        } else if (!text.formula.isEmpty()) {
            found.push_back(std::move(text));
        }
    }
    return found;
}

QString how_html(const std::vector<HowText>& texts) {
    QString html;
    for (const HowText& text : texts) {
        const QString top = html.isEmpty() ? QStringLiteral("0") : QStringLiteral("12");
        html += QStringLiteral("<p style=\"margin:%1px 0 0 0\"><b>").arg(top) + text.name.toHtmlEscaped() +
                QStringLiteral("</b></p><p style=\"margin:2px 0 0 0\">") + text.formula.toHtmlEscaped() +
                QStringLiteral("</p>");
        if (!text.numbers.isEmpty()) {
            html += QStringLiteral("<p style=\"margin:4px 0 0 0\">") +
                    text.numbers.toHtmlEscaped().replace(QLatin1Char('\n'), QStringLiteral("<br/>")) +
                    QStringLiteral("</p>");
        }
        html += QStringLiteral("<p style=\"margin:4px 0 0 0\"><i>") + source_line(text.source).toHtmlEscaped() +
                QStringLiteral("</i></p>");
    }
    return html;
}

QString how_plain(const std::vector<HowText>& texts) {
    QStringList parts;
    for (const HowText& text : texts) {
        for (const QString& part : {text.name, text.formula, text.numbers}) {
            if (!part.isEmpty()) {
                parts << part;
            }
        }
        if (!text.source.isEmpty()) {
            parts << source_line(text.source);
        }
    }
    return parts.join(QLatin1Char('\n'));
}

} // namespace soakbook::ui
