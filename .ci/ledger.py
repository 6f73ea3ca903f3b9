"""Rows of the ledger `tests/README.md` that come from outside of `cargo test`.

A script keeps its rows in a file of `tests/ledger`; what it checks must be what that file says, else it is stale.
`SPANHOLD_BLESS=1` writes the file anew; then `SPANHOLD_BLESS=1 cargo test --test published` puts it into the ledger.

A row says what is checked, against what and how near it must be; a script that finds less fails before it keeps its
rows. Figures that it finds are printed and never kept: they hang on the last digits of a processor or a library.
"""

import os
import pathlib

FOLDER = pathlib.Path(__file__).resolve().parent.parent / "tests" / "ledger"
BLESS = "SPANHOLD_BLESS"


def percent(share):
    return f"{100 * share:g} %"


def row(what, source, standing, reference, allowed):
    return f"| {what} | {source} | {standing} | {reference} | {allowed} |"


def keep(name, rows):
    """True when the kept rows are these."""
    path, text = FOLDER / name, "".join(line + "\n" for line in rows)
    if os.environ.get(BLESS):
        path.write_text(text, encoding="utf-8")
        return True
    kept = path.read_text(encoding="utf-8") if path.exists() else ""
    if kept == text:
        return True
    print(f"tests/ledger/{name} is stale; renew it with {BLESS}=1, then the ledger, and read the difference.")
    for here, there in zip(text.splitlines() + [""], kept.splitlines() + [""]):
        if here != there:
            print(f"  found: {here}\n  kept:  {there}")
    return False
