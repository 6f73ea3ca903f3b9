//! The mechanics, the tables of standards and the plans against what is known from outside: closed forms, tables, worked
//! examples, facts of the trade. One module a subject; each
//! gives rows that its own tests check and that `ledger` writes to `tests/README.md`.

mod beam_tables;
mod chatter;
mod cutting;
mod frequencies;
mod ledger;
mod receptance;
mod reference_cases;
mod roughness;
mod row;
mod shaft;
mod shear;
mod standards;
mod stepped;
mod textbook;
mod trade;
mod work;

/// Every row, in the order of the ledger; worked out once.
fn all_rows() -> &'static [row::Row] {
    static ROWS: std::sync::OnceLock<Vec<row::Row>> = std::sync::OnceLock::new();
    ROWS.get_or_init(|| {
        [
            beam_tables::rows(),
            frequencies::rows(),
            shear::rows(),
            textbook::rows(),
            stepped::rows(),
            cutting::rows(),
            roughness::rows(),
            chatter::rows(),
            receptance::rows(),
            standards::rows(),
            trade::rows(),
            work::rows(),
        ]
        .concat()
    })
}
