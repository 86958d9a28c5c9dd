#!/bin/bash
# SPDX-License-Identifier: GPL-3.0-or-later
# Fuzzes opening and listing for so many seconds (600 unless said), with clang and libFuzzer, in build/fuzz. The seeds are a
# workbook of each version of the schema. Ends with 1 at a crash, an undefined step, an input that takes longer than 20
# seconds or more than 2 GB; the input then lies in build/fuzz/found.
#
#   tests/faults/fuzz.sh [SECONDS]
set -euo pipefail
root=$(cd "$(dirname "${BASH_SOURCE[0]}")/../.." && pwd)
seconds=${1:-600}
work=$root/build/fuzz
export LC_ALL=C.UTF-8 QT_QPA_PLATFORM=offscreen
if ! command -v clang++ >/dev/null; then
    echo "SKIPPED: clang is not here, so nothing was fuzzed"
    exit 0
fi
if [ ! -f "$work/build.ninja" ]; then
    cmake -S "$root" -B "$work" -G Ninja -DCMAKE_BUILD_TYPE=Release -DCMAKE_CXX_COMPILER=clang++ -DSOAKBOOK_FUZZ=ON -DCMAKE_UNITY_BUILD=OFF \
        -DCMAKE_DISABLE_PRECOMPILE_HEADERS=ON "-DCMAKE_CXX_FLAGS=-fsanitize=fuzzer-no-link,address,undefined -fno-sanitize-recover=undefined -g1" >"$work.log" 2>&1 ||
        { tail -30 "$work.log" >&2; exit 1; }
fi
cmake --build "$work" --target fuzz_open
mkdir -p "$work/seeds" "$work/corpus" "$work/found"
SOAKBOOK_SEEDS=$work/seeds "$root/build/release/tests/faults/test_faults" --gtest_filter=FuzzedOpening.lists_each_seed --gtest_brief=1
export ASAN_OPTIONS=detect_leaks=0:quarantine_size_mb=16
status=0
"$work/tests/faults/fuzz_open" -max_total_time="$seconds" -timeout=20 -rss_limit_mb=2048 -max_len=600000 -artifact_prefix="$work/found/" \
    -print_final_stats=1 "$work/corpus" "$work/seeds" >"$work/run.log" 2>&1 || status=$?
grep -E "stat::number_of_executed_units|stat::peak_rss_mb|SUMMARY|ERROR|runtime error" "$work/run.log" || true
echo "fuzzed for $seconds seconds: $([ "$status" -eq 0 ] && echo "nothing found" || echo "FOUND, see $work/run.log and $work/found")"
exit "$((status > 0))"
