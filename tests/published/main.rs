//! The mechanics against values from outside: closed forms, tables and worked examples. One module a subject; each
//! gives rows that its own tests check and that `ledger` writes to `tests/README.md`.

mod beam_tables;
mod chatter;
mod cutting;
mod frequencies;
mod ledger;
mod receptance;
mod roughness;
mod row;
mod shaft;
mod shear;
mod stepped;
mod textbook;
mod work;

/// Every row, in the order of the ledger.
fn all_rows() -> Vec<row::Row> {
    [
        beam_tables::rows(),
        frequencies::rows(),
        shear::rows(),
        textbook::rows(),
        stepped::rows(),
        cutting::rows(),
        roughness::rows(),
        chatter::rows(),
        work::rows(),
    ]
    .concat()
}
