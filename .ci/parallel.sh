#!/usr/bin/env bash
# The example of docs/many-jobs.md with GNU parallel, word for word, gives the lines of one `batch` alone. Called by .ci/outside.sh:
#
#     bash .ci/parallel.sh target/debug/spanhold
set -euo pipefail

program=$(realpath "$1")
page=$(realpath "$(dirname "$0")/../docs/many-jobs.md")
demo=$(realpath "$(dirname "$0")/../demo")
folder=$(mktemp -d)
trap 'rm -rf "$folder"' EXIT
cd "$folder"

mkdir bin jobs
ln -s "$program" bin/spanhold
export PATH=$folder/bin:$PATH
# More jobs than one block of the example, quick ones, a wrong one among them.
for i in $(seq -w 45); do
    sed "s|machines/|$demo/machines/|; s|^  name: .*|  name: part $i|" "$demo/drive-hub.yaml" >"jobs/part-$i.yaml"
done
echo "shaft: {}" >jobs/part-30.yaml

command=$(grep -m 1 'parallel --' "$page")
echo "-- $command"
# A wrong job is a line and a status of its own.
bash -c "$command" 2>/dev/null || true
spanhold batch jobs/*.yaml --out alone.jsonl 2>/dev/null || true
cmp lines.jsonl alone.jsonl
test "$(wc -l <lines.jsonl)" -eq 45
echo "the lines of parallel are those of one batch"
