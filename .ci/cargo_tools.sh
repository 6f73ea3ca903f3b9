#!/usr/bin/env bash
# Builds cargo-deny and cargo-fuzz, of the versions pinned here, into target/tools/bin where they are not there yet. Called by
# .ci/run, beside its tests.
set -euo pipefail
cd "$(dirname "$0")/.."

tools=$(realpath -m "${CARGO_TARGET_DIR:-target}/tools")
# A folder of their own: a build that was cut off goes on from there.
export CARGO_TARGET_DIR=$tools/build
get() { # crate, version
    if [ "$("$tools/bin/$1" --version 2>/dev/null)" != "$1 $2" ]; then
        echo "building $1 $2"
        nice cargo install --locked --quiet --root "$tools" --version "=$2" "$1"
    fi
    "$tools/bin/$1" --version
}
get cargo-fuzz 0.13.2
get cargo-deny 0.20.2
rm -rf "$CARGO_TARGET_DIR"
