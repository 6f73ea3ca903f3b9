//! Speeds and feeds of drills, taps and cutters by class of material.

use super::table::Table;
use crate::job::materials::{CLASSES, Class, FEED_DIAMETERS_MM, SOURCES, ToothFeed};
use crate::lang;

/// The classes, the feeds of a tooth, and the sources.
pub(super) fn tables() -> Vec<Table> {
    vec![meanings(), classes(), tooth_feeds(), sources()]
}

fn meanings() -> Table {
    Table {
        title: lang::text("help-speeds-meaning").to_owned(),
        heads: vec![lang::text("help-head-class"), lang::text("help-head-meaning")],
        rows: CLASSES.iter().map(|(key, class)| vec![(*key).to_owned(), class.words().to_owned()]).collect(),
    }
}

fn classes() -> Table {
    let row = |(key, class): &(&str, Class)| {
        let s = class.speeds();
        let numbers = [s.drill_m_per_min, s.drill_feed_share, s.tap_m_per_min, s.mill_m_per_min].map(|n| n.to_string());
        let rest = [feed_name(s.tooth_feed).to_owned(), s.sources.join("; ")];
        [[(*key).to_owned()].as_slice(), numbers.as_slice(), rest.as_slice()].concat()
    };
    Table {
        title: lang::text("help-speeds-classes").to_owned(),
        heads: vec![
            lang::text("help-head-class"),
            lang::text("help-head-drill-vc"),
            lang::text("help-head-drill-feed"),
            lang::text("help-head-tap-vc"),
            lang::text("help-head-mill-vc"),
            lang::text("help-head-tooth-feed"),
            lang::text("help-head-sources"),
        ],
        rows: CLASSES.iter().map(row).collect(),
    }
}

fn tooth_feeds() -> Table {
    let (full, small) = (ToothFeed::Full.row_mm(), ToothFeed::Small.row_mm());
    let row = |((d, full), small): ((&f64, &f64), &f64)| [d, full, small].map(f64::to_string).to_vec();
    Table {
        title: lang::text("help-speeds-teeth").to_owned(),
        heads: vec![lang::text("help-head-cutter"), feed_name(ToothFeed::Full), feed_name(ToothFeed::Small)],
        rows: FEED_DIAMETERS_MM.iter().zip(&full).zip(&small).map(row).collect(),
    }
}

fn sources() -> Table {
    Table {
        title: lang::text("help-speeds-sources").to_owned(),
        heads: vec![lang::text("help-head-letter"), lang::text("help-head-source")],
        rows: SOURCES.iter().map(|(letter, source)| vec![(*letter).to_owned(), (*source).to_owned()]).collect(),
    }
}

fn feed_name(feed: ToothFeed) -> &'static str {
    match feed {
        ToothFeed::Full => lang::text("tooth-feed-full"),
        ToothFeed::Small => lang::text("tooth-feed-small"),
    }
}
