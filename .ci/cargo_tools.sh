#!/usr/bin/env bash
# Builds cargo-deny, of the version pinned here, into target/tools/bin where it is not there yet. Called by .ci/run, beside its
# first steps.
set -euo pipefail
cd "$(dirname "$0")/.."

tools=$(realpath -m "${CARGO_TARGET_DIR:-target}/tools")
# A folder of their own: a build that was cut off goes on from there.
export CARGO_TARGET_DIR=$tools/build
# It runs for seconds: what optimising costs would never come back.
export CARGO_PROFILE_DEV_DEBUG=false
get() { # crate, version
    if [ "$("$tools/bin/$1" --version 2>/dev/null)" != "$1 $2" ]; then
        echo "building $1 $2"
        nice cargo install --debug --locked --quiet --root "$tools" --version "=$2" "$1"
    fi
    "$tools/bin/$1" --version
}
get cargo-deny 0.20.2
rm -rf "$CARGO_TARGET_DIR"
