#!/bin/bash
# SPDX-License-Identifier: GPL-3.0-or-later
# The long tier: every case of tests/faults with the counts of a night, each in a process of its own, as many at a time as
# there are processors; then a table of what was provoked and how often.
#
#   tests/faults/long_run.sh [--from FOLDER] [--out FOLDER] [--only PATTERN] [--table]
#
# FOLDER of --from holds test_faults and test_faults_at_work, for instance copies that a later build leaves alone; without
# it those of build/release run. --only takes a GoogleTest pattern. --table prints the table of the last run and runs
# nothing. Results go to build/long. Ends with 1 when a case was red or did not end.
set -euo pipefail
{ # read whole before it runs, so that it may be edited meanwhile
root=$(cd "$(dirname "${BASH_SOURCE[0]}")/../.." && pwd)
from=$root/build/release/tests/faults
out=$root/build/long
only='*'
run=yes
while [ "$#" -gt 0 ]; do
    case $1 in
        --from) from=$(cd "$2" && pwd); shift 2 ;;
        --out) mkdir -p "$2"; out=$(cd "$2" && pwd); shift 2 ;;
        --only) only=$2; shift 2 ;;
        --table) run=; shift ;;
        *) sed -n '3,13s/^# \{0,1\}//p' "$0" >&2; exit 2 ;;
    esac
done
export LC_ALL=C.UTF-8 QT_QPA_PLATFORM=offscreen SOAKBOOK_LONG=1
if [ -w /dev/shm ]; then
    export TMPDIR=/dev/shm # what dies is a process, not the machine
fi

one() { # program, case
    local name=${2//\//_}
    local status=0
    "$1" --gtest_filter="$2" --gtest_output="xml:$out/$name.xml" >"$out/$name.log" 2>&1 || status=$?
    echo "$status" >"$out/$name.status"
    printf '%s  %s  %s\n' "$(date +%H:%M:%S)" "$([ "$status" -eq 0 ] && echo done || echo "RED ($status)")" "$2"
}

# What takes longest goes first, so that the processors end together.
long_ones='UndoWalks|Killed\.while_it_saves|Damaged\.by_a_flipped|Clocks\.run|Killed\.while_it_makes|Restor|Rotat|PowerCut|FuzzedOpening\.of|FailingMemory'
if [ -n "$run" ]; then
    mkdir -p "$out"
    rm -f "$out"/*.xml "$out"/*.log "$out"/*.status
    date -u '+%Y-%m-%d %H:%M' >"$out/begun"
    for program in "$from/test_faults" "$from/test_faults_at_work"; do
        [ -x "$program" ] || { echo "there is no $program" >&2; exit 2; }
        "$program" --gtest_list_tests --gtest_filter="$only" | awk -v program="$program" '
            /^[^ ]/ { suite = $1; next }
            $1 !~ /^DISABLED_/ { print program " " suite $1 }'
    done >"$out/cases"
    { grep -E "$long_ones" "$out/cases" || true; grep -vE "$long_ones" "$out/cases" || true; } >"$out/order"
    export -f one
    export out
    xargs -a "$out/order" -L1 -P"$(nproc)" bash -c 'one "$1" "$2"' _
    date -u '+%Y-%m-%d %H:%M' >"$out/ended"
fi

# One line a case: what was provoked, how often (the first of the counts the test wrote down), and how it ended.
echo
echo "Begun $(cat "$out/begun") UTC, ended $(cat "$out/ended" 2>/dev/null || echo "not yet") UTC, $(nproc) processors"
printf '%-112s | %9s | %-28s | %8s\n' "provoked" "times" "ended" "minutes"
red=0 cases=0 skipped=0
while read -r _ case; do
    name=${case//\//_}
    [ -f "$out/$name.status" ] || continue
    cases=$((cases + 1))
    file=$out/$name.xml
    times=$(sed -n 's/.*<property name="\(kills\|cuts\|spoilt\|failures\|steps\|days\|inputs\|filled\|copies\|restores\|times\)" value="\([0-9]*\)".*/\2/p' "$file" 2>/dev/null | head -1 || true)
    seconds=$(sed -n 's/.*<testcase name=.* time="\([0-9.]*\)".*/\1/p' "$file" 2>/dev/null | head -1 || true)
    ended="0 lost, 0 silent, 0 crashed"
    if [ "$(cat "$out/$name.status")" -ne 0 ]; then
        ended="RED, see $name.log" red=$((red + 1))
    elif grep -q 'result="skipped"' "$file"; then
        ended="skipped" skipped=$((skipped + 1))
    fi
    printf '%-112s | %9s | %-28s | %8.1f\n' "${case//_/ }" "${times:-1}" "$ended" "$(awk -v s="${seconds:-0}" 'BEGIN { print s / 60 }')"
done <"$out/order"
echo "$cases cases, $red red, $skipped skipped. A case that is not red has found nothing lost, silent or crashed: it is red at the first."
exit "$((red > 0))"
}
