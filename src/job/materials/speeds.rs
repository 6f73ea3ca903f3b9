//! Speeds and feeds of drills, taps and milling cutters, by class of material.
//!
//! Drills: high-speed steel with cobalt, 118°, with coolant. Taps: high-speed steel, cutting, not forming. Cutters: coated solid carbide,
//! cutting over their whole width. Each value lies in the range of a source; which one stands beside it. Of the ranges for slots the
//! low end is taken, because driven tools and slender bars are soft. Carbide drills run two to four times as fast.

use super::Class;

/// Speeds and feeds of one class.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Speeds {
    /// Cutting speed of a drill, m/min.
    pub drill_m_per_min: f64,
    /// Feed of a drill per turn, as a share of its diameter.
    pub drill_feed_share: f64,
    /// Cutting speed of a tap, m/min.
    pub tap_m_per_min: f64,
    /// Cutting speed of a milling cutter, m/min.
    pub mill_m_per_min: f64,
    /// Feed per tooth of a milling cutter.
    pub tooth_feed: ToothFeed,
    /// Letters of the sources in [`SOURCES`]: of speed and feed of drills, of taps, of cutters.
    pub sources: [&'static str; 3],
}

/// A row of feeds per tooth by the diameter of the cutter.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum ToothFeed {
    /// Materials that are cut easily.
    Full,
    /// Tough and hard materials.
    Small,
}

/// The sources, by letter: a to k were seen, e only second-hand.
pub const SOURCES: [(&str, &str); 12] = [
    ("a", "a training course for machinists of a navy, page on drilling: high-speed steel drills"),
    ("b", "a drill maker's reference guide: high-speed steel drills"),
    (
        "c",
        "a tool dealer's page, which repeats a handbook's table of drills for tool steels, stainless steels and light metals",
    ),
    ("d", "a book on machining, table of speeds and feeds for drilling"),
    ("e", "a table book for apprentices, met second-hand in a program that names it"),
    ("f", "a calculator's page: feed of drills as a share of the diameter, agrees with the ranges of e"),
    ("g", "a chart of tapping speeds by material"),
    ("h", "a tool dealer's table of tapping speeds"),
    ("i", "a tool maker's catalogue, 2020, p. 1084: slots with solid carbide"),
    ("j", "a tool maker's brochure, p. 131: shoulders with solid carbide"),
    ("k", "ranges of a program, its author's own, no source"),
    ("-", "common practice, no source"),
];

/// Diameters of the feeds per tooth, mm. A tool maker's brochure, 2021, p. 23, of cutters with at least half of their width in cut, to
/// be adjusted by a quarter either way: rows I and G of its table. Which row suits which class is decided here: in the sizes that both
/// have, they lie at the low end of what i gives for steel and for stainless steel.
pub const FEED_DIAMETERS_MM: [f64; 17] =
    [1.0, 2.0, 3.0, 4.0, 5.0, 6.0, 7.0, 8.0, 9.0, 10.0, 12.0, 14.0, 16.0, 18.0, 20.0, 22.0, 25.0];
const FULL_MM: [f64; 17] = [
    0.003, 0.006, 0.011, 0.019, 0.024, 0.030, 0.032, 0.036, 0.039, 0.042, 0.049, 0.054, 0.061, 0.066, 0.073, 0.079,
    0.088,
];
const SMALL_MM: [f64; 17] = [
    0.002, 0.005, 0.008, 0.014, 0.018, 0.022, 0.024, 0.026, 0.028, 0.031, 0.035, 0.040, 0.044, 0.048, 0.053, 0.057,
    0.064,
];

impl ToothFeed {
    /// The feeds per tooth at [`FEED_DIAMETERS_MM`], mm.
    pub fn row_mm(self) -> [f64; 17] {
        match self {
            ToothFeed::Full => FULL_MM,
            ToothFeed::Small => SMALL_MM,
        }
    }
}

/// Feed per tooth of a cutter, mm: straight between the diameters of the table, below it as a share of the diameter, above it the last.
pub fn fz_mm(feed: ToothFeed, diameter_mm: f64) -> f64 {
    let row = feed.row_mm();
    let (first_mm, first) = (FEED_DIAMETERS_MM[0], row[0]);
    if diameter_mm <= first_mm {
        return first * diameter_mm / first_mm;
    }
    let mut pairs = FEED_DIAMETERS_MM.windows(2).zip(row.windows(2));
    let between = pairs.find_map(|(d, fz)| match (d, fz) {
        ([d0, d1], [f0, f1]) if diameter_mm <= *d1 => Some(f0 + (f1 - f0) * (diameter_mm - d0) / (d1 - d0)),
        _ => None,
    });
    between.or(row.last().copied()).unwrap_or(first)
}

const fn speeds(
    (drill_m_per_min, drill_feed_share): (f64, f64),
    tap_m_per_min: f64,
    (mill_m_per_min, tooth_feed): (f64, ToothFeed),
    sources: [&'static str; 3],
) -> Speeds {
    Speeds { drill_m_per_min, drill_feed_share, tap_m_per_min, mill_m_per_min, tooth_feed, sources }
}

impl Class {
    /// Its speeds and feeds.
    pub fn speeds(self) -> Speeds {
        use ToothFeed::{Full, Small};
        match self {
            Class::FreeCutting => speeds((40.0, 0.020), 14.0, (140.0, Full), ["-", "h", "i"]),
            Class::Structural => speeds((30.0, 0.018), 16.0, (140.0, Full), ["a b e f", "e g", "i"]),
            Class::Carbon => speeds((24.0, 0.018), 10.0, (140.0, Full), ["a b e f", "e g", "i"]),
            Class::Alloy => speeds((20.0, 0.014), 8.0, (70.0, Full), ["a e f", "-", "i"]),
            Class::Tool => speeds((15.0, 0.012), 5.0, (60.0, Small), ["b c", "-", "j"]),
            Class::FreeStainless => speeds((26.0, 0.012), 8.0, (60.0, Small), ["c f", "e h", "i"]),
            Class::Ferritic => speeds((20.0, 0.012), 5.0, (60.0, Small), ["c f", "g", "i"]),
            Class::Austenitic => speeds((15.0, 0.012), 6.0, (60.0, Small), ["c e f", "e g h", "i"]),
            Class::Duplex => speeds((12.0, 0.012), 4.0, (40.0, Small), ["- f", "-", "j"]),
            Class::HeatResistant => speeds((6.0, 0.010), 3.0, (20.0, Small), ["-", "-", "j"]),
            Class::PureTitanium => speeds((30.0, 0.010), 5.0, (50.0, Small), ["d f", "h", "i j"]),
            Class::TitaniumAlloy => speeds((12.0, 0.010), 3.0, (40.0, Small), ["d f", "g h", "i j"]),
            Class::CobaltChromium => speeds((6.0, 0.010), 2.0, (20.0, Small), ["-", "-", "-"]),
            Class::Nickel => speeds((6.0, 0.010), 3.0, (20.0, Small), ["-", "g", "j"]),
            Class::Brass => speeds((60.0, 0.020), 18.0, (150.0, Full), ["a k", "g h k", "k"]),
            Class::Copper => speeds((30.0, 0.018), 12.0, (100.0, Full), ["b", "h k", "k"]),
            Class::Aluminium => speeds((60.0, 0.020), 20.0, (300.0, Full), ["a b f", "g h k", "i"]),
            Class::Plastic => speeds((50.0, 0.025), 20.0, (150.0, Full), ["b f k", "h k", "k"]),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::super::class::CLASSES;
    use super::*;

    #[test]
    fn the_feed_of_a_tooth_follows_the_table() {
        for (d, full, small) in [(0.5, 0.0015, 0.001), (1.0, 0.003, 0.002), (6.0, 0.030, 0.022), (11.0, 0.0455, 0.033)]
        {
            assert!((fz_mm(ToothFeed::Full, d) - full).abs() < 1e-12, "{d}");
            assert!((fz_mm(ToothFeed::Small, d) - small).abs() < 1e-12, "{d}");
        }
        assert_eq!(fz_mm(ToothFeed::Full, 25.0), 0.088);
        assert_eq!(fz_mm(ToothFeed::Small, 40.0), 0.064);
    }

    #[test]
    fn every_source_is_listed_and_used() {
        let told: Vec<&str> =
            CLASSES.iter().flat_map(|(_, class)| class.speeds().sources).flat_map(str::split_whitespace).collect();
        assert!(told.iter().all(|letter| SOURCES.iter().any(|(known, _)| known == letter)));
        assert!(SOURCES.iter().all(|(letter, _)| told.contains(letter)));
    }
}
