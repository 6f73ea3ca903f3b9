"""Rows of the ledger `tests/ledger/values.csv` that come from outside of `cargo test`.

A script keeps the rows of its run: what it checks must be what the ledger says, else the ledger is stale.
`SPANHOLD_BLESS=1` renews them there; then `SPANHOLD_BLESS=1 cargo test --test published` renews the summary in
`tests/README.md`.

A row says what is checked, against what and how near it must be. A script that finds less fails before it keeps its
rows. Exact findings are printed and never kept, because they depend on the last digits of a processor or a library.
"""

import csv
import os
import pathlib

LEDGER = pathlib.Path(__file__).resolve().parent.parent / "tests" / "ledger" / "values.csv"
BLESS = "SPANHOLD_BLESS"
# The last column, `used`, may differ by this much. tests/published/row.rs says the same.
USED_MAY_DIFFER = 0.1


def percent(share):
    return f"{100 * share:g} %"


def row(layer, case, source, standing, values, reference, allowed, used=None):
    """`used` is the share of what is allowed that the worst value took; none for a bound."""
    return [layer, case, source, standing, str(values), reference, allowed, "" if used is None else f"{used:.2f}"]


def same(a, b):
    near = a[-1] == b[-1] or bool(a[-1] and b[-1]) and abs(float(a[-1]) - float(b[-1])) <= USED_MAY_DIFFER
    return a[:-1] == b[:-1] and near


def keep(run, rows):
    """True when the rows of the run are those of the ledger."""
    with LEDGER.open(encoding="utf-8", newline="") as file:
        head, *ledger = csv.reader(file)
    fresh, kept = [[run, *r] for r in rows], [r for r in ledger if r[0] == run]
    if len(fresh) == len(kept) and all(map(same, fresh, kept)):
        return True
    if not os.environ.get(BLESS):
        print(f"{LEDGER.name} is stale in the rows of `{run}`. Renew it with {BLESS}=1 and read the difference.")
        for here in [r for r in fresh if not any(same(r, k) for k in kept)]:
            print(f"  found: {here}")
        for there in [k for k in kept if not any(same(r, k) for r in fresh)]:
            print(f"  kept:  {there}")
        return False
    # A row that says the same stays as it is, so that another processor changes nothing.
    renewed = [next((k for k in kept if same(r, k)), r) for r in fresh]
    begin = next((i for i, r in enumerate(ledger) if r[0] == run), len(ledger))
    others = [r for r in ledger if r[0] != run]
    with LEDGER.open("w", encoding="utf-8", newline="") as file:
        csv.writer(file, lineterminator="\n").writerows([head, *others[:begin], *renewed, *others[begin:]])
    return True
