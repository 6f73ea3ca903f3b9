#!/usr/bin/env bash
# The checks that need Python: our beam, cuts, programs and plans against code from outside, and drawings of known shafts. Called by .ci/run, after
# the tests, which write the cases into target/. Each fails too when the rows it gives the ledger are stale (tests/README.md).
set -euo pipefail
cd "$(dirname "$0")/.."

target=${CARGO_TARGET_DIR:-target}
venv=$target/ci-venv
stamp=$venv/requirements.txt
if ! cmp -s .ci/requirements.txt "$stamp"; then
    rm -rf "$venv"
    python3 -m venv "$venv"
    "$venv/bin/pip" install --quiet --disable-pip-version-check -r .ci/requirements.txt
    cp .ci/requirements.txt "$stamp"
fi
python=$venv/bin/python

check() { # script, its arguments
    local script=$1
    shift
    echo "-- $script $*"
    "$python" "$script" "$@"
}
check .ci/reference.py "$target/reference_cases.json"
check .ci/highs.py "$target/sequence_programs"
cargo build
check .ci/drawings.py "$target/debug/spanhold" "$target/drawings"
bash .ci/parallel.sh "$target/debug/spanhold"
cargo build --release
check .ci/outside "$target/release/spanhold"
check .ci/schema.py "$target/release/spanhold"
