//! The mechanics, the tables of standards and the plans against what is known from outside: closed forms, tables, worked
//! examples, facts of the trade. One module a subject; each
//! gives rows that its own tests check and that `ledger` keeps in `tests/ledger/values.csv`.

mod beam_tables;
mod chatter;
mod cutting;
mod forces;
mod frequencies;
mod ledger;
mod made;
mod receptance;
mod reference_cases;
mod resistance;
mod roughness;
mod row;
mod shaft;
mod shear;
mod speeds;
mod standards;
mod stepped;
mod textbook;
mod threads;
mod trade;
mod work;
