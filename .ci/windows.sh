#!/usr/bin/env bash
# All of it for Windows, tests and benches too, by the compiler and its lints; nothing is linked and nothing runs. Called by .ci/run.
#
# The standard library of that target comes by rustup. A machine that forbids it to fetch (RUSTUP_AUTO_INSTALL=0) and does not have
# it is told so, and goes on.
set -euo pipefail
cd "$(dirname "$0")/.."

target=x86_64-pc-windows-gnu
there() { [ -d "$(rustc --print sysroot)/lib/rustlib/$target/lib" ]; }
if ! there; then
    if ! command -v rustup >/dev/null 2>&1 || [ "${RUSTUP_AUTO_INSTALL:-1}" = 0 ]; then
        echo "!! NOT CHECKED for Windows: $target is not here, and rustup may not fetch it (or is not here either)"
        exit 0
    fi
    rustup target add "$target"
fi
cargo clippy --locked --release --target "$target" --all-targets --features pdf -- -D warnings
