#!/usr/bin/env bash
# Runs the fuzz targets, one after the other, each for so many seconds:
#
#     .ci/fuzz.sh SECONDS [TARGET...]
#
# Seeds are made from the demo. What is found lies in fuzz/artifacts/<target>; mended, it goes to tests/wild/<target>, where
# `cargo test` feeds it again. Needs cargo-fuzz (`cargo install --locked cargo-fuzz`) and a C++ compiler; a stable toolchain
# will do.
set -euo pipefail
cd "$(dirname "$0")/.."

seconds=${1:?seconds for each target}
shift
targets=("$@")
[ $# -gt 0 ] || targets=(job machine readings plan drawing table page)

# Coverage counters are for nightly toolchains; the stable compiler has them too. No sanitizer: there is no unsafe code.
export RUSTC_BOOTSTRAP=1
python3 .ci/fuzz_seeds.py fuzz/corpus
cargo fuzz build --sanitizer none
for target in "${targets[@]}"; do
    echo "== $target"
    cargo fuzz run --sanitizer none "$target" -- -max_total_time="$seconds" -timeout=120 -rss_limit_mb=4096 \
        -max_len=40000 -dict=fuzz/words.dict -print_final_stats=1
done
