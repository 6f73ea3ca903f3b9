#!/usr/bin/env bash
# The local page against outside code: its OpenAPI document and its answers by a validator, the page itself in a browser.
# Called by .ci/run. Pictures of the page are left in target/page-shots, to be looked at.
set -euo pipefail
cd "$(dirname "$0")/../.."

target=${CARGO_TARGET_DIR:-target}
cargo build --release
program=$target/release/spanhold

venv=$target/page-venv
if ! cmp -s .ci/page/requirements.txt "$venv/requirements.txt"; then
    rm -rf "$venv"
    python3 -m venv "$venv"
    "$venv/bin/pip" install --quiet --disable-pip-version-check -r .ci/page/requirements.txt
    cp .ci/page/requirements.txt "$venv/requirements.txt"
fi
"$venv/bin/python" .ci/page/openapi.py "$program"
python3 .ci/page/load.py "$program" 8 40

modules=$target/page-node
if ! cmp -s .ci/page/package-lock.json "$modules/package-lock.json"; then
    mkdir -p "$modules"
    cp .ci/page/package.json .ci/page/package-lock.json "$modules/"
    npm ci --prefix "$modules" --no-audit --no-fund --ignore-scripts
fi
PLAYWRIGHT=$modules node .ci/page/browser.mjs "$program" "$target/page-shots"
