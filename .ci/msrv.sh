#!/usr/bin/env bash
# The oldest compiler that will do, `rust-version` in Cargo.toml: no crate of the lock asks for a newer one, and that compiler
# itself checks everything, where it is there or rustup may fetch it. Called by .ci/run.
#
# A machine that forbids rustup to fetch (RUSTUP_AUTO_INSTALL=0) and does not have it is told so, and goes on. What is left there:
# the step before, clippy, knows from which version on each call of the standard library is there (`incompatible_msrv`).
set -euo pipefail
cd "$(dirname "$0")/.."

oldest=$(sed -n 's/^rust-version = "\(.*\)"$/\1/p' Cargo.toml)
for manifest in Cargo.toml fuzz/Cargo.toml; do
    cargo metadata --locked --format-version 1 --all-features --manifest-path "$manifest" | python3 -c '
import json, sys
def number(version): return ([int(n) for n in version.split(".")] + [0, 0])[:3]
oldest, manifest = sys.argv[1:]
crates = [p for p in json.load(sys.stdin)["packages"] if p["rust_version"]]
newer = [p for p in crates if number(p["rust_version"]) > number(oldest)]
for p in newer:
    name, version, asks = p["name"], p["version"], p["rust_version"]
    print(f"{manifest}: {name} {version} asks for Rust {asks}, ours is {oldest}")
most = max(crates, key=lambda p: number(p["rust_version"]))["rust_version"]
print(f"{manifest}: the most that one of {len(crates)} crates asks for is Rust {most}")
sys.exit(bool(newer))' "$oldest" "$manifest"
done

toolchain=$oldest.0
has() { rustup run "$toolchain" rustc --version 2>/dev/null; }
if ! command -v rustup >/dev/null 2>&1; then
    echo "!! NOT CHECKED with Rust $oldest itself: there is no rustup here"
    exit 0
elif ! has; then
    if [ "${RUSTUP_AUTO_INSTALL:-1}" = 0 ]; then
        echo "!! NOT CHECKED with Rust $oldest itself: it is not here, and rustup may not fetch it (RUSTUP_AUTO_INSTALL=0)"
        exit 0
    fi
    rustup toolchain install "$toolchain" --profile minimal --no-self-update
    has
fi
cargo "+$toolchain" check --locked --all-targets --target-dir "${CARGO_TARGET_DIR:-target}/oldest"
