#!/usr/bin/env bash
# Subjects of commits as DEVELOPERS.md ("Style") asks for them, from the commit named here on; what is older stays as it is.
# Called by .ci/run.
set -euo pipefail
cd "$(dirname "$0")/.."

since=a45c53d32bdb7ce15a7e99fca484ff45216d5209
longest=72
export LC_ALL=C.UTF-8

git rev-parse --verify --quiet HEAD >/dev/null || { echo "no history to look at: run this in a clone" >&2; exit 1; }
if ! git cat-file -e "$since^{commit}" 2>/dev/null; then
    echo "this clone does not go back to ${since:0:7}: no subject was looked at"
    exit 0
fi
commits=$(git log --format='%H%x09%s' "$since..HEAD")
wrong=0 looked=0
say() {
    echo "${commit:0:7} $1: $subject"
    wrong=1
}
while IFS=$'\t' read -r commit subject; do
    looked=$((looked + 1))
    if ((${#subject} > longest)); then say "is longer than $longest characters"; fi
    if [[ ${subject,,} =~ ^(wip|fixup!|squash!|amend!)([^a-z]|$) ]]; then say "says that it is not done"; fi
    # What was merged from where is nobody's business but the machine's.
    if [[ $subject =~ ^Merge.*(^|[[:space:]\'\"])[/~.][^[:space:]]*/ ]]; then say "names a path of one machine"; fi
done < <([ -z "$commits" ] || echo "$commits")
if ((wrong)); then exit 1; fi
echo "$looked subjects"
