#!/usr/bin/env bash
# The checks that need Python: our beam, cuts, programs and plans against code from outside, and drawings of known shafts:
#
#     .ci/outside.sh [PROGRAM]
#
# After the tests, which write the cases into target/. Without a program the release build is made. Each check fails too when the
# rows it gives the ledger are stale (tests/README.md). Called by .ci/run.
set -euo pipefail
cd "$(dirname "$0")/.."

bash .ci/fetch.sh
target=${CARGO_TARGET_DIR:-target}
program=${1:-$target/release/spanhold}
# The matrices are small: threads of the linear algebra would wait for one another.
export OPENBLAS_NUM_THREADS=1
[ $# -gt 0 ] || cargo build --release

check() { # script, its arguments
    local script=$1
    shift
    echo "-- $script $*"
    "$target/ci-venv/bin/python" "$script" "$@"
}
check .ci/reference.py "$target/reference_cases.json"
check .ci/highs.py "$target/sequence_programs"
check .ci/drawings.py "$program" "$target/drawings"
bash .ci/parallel.sh "$program"
check .ci/outside "$program"
check .ci/schema.py "$program"
