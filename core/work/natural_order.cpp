// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/yards_view.h"

namespace soakbook::work {

bool comes_before(const QString& a, const QString& b) {
    qsizetype i = 0;
    qsizetype j = 0;
    while (i < a.size() && j < b.size()) {
        if (a.at(i).isDigit() && b.at(j).isDigit()) {
            qsizetype end_a = i;
            qsizetype end_b = j;
            while (end_a < a.size() && a.at(end_a).isDigit())
                ++end_a;
            while (end_b < b.size() && b.at(end_b).isDigit())
                ++end_b;
            // Leading zeros do not count; the longer number is the greater.
            qsizetype start_a = i;
            qsizetype start_b = j;
            while (start_a + 1 < end_a && a.at(start_a).digitValue() == 0)
                ++start_a;
            while (start_b + 1 < end_b && b.at(start_b).digitValue() == 0)
                ++start_b;
            if (end_a - start_a != end_b - start_b)
                return end_a - start_a < end_b - start_b;
            for (; start_a < end_a; ++start_a, ++start_b)
                if (a.at(start_a).digitValue() != b.at(start_b).digitValue())
                    return a.at(start_a).digitValue() < b.at(start_b).digitValue();
            i = end_a;
            j = end_b;
            continue;
        }
        const QChar x = a.at(i).toCaseFolded();
        const QChar y = b.at(j).toCaseFolded();
        if (x != y)
            return x < y;
        ++i;
        ++j;
    }
    if ((i < a.size()) != (j < b.size()))
        return j < b.size();
    return a < b;
}

} // namespace soakbook::work
