#!/usr/bin/env bash
# Lays out what the checks from outside need from PyPI and npm, in the versions pinned here, where it is not there yet:
# target/ci-venv, target/page-venv and target/page-node. Called by .ci/run beside its first steps, and by the steps that use them.
set -euo pipefail
cd "$(dirname "$0")/.."
target=${CARGO_TARGET_DIR:-target}
mkdir -p "$target"

venv() { # folder, requirements
    if ! cmp -s "$2" "$1/requirements.txt"; then
        rm -rf "$1"
        python3 -m venv "$1"
        "$1/bin/pip" install --quiet --disable-pip-version-check -r "$2"
        cp "$2" "$1/requirements.txt"
    fi
}
venv "$target/ci-venv" .ci/requirements.txt
venv "$target/page-venv" .ci/page/requirements.txt

modules=$target/page-node
if ! cmp -s .ci/page/package-lock.json "$modules/laid-out.json"; then
    rm -rf "$modules"
    mkdir -p "$modules"
    cp .ci/page/package.json .ci/page/package-lock.json "$modules/"
    npm ci --prefix "$modules" --no-audit --no-fund --ignore-scripts
    # Last: what was cut off is laid out anew.
    cp .ci/page/package-lock.json "$modules/laid-out.json"
fi
