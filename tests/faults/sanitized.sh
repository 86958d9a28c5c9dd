#!/bin/bash
# SPDX-License-Identifier: GPL-3.0-or-later
# Core and the fault tests under AddressSanitizer and UndefinedBehaviorSanitizer, in build/sanitized, with the counts of a
# minute. Ends with 1 when a test is red or a sanitizer says something.
set -euo pipefail
root=$(cd "$(dirname "${BASH_SOURCE[0]}")/../.." && pwd)
work=$root/build/sanitized
export LC_ALL=C.UTF-8 QT_QPA_PLATFORM=offscreen
unset SOAKBOOK_LONG
if [ ! -f "$work/build.ninja" ]; then
    cmake -S "$root" -B "$work" -G Ninja -DCMAKE_BUILD_TYPE=Release \
        "-DCMAKE_CXX_FLAGS=-fsanitize=address,undefined -fno-sanitize-recover=undefined -fno-omit-frame-pointer -g1" >"$work.log" 2>&1 ||
        { tail -30 "$work.log" >&2; exit 1; }
fi
cmake --build "$work" --target test_maths test_exchange test_book test_faults
# What was not given back at the end is no fault of a workbook; strace and leak detection exclude one another.
export ASAN_OPTIONS=detect_leaks=0 UBSAN_OPTIONS=print_stacktrace=1
red=0
for room in maths exchange book faults; do
    log=$work/$room.log
    status=0
    "$work/tests/$room/test_$room" --gtest_brief=1 >"$log" 2>&1 || status=$?
    said=$(grep -cE "runtime error|ERROR: AddressSanitizer" "$log" || true)
    echo "sanitized test_$room: $(grep -E '^\[  PASSED  \]|^\[==========\]' "$log" | paste -sd' '), $said findings"
    if [ "$status" -ne 0 ] || [ "$said" -ne 0 ]; then
        grep -E "FAILED|runtime error|ERROR: AddressSanitizer" "$log" | head -20
        red=1
    fi
done
exit "$red"
