#!/usr/bin/env bash
# The checks that need Python: our beam, cuts, programs and plans against code from outside. Called by .ci/run, after
# the tests, which write the cases into target/.
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
    if [ -f "$script" ]; then
        echo "-- $script $*"
        "$python" "$script" "$@"
    fi
}
check .ci/reference.py "$target/reference_cases.json"
if [ -f .ci/highs.py ]; then
    check .ci/highs.py "$target/sequence_programs"
fi
cargo build --release
check .ci/schema.py "$target/release/spanhold"
if [ -f .ci/outside.py ]; then
    check .ci/outside.py "$target/release/spanhold"
fi
