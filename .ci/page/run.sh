#!/usr/bin/env bash
# The local page against outside code: its OpenAPI document and its answers by a validator, the page itself in a browser:
#
#     .ci/page/run.sh [PROGRAM]
#
# Without a program the release build is made. Called by .ci/run. Pictures of the page are left in target/page-shots, to be
# looked at.
set -euo pipefail
cd "$(dirname "$0")/../.."

bash .ci/fetch.sh
target=${CARGO_TARGET_DIR:-target}
program=${1:-$target/release/spanhold}
[ $# -gt 0 ] || cargo build --release

"$target/page-venv/bin/python" .ci/page/openapi.py "$program"
python3 .ci/page/load.py "$program" 8 40
PLAYWRIGHT=$target/page-node node .ci/page/browser.mjs "$program" "$target/page-shots"
